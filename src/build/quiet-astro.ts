import type { AstroIntegration } from 'astro'

/**
 * Builds the site's pages into a folder, without a word on the terminal unless something goes wrong. Sends nothing to anybody. Gives
 * back where the site will stand: its address, and its place on the host, `/`.
 */
export async function quietAstro(root: string, outDir: string): Promise<{ readonly base: string; readonly site: string | undefined }> {
  process.env.ASTRO_TELEMETRY_DISABLED = '1'
  process.env.ASTRO_DISABLE_UPDATE_CHECK = 'true'
  const { build } = await import('astro')
  let stands: { readonly base: string; readonly site: string | undefined } = { base: '/', site: undefined }
  const learn: AstroIntegration = {
    name: 'learn-address',
    hooks: { 'astro:config:done': ({ config: { base, site } }) => { stands = { base: base.endsWith('/') ? base : `${base}/`, site } } },
  }
  await build({ root, outDir, logLevel: 'error', integrations: [learn] })
  return stands
}
