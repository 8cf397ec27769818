import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { textOf } from '../../text/source.ts'
import type { CheckedPattern } from '../checked-pattern.ts'
import { quoted, rowsOf, type Slip } from './change.ts'
import { slipOf } from './slip-of.ts'
import type { Edit } from './work-again.ts'

/** A finding that a row states no count, and the edit that would state it. */
export interface MissingTotal {
  readonly diagnostic: Diagnostic
  readonly edit: Edit
  readonly words: string
}

/** For every row that states no count the count that it makes, as its pattern writes counts; all are tried together. */
export function missingTotals(checked: CheckedPattern): readonly MissingTotal[] {
  return checked.diagnostics.flatMap((diagnostic) => {
    const slip = diagnostic.code === 'count-missing' && !diagnostic.hint ? slipOf(checked, diagnostic) : undefined
    if (!slip || slip.row.says || slip.row.written.copies !== undefined) return []
    const { start, end } = slip.row.written.span
    const at = start + slip.source.text.slice(start, end).trimEnd().length
    const total = totalOf(slip)
    return total === undefined ? [] : [{ diagnostic, edit: { span: { start: at, end: at }, replacement: ` ${total}` }, words: `the row makes it: write ${quoted(total)} at its end` }]
  })
}

/** `(12)`, `(12 sts)`, `[12 (14, 16)]`: in the dress of the last total before it that is one plain number. */
function totalOf(slip: Slip): string | undefined {
  const counts = Array.from({ length: slip.sizes }, (_, size) => madeIn(slip, size))
  if (counts.some((count) => count === undefined)) return undefined
  const [first, ...others] = counts
  const alike = new Set(counts).size === 1
  const number = alike ? `${first}` : `${first} (${others.join(', ')})`
  const rows = rowsOf(slip)
  const before = rows.slice(0, rows.indexOf(slip.row)).findLast(({ says }) => says !== undefined)
  const dress = before?.says && /^([([])\d+(?: \([\d, ]+\))?( sts)?([)\]])$/.exec(textOf(slip.source, before.says.span).trim())
  return dress ? `${dress[1]}${number}${dress[2] ?? ''}${dress[3]}` : `(${number})`
}

/** What the last real row of the written one makes: a total of a range holds for its end. */
function madeIn({ checked, piece, row }: Slip, size: number): number | undefined {
  const name = checked.pattern?.sizes[size]
  const rows = checked.pieces.find((worked) => worked.piece === piece && worked.size === name)?.rows ?? []
  const last = rows.findLast(({ written }) => written.span.start === row.written.span.start)
  return last?.uncounted ? undefined : last?.makes
}
