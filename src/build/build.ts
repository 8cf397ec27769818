import { enableCompileCache } from 'node:module'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

// What Node has compiled of the program and of Astro is kept, so that the next build begins sooner.
const root = fileURLToPath(new URL('../..', import.meta.url))
enableCompileCache(join(root, '.astro', 'compiled'))
const { buildSite } = await import('./build-site.ts')
process.exitCode = await buildSite(root)
