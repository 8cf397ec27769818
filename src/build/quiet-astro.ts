/** Builds the site's pages into a folder, without a word on the terminal unless something goes wrong. Sends nothing to anybody. */
export async function quietAstro(root: string, outDir: string): Promise<void> {
  process.env.ASTRO_TELEMETRY_DISABLED = '1'
  process.env.ASTRO_DISABLE_UPDATE_CHECK = 'true'
  const { build } = await import('astro')
  await build({ root, outDir, logLevel: 'error' })
}
