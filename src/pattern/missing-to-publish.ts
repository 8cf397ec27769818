import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted, listOf } from '../diagnostics/words.ts'
import type { Span } from '../text/span.ts'
import { entryAt, type KeysEntry, type Path } from './entry.ts'

/** Besides `title`, `terms` and `pieces`, which a pattern needs to be checked at all. */
const neededKeys = ['summary', 'designer', 'version', 'date', 'level', 'made-for', 'gauge', 'materials', 'finished']

/** What a pattern lacks to be published, in one finding: a buyer has to know the yarn, the hook, the gauge and the size. */
export function missingToPublish(root: KeysEntry, opening: Span): readonly Diagnostic[] {
  const missing = [...neededKeys.filter((key) => isMissing(root, [key])), ...missingMaterials(root)].map((key) => `\`${key}\``)
  if (missing.length === 0) return []
  return [{
    code: 'key-missing-to-publish',
    message: `the front-matter lacks ${missing.length === 1 ? 'a key' : counted(missing.length, 'key')} that a published pattern has: ${listOf(missing)}`,
    primary: { span: opening, text: `lacks ${missing.length === 1 ? listOf(missing) : 'them'}` },
    secondary: [],
    note: 'the rows are counted without them',
  }]
}

function missingMaterials(root: KeysEntry): readonly string[] {
  const materials = entryAt(root, ['materials'])
  if (materials?.kind !== 'keys') return []
  const yarns = entryAt(materials, ['yarns'])
  const anyNeeds = yarns?.kind === 'list' && (yarns.lacks || yarns.items.some((yarn) => !isMissing(yarn, ['needs'])))
  const listed = !isMissing(materials, ['yarns'])
  return [
    ...(listed ? [] : ['materials.yarns']),
    ...(listed && yarns && !anyNeeds ? ['materials.yarns.needs'] : []),
    ...(isMissing(materials, ['hooks']) ? ['materials.hooks'] : []),
  ]
}

/** Not there, and not left out for being wrong either. An empty list is as good as none. */
function isMissing(root: Parameters<typeof entryAt>[0], path: Path): boolean {
  const holder = entryAt(root, path.slice(0, -1))
  if (holder?.kind !== 'keys' || holder.leftOut.has(String(path.at(-1)))) return false
  const entry = entryAt(root, path)
  return !entry || (entry.kind === 'list' && entry.items.length === 0 && !entry.lacks)
}
