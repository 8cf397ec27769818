import { readFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { LoaderContext } from 'astro/loaders'
import { z } from 'astro/zod'
import { engineFingerprint } from './engine-fingerprint.ts'

/** Gives the pages our own Markdown texts in a folder, each as `entryOf` makes it of its name and its text. */
export function textsLoader<Entry extends object>(folder: string, entryOf: (name: string, text: string) => Entry) {
  return {
    name: folder,
    // What is stored is checked on its way in; the schema only carries its type to the pages.
    schema: z.custom<Entry>(),
    async load(context: LoaderContext): Promise<void> {
      const root = join(fileURLToPath(context.config.root), folder)
      await loadAll(context, root, entryOf)
      context.watcher?.on('change', (file) => {
        if (file.startsWith(root)) void loadAll(context, root, entryOf)
      })
    },
  }
}

async function loadAll(context: LoaderContext, folder: string, entryOf: (name: string, text: string) => object): Promise<void> {
  const files = (await readdir(folder)).filter((name) => name.endsWith('.md')).sort()
  const texts = await Promise.all(files.map((name) => readFile(join(folder, name), 'utf8')))
  // All pages together have one digest, so that they are all made anew, in their order, or none.
  const digest = context.generateDigest({ engine: await engineFingerprint(fileURLToPath(context.config.root)), files, texts })
  if (context.store.keys().length === files.length && context.store.values().every((entry) => entry.digest === digest)) return
  context.store.clear()
  for (const [at, file] of files.entries()) {
    const name = file.slice(0, -'.md'.length)
    context.store.set({ id: name, digest, data: { ...entryOf(name, texts[at] ?? '') } })
  }
}
