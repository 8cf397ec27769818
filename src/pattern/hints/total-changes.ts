import { plural } from '../../diagnostics/words.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { textOf } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'
import { changeOfWords, quoted, type Change, type Slip } from './change.ts'
import { valueIn, withValues, writtenNumbers, type WrittenNumber } from './written-numbers.ts'

/** The number that a row says of itself, changed to what it makes: its total, one kind of it, or its change. */
export function totalChanges(slip: Slip): readonly Change[] {
  const { source, row, bySize, sizes } = slip
  if (!row.says) return []
  const within = slip.diagnostic.code === 'change-mismatch' ? (row.says.changeSpan ?? row.says.span) : row.says.span
  const wanted = new Map([...bySize].map(([size, worked]) => [size, saysAndMakes(worked, slip)] as const))
  if ([...wanted.values()].some((pair) => pair === undefined)) return []
  // `(24 dc, 24 ch-1 sps)`: the number of the kind that is off comes first.
  const kind = slip.diagnostic.code === 'kind-mismatch' ? row.agreement.kindSlip?.name : undefined
  const named = ({ span }: WrittenNumber): number => (kind !== undefined && source.text.slice(span.end).trimStart().startsWith(kind) ? 0 : 1)
  const numbers = writtenNumbers(source, within, sizes)
  const whole = numbers.filter((number) => [...wanted].every(([size, pair]) => valueIn(number, size) === pair!.says))
  // `(24 A, 23 B)` adds up to what it says: then one of its parts is off by the difference.
  return (whole.length > 0 ? whole : numbers)
    .toSorted((a, b) => named(a) - named(b))
    .flatMap((number) => {
      const edit = withValues(source, number, new Map([...wanted].map(([size, pair]) => [size, valueIn(number, size) + pair!.makes - pair!.says])))
      if (!edit) return []
      const words = (textOf(source, { start: within.start, end: edit.span.start }) + edit.replacement + textOf(source, { start: edit.span.end, end: within.end })).replace(/^[\s.,;:]+|\s+$/g, '')
      return [{ ...agreeing(source.text, edit, within), words: `write ${quoted(words)}`, ofTotal: true }]
    })
}

/** A range that says another number of rows than it has: `Rnds 8-13: … [5 rnds]`. */
export function rangeLengthChanges(slip: Slip): readonly Change[] {
  const { source, row, checked, piece } = slip
  const rows = checked.pieces.find((worked) => worked.piece === piece && worked.rows.includes(row))?.rows ?? []
  const count = rows.filter(({ written }) => written.span.start === row.written.span.start).length
  return writtenNumbers(source, slip.diagnostic.primary.span, slip.sizes).flatMap((number) => {
    const edit = withValues(source, number, new Map([...slip.bySize.keys()].map((size) => [size, count])))
    return edit ? [changeOfWords(slip, slip.diagnostic.primary.span, edit.span, edit.replacement)] : []
  })
}

function saysAndMakes(row: WorkedRow, { diagnostic, checked, piece }: Slip): { readonly says: number; readonly makes: number } | undefined {
  const { says, agreement } = row
  if (!says) return undefined
  if (diagnostic.code === 'kind-mismatch') return agreement.kindSlip
  if (diagnostic.code === 'change-mismatch') {
    const rows = checked.pieces.find((worked) => worked.piece === piece && worked.rows.includes(row))?.rows ?? []
    const before = rows[rows.indexOf(row) - 1]
    return says.change === undefined || !before ? undefined : { says: Math.abs(says.change), makes: Math.abs(row.makes - before.makes) }
  }
  const closing = says.closing ? 1 : 0
  if (says.count !== undefined) return { says: says.count + closing, makes: row.makes + closing }
  const kinds = Object.entries(says.kinds)
  const off = kinds.filter(([kind, count]) => (row.kinds[kind] ?? 0) !== count)
  const [only] = off.length > 0 ? off : kinds
  return off.length > 1 || !only ? undefined : { says: only[1], makes: kinds.length === 1 ? row.makes : (row.kinds[only[0]] ?? 0) }
}

/** `1 sts` is no total that anybody writes: the word goes with its number. */
function agreeing(text: string, { span, replacement }: { readonly span: Span; readonly replacement: string }, within: Span): { readonly span: Span; readonly replacement: string } {
  const word = /^ (sts?|sps?|stitch(?:es)?)\b/.exec(text.slice(span.end, within.end))
  if (!word || !/^\d+$/.test(replacement)) return { span, replacement }
  const bare = word[1]!.replace(/^stitches$/, 'stitch').replace(/^(st|sp)s$/, '$1')
  return { span: { start: span.start, end: span.end + word[0].length }, replacement: `${replacement} ${plural(bare, Number(replacement))}` }
}
