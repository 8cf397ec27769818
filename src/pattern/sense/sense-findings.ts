import type { PieceFacts } from '../../checks/facts.ts'
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
  return senseChecks.flatMap((check) => check(seen))
}

function rowPassages({ source }: Pattern, facts: readonly PieceFacts[]): readonly Passage[] {
  return facts.filter(({ size }) => size === 0).flatMap(({ name, entries }) =>
    entries.map(({ span }): Passage => ({ text: textOf(source, span), start: span.start, kind: 'row', piece: name })))
}
