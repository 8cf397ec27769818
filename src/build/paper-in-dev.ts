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
          const slug = /\/patterns\/([^/?]+)\/[^/?]+\.pdf(?:\?|$)/.exec(request.url ?? '')?.[1]
          if (!slug) return next()
          print(root, decodeURIComponent(slug)).then((paper) => {
            if (!paper) return next()
            response.setHeader('Content-Type', 'application/pdf')
            response.end(paper)
          }, next)
        })
      },
    },
  }
}

async function print(root: string, slug: string): Promise<Uint8Array | undefined> {
  const { collectPattern, patternBytes, patternPaths } = await import('./collect-patterns.ts')
  const { slugOf } = await import('../pattern/slug.ts')
  const { printPattern } = await import('../print/print-pattern.ts')
  const path = (await patternPaths({ root, folder })).find((one) => slugOf(one) === slug)
  if (!path) return undefined
  const { booklet } = collectPattern(await patternBytes({ root, folder }, path))
  return booklet && printPattern(booklet)
}
