import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import { extname, join } from 'node:path'
import { gzipSync } from 'node:zlib'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8', '.css': 'text/css', '.js': 'text/javascript', '.xml': 'application/xml', '.webmanifest': 'application/manifest+json', '.woff2': 'font/woff2', '.svg': 'image/svg+xml', '.pdf': 'application/pdf', '.json': 'application/json',
}

/** What hosts send packed. */
const packs = new Set(['.html', '.css', '.js', '.svg', '.json', '.xml'])

/** A folder served as a host of static files serves it. */
export interface StaticServer {
  readonly origin: string
  readonly stop: () => Promise<void>
}

/** Serves a folder on a free port of this machine. */
export async function serve(folder: string): Promise<StaticServer> {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost')
    const file = join(folder, decodeURIComponent(pathname.endsWith('/') ? `${pathname}index.html` : pathname))
    try {
      const body = await readFile(file)
      const packed = packs.has(extname(file))
      response.writeHead(200, { 'Content-Type': types[extname(file)] ?? 'application/octet-stream', ...(packed ? { 'Content-Encoding': 'gzip' } : {}) }).end(packed ? gzipSync(body) : body)
    } catch {
      response.writeHead(404, { 'Content-Type': 'text/html; charset=utf-8' }).end(await readFile(join(folder, '404.html')))
    }
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const found = server.address()
  if (found === null || typeof found === 'string') throw new Error('the server has no port')
  return {
    origin: `http://127.0.0.1:${found.port}`,
    stop: () => new Promise((resolve) => {
      server.closeAllConnections()
      server.close(() => resolve())
    }),
  }
}
