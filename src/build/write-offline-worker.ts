import { createHash } from 'node:crypto'
import { readdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { build } from 'vite'

/** Pages that are kept from the first visit on, whichever page that is. */
const pages = ['index.html', 'offline/index.html', 'reading-rows/index.html', 'glossary/index.html']

/** Writes the worker that keeps pages for times without a network, with a list of what every page needs. */
export async function writeOfflineWorker(root: string, folder: string, base: string): Promise<void> {
  // A font's range of letters beyond Latin is fetched by the few pages that need it.
  const assets = (await readdir(join(folder, '_astro'))).filter((name) => /\.(?:js|css|woff2)$/.test(name) && !name.includes('-latin-ext-')).sort()
  const shell = [
    ...assets.map((name) => ({ url: `${base}_astro/${name}`, revision: null })),
    ...(await Promise.all(pages.map(async (page) => ({ url: `${base}${page}`, revision: digest(await readFile(join(folder, page))) })))),
    { url: `${base}icon.svg`, revision: digest(await readFile(join(folder, 'icon.svg'))) },
  ]
  const code = `self.shell=${JSON.stringify(shell)};self.base=${JSON.stringify(base)};\n${await worker(root)}`
  await writeFile(join(folder, 'offline.js'), code)
}

async function worker(root: string): Promise<string> {
  const made = await build({
    root, configFile: false, publicDir: false, logLevel: 'error', define: { 'process.env.NODE_ENV': '"production"' },
    build: { write: false, lib: { entry: join(root, 'src/client/offline-worker.ts'), formats: ['iife'], name: 'offline' } },
  })
  const [first] = [made].flat().flatMap((one) => ('output' in one ? one.output : [])).filter((part) => part.type === 'chunk')
  if (!first) throw new Error('the worker for times without a network was not made: this is our mistake')
  return first.code
}

const digest = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex').slice(0, 16)
