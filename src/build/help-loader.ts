import { readFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { LoaderContext } from 'astro/loaders'
import { z } from 'astro/zod'
import type { HelpEntry } from '../components/help-entry.ts'
import { codes, type DiagnosticCode } from '../diagnostics/codes.ts'
import { engineFingerprint } from './engine-fingerprint.ts'
import { helpHtml } from './help-html.ts'

/** Gives the pages what `src/help` says about every code. A file must be named for its code. */
export function helpLoader(folder: string) {
  return {
    name: 'help',
    // What is stored is checked on its way in; the schema only carries its type to the pages.
    schema: z.custom<HelpEntry>(),
    async load(context: LoaderContext): Promise<void> {
      const root = join(fileURLToPath(context.config.root), folder)
      await loadAll(context, root)
      context.watcher?.on('change', (file) => {
        if (file.startsWith(root)) void loadAll(context, root)
      })
    },
  }
}

async function loadAll(context: LoaderContext, folder: string): Promise<void> {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.md')).sort()
  const texts = await Promise.all(names.map((name) => readFile(join(folder, name), 'utf8')))
  // All pages together have one digest, so that they are all made anew, in their order, or none.
  const digest = context.generateDigest({ engine: await engineFingerprint(fileURLToPath(context.config.root)), names, texts })
  if (context.store.keys().length === names.length && context.store.values().every((entry) => entry.digest === digest)) return
  context.store.clear()
  for (const [at, name] of names.entries()) {
    const code = name.slice(0, -'.md'.length)
    if (!isCode(code)) throw new Error(`src/help/${name} is named for no diagnostic: this is our mistake, not your pattern's`)
    const entry: HelpEntry = { code, ...codes[code], html: helpHtml(texts[at] ?? '') }
    context.store.set({ id: code, digest, data: { ...entry } })
  }
}

function isCode(name: string): name is DiagnosticCode {
  return name in codes
}
