import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'

const folder = 'patterns'

/** While patterns are being written, prints a pattern when its paper is asked for. `npm run build` writes all of them. */
export function paperInDev(): AstroIntegration {
  let root = ''
  return {
    name: 'paper-in-dev',
    hooks: {
      'astro:config:done': ({ config }) => {
        root = fileURLToPath(config.root)
      },
      'astro:server:setup': ({ server }) => {
        server.middlewares.use((request, response, next) => {
          const [, path, slug] = /\/(patterns\/([^/?]+)\/[^/?]+\.pdf)(?:\?|$)/.exec(request.url ?? '') ?? []
          if (!path || !slug) return next()
          print(root, { path: decodeURIComponent(path), slug: decodeURIComponent(slug) }).then((paper) => {
            if (!paper) return next()
            response.setHeader('Content-Type', 'application/pdf')
            response.end(paper)
          }, next)
        })
      },
    },
  }
}

async function print(root: string, asked: { readonly path: string; readonly slug: string }): Promise<Uint8Array | undefined> {
  const { collectPattern } = await import('./collect-patterns.ts')
  const { patternBytes, patternPaths } = await import('./pattern-files.ts')
  const { slugOf } = await import('../pattern/slug.ts')
  const { papersOf } = await import('../components/paper-path.ts')
  const { bookletFor, printEdition } = await import('./print-paper.ts')
  const path = (await patternPaths({ root, folder })).find((one) => slugOf(one) === asked.slug)
  if (!path) return undefined
  const { booklet, inSize, other } = collectPattern(await patternBytes({ root, folder }, path))
  const place = booklet && papersOf(booklet).find((paper) => paper.path === asked.path)
  return booklet && place && printEdition(bookletFor({ booklet, inSize, ...(other ? { other } : {}) }, place), place.edition)
}
