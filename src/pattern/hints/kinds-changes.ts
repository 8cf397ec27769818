import type { WorkedRow } from '../../fabric/worked-row.ts'
import { wordFor } from '../../stitches/terms.ts'
import { textOf } from '../../text/source.ts'
import { quoted, type Change, type Slip } from './change.ts'
import { edited, type Edit } from './work-again.ts'
import { valueIn, withValues, writtenNumbers, type WrittenNumber } from './written-numbers.ts'

/** A total that counts by kind with several numbers off: all of them changed to what the row makes, `(6 dc, 6 hdc)`. */
export function kindsChanges(slip: Slip): readonly Change[] {
  const { source, row: { says }, bySize, sizes, checked: { pattern } } = slip
  if (!says || !pattern) return []
  const numbers = writtenNumbers(source, says.span, sizes)
  const edits = numbers.flatMap((number): readonly Edit[] => {
    const values = new Map([...bySize].map(([size, row]) => [size, madeOf(row, number) ?? valueIn(number, size)] as const))
    const edit = withValues(source, number, values)
    return edit ? [edit] : []
  })
  if (edits.length < 2) return []
  const span = { start: edits[0]!.span.start, end: edits.at(-1)!.span.end }
  const shift = (edit: Edit): Edit => ({ ...edit, span: { start: edit.span.start - span.start, end: edit.span.end - span.start } })
  const replacement = edited({ path: '', text: textOf(source, span) }, edits.map(shift)).text
  const whole = textOf(source, { start: says.span.start, end: span.start }) + replacement + textOf(source, { start: span.end, end: says.span.end })
  return [{ span, replacement, words: `write ${quoted(whole)}`, ofTotal: true }]

  /** What the row makes of the kind that stands behind a number; undefined where that is no kind of it. */
  function madeOf({ kinds, spaces, says: said }: WorkedRow, number: WrittenNumber): number | undefined {
    const behind = source.text.slice(number.span.end).trimStart().toLowerCase()
    const kind = Object.keys(said?.kinds ?? {}).find((name) => new RegExp(String.raw`^${escaped(wordFor(name, pattern!.terms))}s?\b`, 'i').test(behind))
    if (kind !== undefined) return kinds[kind]
    const space = Object.keys(said?.spaces ?? {}).find((name) => behind.startsWith(name))
    return space === undefined ? undefined : spaces[space]
  }
}

function escaped(words: string): string {
  return words.replace(/[^\w ]/g, String.raw`\$&`)
}
