import { relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { LoaderContext } from 'astro/loaders'
import type { PatternEntry } from '../components/pattern-entry.ts'
import { collectPattern, hindrances, type Collected } from './collect-patterns.ts'
import { engineFingerprint } from './engine-fingerprint.ts'
import { failedBuild } from './failed-build.ts'
import { digestOf, patternBytes, patternPaths, type Shelf } from './pattern-files.ts'
import { remarks } from './report-patterns.ts'
import { fullEntry, listedEntry } from './to-entry.ts'

type Watcher = NonNullable<LoaderContext['watcher']>
const unwatch = new WeakMap<Watcher, () => void>()

/** Works the patterns of a folder into the site's store, and keeps it true to the folder while patterns are being written. */
export async function loadPatterns(context: LoaderContext, folder: string): Promise<void> {
  const shelf = { root: fileURLToPath(context.config.root), folder }
  const engine = await engineFingerprint(shelf.root)
  const paths = await patternPaths(shelf)
  const worked: Collected[] = []
  for (const path of paths) worked.push(...(await loadOne({ context, shelf, engine, path })))
  const error = context.watcher ? undefined : failedBuild(worked)
  if (error) throw error
  for (const path of context.store.keys()) if (!paths.includes(path)) context.store.delete(path)
  if (context.watcher) watch({ context, shelf, engine }, context.watcher)
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
  const digest = context.generateDigest({ engine, file: digestOf(file), kept: dev ? 'remarks' : 'all' })
  if (context.store.get(path)?.digest === digest) return []
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
