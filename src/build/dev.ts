import { fileURLToPath } from 'node:url'
import { parseArgs } from 'node:util'

// `npm run dev`: the site while patterns are being written. Astro is asked to send nothing to anybody.
process.env.ASTRO_TELEMETRY_DISABLED = '1'
process.env.ASTRO_DISABLE_UPDATE_CHECK = 'true'
const { values } = parseArgs({ options: { port: { type: 'string' }, host: { type: 'string' } } })
const { dev } = await import('astro')
await dev({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  server: { ...(values.port ? { port: Number(values.port) } : {}), ...(values.host ? { host: values.host } : {}) },
})
