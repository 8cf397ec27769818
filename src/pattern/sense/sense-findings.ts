import type { PieceFacts } from '../../checks/facts.ts'
import type { DiagnosticCode } from '../../diagnostics/codes.ts'
import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { textOf } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'
import type { WorkedPiece } from '../checked-pattern.ts'
import type { Pattern } from '../pattern.ts'
import { senseChecks } from './all-sense.ts'
import { prosePassages, type Passage } from './passages.ts'

/** A pattern as it was read and worked. */
export interface Worked {
  readonly pattern: Pattern
  /** Every piece in every size, and the same pieces with their written rows. */
  readonly pieces: readonly WorkedPiece[]
  readonly facts: readonly PieceFacts[]
  /** The lines between rows. */
  readonly remarks: readonly { readonly span: Span; readonly piece: string }[]
  /** What reading the file and the checks of rows and pieces found. */
  readonly told: readonly Diagnostic[]
}

/** Whether a pattern's words agree with one another and with its rows: the front-matter, the notes, the prose. */
export function senseFindings({ pattern, pieces, facts, remarks, told }: Worked): readonly Diagnostic[] {
  const seen = { pattern, pieces, facts, rows: rowPassages(pattern, facts), prose: prosePassages(pattern, remarks) }
  const found = senseChecks.flatMap((check) => check(seen))
  const all = [...told, ...found]
  return found.filter(({ code, primary }) => !(followers[code] ?? []).some((cause) => all.some((other) => other.code === cause))
    // `Row 9 of the Brim`, and there is no Brim.
    && !(code === 'prose-reference-unknown' && found.some((other) => other.code === 'prose-name-unknown' && other.primary.span.start === primary.span.start)))
}

/** Findings that may only be the shadow of another one: a gauge with a wrong digit makes every size wrong. One slip, one finding. */
const followers: Partial<Record<DiagnosticCode, readonly DiagnosticCode[]>> = {
  'finished-size-mismatch': ['gauge-outside-weight', 'size-list-order'],
  'yarn-amount-implausible': ['gauge-outside-weight', 'ball-outside-weight', 'size-list-order', 'finished-size-mismatch'],
  'hook-outside-weight': ['hook-not-listed'],
  // What could not be read was left out, and is told there.
  'gauge-incomplete': ['value-wrong', 'key-unknown'],
  'yarn-details-missing': ['value-wrong', 'key-unknown'],
  'hook-not-listed': ['value-wrong', 'key-unknown'],
  'notion-not-listed': ['value-wrong', 'key-unknown'],
  'prose-name-unknown': ['value-wrong', 'key-unknown'],
  'yarn-rows-mismatch': ['row-number-out-of-order'],
  'prose-reference-unknown': ['row-number-out-of-order'],
  'prose-count-mismatch': ['row-number-out-of-order'],
  'side-mismatch': ['row-number-out-of-order'],
  'sizes-end-apart': ['row-number-out-of-order', 'range-length-mismatch', 'places-left-over', 'row-overruns'],
  'size-jump-uneven': ['finished-size-mismatch', 'gauge-outside-weight'],
}

function rowPassages({ source }: Pattern, facts: readonly PieceFacts[]): readonly Passage[] {
  return facts.filter(({ size }) => size === 0).flatMap(({ name, entries }) =>
    entries.map(({ span }): Passage => ({ text: textOf(source, span), start: span.start, kind: 'row', piece: name })))
}
