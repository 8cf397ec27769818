import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import { entryAt, leaveOut, type KeysEntry, type Path } from './entry.ts'
import type { PatternValues } from './schema/pattern.ts'

/** Lists that have a value for each size: as many as there are sizes, or one for all of them. */
export function sizeListFindings(root: KeysEntry, values: PatternValues): readonly Diagnostic[] {
  if (root.leftOut.has('sizes')) return []
  const sizes = Math.max(1, values.sizes?.length ?? 0)
  return perSizePaths(values).flatMap((path) => {
    const list = entryAt(root, path)
    if (list?.kind !== 'list' || (!list.lacks && (list.items.length === sizes || list.items.length === 1))) return []
    leaveOut(entryAt(root, path.slice(0, -1)), path.at(-1), list)
    return list.lacks ? [] : [wrongLength({ path, length: list.items.length, sizes, span: list.span })]
  })
}

function perSizePaths({ materials, finished }: PatternValues): readonly Path[] {
  return [
    ...(materials?.yarns ?? []).map((_, index): Path => ['materials', 'yarns', index, 'needs']),
    ...(materials?.notions ?? []).flatMap((_, index): Path[] => ['count', 'amount'].map((key) => ['materials', 'notions', index, key])),
    ...(finished ?? []).map((_, index): Path => ['finished', index, 'is']),
  ]
}

function wrongLength({ path, length, sizes, span }: {
  readonly path: Path
  readonly length: number
  readonly sizes: number
  readonly span: { readonly start: number; readonly end: number }
}): Diagnostic {
  return {
    code: 'value-wrong',
    message: `\`${path.at(-1)}\` holds ${counted(length, 'value')}, but the pattern has ${counted(sizes, 'size')}`,
    primary: { span, text: counted(length, 'value') },
    secondary: [],
    note: sizes === 1 ? 'a pattern without `sizes` has one size' : 'one value is for every size; a list has one for each, in the order of `sizes`',
  }
}
