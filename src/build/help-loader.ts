import { readFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { LoaderContext } from 'astro/loaders'
import { z } from 'astro/zod'
import type { HelpEntry } from '../components/help-entry.ts'
import { codes, type DiagnosticCode } from '../diagnostics/codes.ts'
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
  context.store.clear()
  for (const name of names) {
    const code = name.slice(0, -'.md'.length)
    if (!isCode(code)) throw new Error(`src/help/${name} is named for no diagnostic: this is our mistake, not your pattern's`)
    const text = await readFile(join(folder, name), 'utf8')
    const entry: HelpEntry = { code, ...codes[code], html: helpHtml(text) }
    context.store.set({ id: code, data: { ...entry } })
  }
}

function isCode(name: string): name is DiagnosticCode {
  return name in codes
}
