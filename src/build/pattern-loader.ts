import { basename, dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { LoaderContext } from 'astro/loaders'
import { z } from 'astro/zod'
import type { Booklet } from '../booklet/booklet.ts'
import type { PatternEntry } from '../components/pattern-entry.ts'
import { collectPattern, hindrances, isPatternFile, patternFiles, type Collected } from './collect-patterns.ts'
import { engineFingerprint } from './engine-fingerprint.ts'
import { failedBuild } from './failed-build.ts'
import { handedOver } from './hand-over.ts'
import { readSource } from './read-source.ts'
import { remarks } from './report-patterns.ts'
import { withoutRows } from './without-rows.ts'

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
      const root = fileURLToPath(context.config.root)
      const engine = await engineFingerprint(root)
      const names = await patternFiles(join(root, folder))
      const failing: Collected[] = []
      for (const name of names) {
        const collected = await loadOne({ context, root, folder, name, engine })
        if (collected && !context.watcher) failing.push(collected)
      }
      const error = failedBuild(failing)
      if (error) throw error
      for (const id of context.store.keys()) if (!names.includes(`${id}.md`)) context.store.delete(id)
      if (context.watcher) watch({ context, root, folder, engine, watcher: context.watcher })
    },
  }
}

interface One {
  readonly context: LoaderContext
  readonly root: string
  readonly folder: string
  readonly name: string
  readonly engine: string
}

/** Stores one pattern. Gives back what was worked, or nothing when the file and the engine are as they were. */
async function loadOne({ context, root, folder, name, engine }: One): Promise<Collected | undefined> {
  const { source } = await readSource(join(root, folder, name), `${folder}/${name}`)
  const digest = context.generateDigest({ engine, source: source.text, dev: context.watcher !== undefined })
  const id = name.slice(0, -'.md'.length)
  if (context.store.get(id)?.digest === digest) return undefined
  const collected = handedOver(source) ?? (await collectPattern({ root, folder, name }))
  // What ends a build is not kept: it must be found again the next time.
  if (!context.watcher && hindrances(collected.diagnostics).length > 0) return collected
  context.store.set({ id, digest, filePath: source.path, data: { ...entry(collected, context.watcher !== undefined) } })
  return collected
}

function entry(collected: Collected, dev: boolean): PatternEntry {
  const { booklet, sold } = collected
  const shown: Booklet | undefined = booklet && sold ? withoutRows(booklet) : booklet
  return { sold, remarks: dev ? remarks(collected) : [], ...(shown ? { booklet: shown } : {}) }
}

/** Keeps the store true to the folder. `load` runs again when the site's own configuration changes: the older watch ends first. */
function watch({ context, root, folder, engine, watcher }: Omit<One, 'name'> & { readonly watcher: Watcher }): void {
  unwatch.get(watcher)?.()
  const inFolder = (file: string) => dirname(file) === join(root, folder) && isPatternFile(basename(file))
  const reload = async (file: string) => {
    if (!inFolder(file)) return
    try {
      await loadOne({ context, root, folder, name: basename(file), engine })
    } catch (error) {
      context.logger.error(`${folder}/${basename(file)}: ${error instanceof Error ? error.message : String(error)}`)
    }
  }
  const remove = (file: string) => {
    if (inFolder(file)) context.store.delete(basename(file, '.md'))
  }
  watcher.on('change', reload).on('add', reload).on('unlink', remove)
  unwatch.set(watcher, () => watcher.off('change', reload).off('add', reload).off('unlink', remove))
}
