import { relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { LoaderContext } from 'astro/loaders'
import { z } from 'astro/zod'
import type { PatternEntry } from '../components/pattern-entry.ts'
import { slugOf } from '../pattern/slug.ts'
import { collectPattern, digestOf, hindrances, patternBytes, patternPaths, type Collected, type Shelf } from './collect-patterns.ts'
import { engineFingerprint } from './engine-fingerprint.ts'
import { failedBuild } from './failed-build.ts'
import { handedOver } from './hand-over.ts'
import { remarks } from './report-patterns.ts'
import { cardEntry, cardOfCollected, fullEntry, listedEntry } from './to-entry.ts'

type Watcher = NonNullable<LoaderContext['watcher']>
const unwatch = new WeakMap<Watcher, () => void>()

/**
 * Reads the patterns of a folder, works them and gives the pages their booklets. In a build a pattern that does not come out ends the
 * build; while patterns are being written (`npm run dev`) its page shows what is wrong, and mends itself when the file is mended.
 */
export function patternLoader(folder: string) {
  return {
    name: 'patterns',
    // What is stored is checked on its way in; the schema only carries its type to the pages.
    schema: z.custom<PatternEntry>(),
    async load(context: LoaderContext): Promise<void> {
      const shelf = { root: fileURLToPath(context.config.root), folder }
      const engine = await engineFingerprint(shelf.root)
      const paths = await patternPaths(shelf)
      const worked: Collected[] = []
      for (const path of paths) worked.push(...(await loadOne({ context, shelf, engine, path })))
      const error = context.watcher ? undefined : failedBuild(worked)
      if (error) throw error
      for (const path of context.store.keys()) if (!paths.includes(path)) context.store.delete(path)
      if (context.watcher) watch({ context, shelf, engine }, context.watcher)
    },
  }
}

interface Loading {
  readonly context: LoaderContext
  readonly shelf: Shelf
  readonly engine: string
}

/** Stores one pattern. Gives back what was worked: nothing when the file and the engine are as they were. */
async function loadOne({ context, shelf, engine, path }: Loading & { readonly path: string }): Promise<readonly Collected[]> {
  const dev = context.watcher !== undefined
  const file = await patternBytes(shelf, path)
  const given = handedOver(path, digestOf(file))
  const digest = context.generateDigest({ engine, file: digestOf(file), kept: dev ? 'remarks' : given ? 'card' : 'all' })
  if (context.store.get(path)?.digest === digest) return []
  if (given) {
    // Booklets stay in this process: the store would carry every one of them into every build.
    const card = 'card' in given ? given.card : cardOfCollected(given)
    context.store.set({ id: path, digest, filePath: path, data: { ...cardEntry(slugOf(path), card?.sold ?? false, card) } })
    return []
  }
  const collected = collectPattern(file)
  // What ends a build is not kept: it must be found again the next time.
  if (dev || hindrances(collected.diagnostics).length === 0) {
    context.store.set({ id: path, digest, filePath: path, data: { ...entry(collected, dev) } })
  }
  return [collected]
}

function entry(collected: Collected, dev: boolean): PatternEntry {
  return collected.sold ? listedEntry(collected, dev ? remarks(collected) : []) : fullEntry(collected, dev ? remarks(collected) : [])
}

/** Keeps the store true to the folder. `load` runs again when the site's own configuration changes: the older watch ends first. */
function watch(loading: Loading, watcher: Watcher): void {
  const { context, shelf } = loading
  unwatch.get(watcher)?.()
  const pathOf = (file: string) => relative(shelf.root, file).split(sep).join('/')
  const reload = async (path: string) => {
    try {
      if ((await patternPaths(shelf)).includes(path)) await loadOne({ ...loading, path })
    } catch (error) {
      context.logger.error(`${path}: ${error instanceof Error ? error.message : String(error)}`)
    }
  }
  // Editors empty a file before they write it: what stands there a moment later is what was meant.
  const waiting = new Map<string, NodeJS.Timeout>()
  const changed = (file: string) => {
    const path = pathOf(file)
    if (!path.startsWith(`${shelf.folder}/`)) return
    clearTimeout(waiting.get(path))
    waiting.set(path, setTimeout(() => void reload(path), 60))
  }
  const removed = (file: string) => context.store.delete(pathOf(file))
  watcher.on('change', changed).on('add', changed).on('unlink', removed)
  unwatch.set(watcher, () => watcher.off('change', changed).off('add', changed).off('unlink', removed))
}
