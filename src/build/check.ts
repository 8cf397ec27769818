import { enableCompileCache } from 'node:module'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

// What Node has compiled of the program is kept, so that the next check begins sooner.
enableCompileCache(join(fileURLToPath(new URL('../..', import.meta.url)), '.astro', 'compiled'))
const { checkCommand } = await import('./check-command.ts')
process.exitCode = await checkCommand(process.argv.slice(2))
