import type { PieceFacts } from '../../checks/facts.ts'
import type { DiagnosticCode } from '../../diagnostics/codes.ts'
import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { textOf } from '../../text/source.ts'
import type { Span } from '../../text/span.ts'
import type { WorkedPiece } from '../checked-pattern.ts'
import type { Pattern } from '../pattern.ts'
import { senseChecks } from './all-sense.ts'
import { prosePassages, type Passage } from './passages.ts'

/**
 * Whether a pattern's words agree with one another and with its rows: the front-matter, the notes, the prose. `pieces` and `facts` are
 * the same pieces in every size; `remarks` the lines between rows.
 */
export function senseFindings(pattern: Pattern, pieces: readonly WorkedPiece[], facts: readonly PieceFacts[], remarks: readonly { readonly span: Span; readonly piece: string }[]): readonly Diagnostic[] {
  const seen = { pattern, pieces, facts, rows: rowPassages(pattern, facts), prose: prosePassages(pattern, remarks) }
  const found = senseChecks.flatMap((check) => check(seen))
  return found.filter(({ code, primary }) => !(followers[code] ?? []).some((cause) => found.some((other) => other.code === cause))
    // `Row 9 of the Brim`, and there is no Brim.
    && !(code === 'prose-reference-unknown' && found.some((other) => other.code === 'prose-name-unknown' && other.primary.span.start === primary.span.start)))
}

/** Findings that may only be the shadow of another one: a gauge with a wrong digit makes every size wrong. One slip, one finding. */
const followers: Partial<Record<DiagnosticCode, readonly DiagnosticCode[]>> = {
  'finished-size-mismatch': ['gauge-outside-weight'],
  'yarn-amount-implausible': ['gauge-outside-weight', 'ball-outside-weight', 'size-list-order'],
  'size-jump-uneven': ['finished-size-mismatch', 'gauge-outside-weight'],
}

function rowPassages({ source }: Pattern, facts: readonly PieceFacts[]): readonly Passage[] {
  return facts.filter(({ size }) => size === 0).flatMap(({ name, entries }) =>
    entries.map(({ span }): Passage => ({ text: textOf(source, span), start: span.start, kind: 'row', piece: name })))
}
