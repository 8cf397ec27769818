import { readFile, writeFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import subsetFont from 'subset-font'
import { signFonts, signs } from './sign-fonts.ts'

// The web-font packages leave these signs out of every one of their files; the full fonts have them.
const require = createRequire(import.meta.url)
for (const { file, from } of signFonts) {
  const full = await readFile(require.resolve(from))
  const small = await subsetFont(full, signs, { targetFormat: 'woff2' })
  await writeFile(new URL(`../styles/fonts/${file}`, import.meta.url), small)
  process.stdout.write(`src/styles/fonts/${file}  ${small.length} bytes\n`)
}
