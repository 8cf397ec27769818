import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Booklet } from '../booklet/booklet.ts'
import { makeBooklet } from '../booklet/make-booklet.ts'
import { severityOf } from '../diagnostics/codes.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { checkPattern } from '../pattern/check-pattern.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import type { Source } from '../text/source.ts'
import { readSource } from './read-source.ts'

/** One pattern file, worked through to its booklet. */
export interface Collected {
  readonly source: Source
  readonly diagnostics: readonly Diagnostic[]
  /** Left out when there is nothing to put in print: the file could not be read as a pattern. */
  readonly booklet?: Booklet
  readonly sold: boolean
}

/** Names of the pattern files in a folder, in the order of the alphabet. */
export async function patternFiles(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { withFileTypes: true })
  return entries.filter((entry) => entry.isFile() && isPatternFile(entry.name)).map(({ name }) => name).sort()
}

/** `skiff-cushion.md`, but not an editor's own `.#skiff-cushion.md`. */
export function isPatternFile(name: string): boolean {
  return name.endsWith('.md') && !name.startsWith('.')
}

/** Works one pattern file. `folder` and `name` say where it lies below `root`; messages show it from there. */
export async function collectPattern({ root, folder, name }: { root: string; folder: string; name: string }): Promise<Collected> {
  const { source, unreadable } = await readSource(join(root, folder, name), `${folder}/${name}`)
  if (unreadable) return { source, diagnostics: [unreadable], sold: false }
  return collect(checkPattern(source))
}

/** Works every pattern file of a folder. */
export async function collectPatterns(root: string, folder: string): Promise<readonly Collected[]> {
  const collected: Collected[] = []
  for (const name of await patternFiles(join(root, folder))) collected.push(await collectPattern({ root, folder, name }))
  return collected
}

/** What keeps a pattern out of the published site: every error, and every key that a published pattern needs and this one lacks. */
export function hindrances(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  return diagnostics.filter(({ code }) => severityOf(code) === 'error' || code === 'key-missing-to-publish')
}

function collect(checked: CheckedPattern): Collected {
  const { source, pattern, diagnostics } = checked
  if (!pattern) return { source, diagnostics, sold: false }
  const sold = pattern.access === 'sold'
  if (hindrances(diagnostics).length === 0) return { source, diagnostics, booklet: makeBooklet(checked), sold }
  // A pattern that does not come out may have gaps that no booklet expects. While it is being written, show what there is.
  try {
    return { source, diagnostics, booklet: makeBooklet(checked), sold }
  } catch {
    return { source, diagnostics, sold }
  }
}
