import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { textOf, type Source } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'
import type { CheckedPattern } from '../checked-pattern.ts'
import type { Piece } from '../pattern.ts'

/** A small change to the file, of the size of a slip of the finger. Data: it is not made, only tried. */
export interface Change {
  /** What is replaced; empty where something is put in. */
  readonly span: Span
  readonly replacement: string
  /** What the change is, as the beginning of a hint: ``with `5 times` for `6 times` ``. */
  readonly words: string
  /** The row is left as it is, and what it says of itself is changed. */
  readonly ofTotal?: boolean
  /** Who makes this slip reckons the total with it: where the total does not come out afterwards, it may be changed as well. */
  readonly carriesTotal?: boolean
  /** It changes the total of the row as well, so that what the row says proves nothing. */
  readonly withTotal?: boolean
  /** Of a number: whether the row is off by what it would change. Undefined for what is no number. */
  readonly fits?: boolean
  /** Of a list of sizes: 1 where it grows more steadily with the change, -1 where less. */
  readonly steadier?: number
  /** The words that the row would then have, from comma to comma. */
  readonly clause?: string
  /** The words that stand there now, from comma to comma. */
  readonly stands?: string
}

/** A finding about a row, and all that a search for changes may look at. */
export interface Slip {
  readonly checked: CheckedPattern
  readonly source: Source
  readonly diagnostic: Diagnostic
  readonly piece: Piece
  /** The row in the first size in which it does not come out. */
  readonly row: WorkedRow
  /** The row in each size that the finding is about, by the size's index. */
  readonly bySize: ReadonlyMap<number, WorkedRow>
  /** How many sizes the pattern has; 1 when it names none. */
  readonly sizes: number
}

/** The row before or after a slip's row in its piece and size; of a range those of other written rows. */
export function rowsOf({ checked, piece, row }: Pick<Slip, 'checked' | 'piece' | 'row'>): readonly WorkedRow[] {
  return checked.pieces.find((worked) => worked.piece === piece && worked.rows.includes(row))?.rows ?? []
}

/**
 * A change of one stretch of the row's words, shown with the words around it up to the next comma; `shown` is the least of them, the
 * whole of a list of sizes.
 */
export function changeOfWords({ source }: Pick<Slip, 'source'>, within: Span, span: Span, replacement: string, shown = span): Change {
  const clause = clauseAround(source, within, shown)
  const before = textOf(source, { start: clause.start, end: span.start })
  const after = textOf(source, { start: span.end, end: clause.end })
  const instead = before + replacement + after
  const stands = before + textOf(source, span) + after
  return { span, replacement, words: `with ${quoted(instead)} for ${quoted(stands)}`, clause: instead.trim(), stands: stands.trim() }
}

/** Words in backticks, on one line and without the sign that begins a repeat. */
export function quoted(words: string): string {
  return `\`${words.replace(/\s+/g, ' ').trim()}\``
}

const farthest = 44

/** From one sign that parts instructions to the next, but not farther than a reader looks. */
function clauseAround({ text }: Source, within: Span, span: Span): Span {
  let { start, end } = span
  while (start > within.start && span.start - start < farthest && !/[,;*:.[\](){}]/.test(text[start - 1]!)) start -= 1
  while (end < within.end && end - span.end < farthest && !/[,;*.[\](){}]/.test(text[end]!)) end += 1
  return { start: wordStart(text, start, span.start), end: wordEnd(text, end, span.end) }
}

function wordStart(text: string, at: number, before: number): number {
  let start = at
  while (start < before && (/\s/.test(text[start]!) || /\w/.test(text[start - 1] ?? '') && /\w/.test(text[start]!))) start += 1
  return start
}

function wordEnd(text: string, at: number, after: number): number {
  let end = at
  while (end > after && (/\s/.test(text[end - 1]!) || /\w/.test(text[end] ?? '') && /\w/.test(text[end - 1]!))) end -= 1
  return end
}
