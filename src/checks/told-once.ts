import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import type { PatternFacts, PieceFacts } from './facts.ts'

/** A finding with the row that it is of. */
interface OfRow {
  readonly diagnostic: Diagnostic
  readonly piece: PieceFacts
  readonly row: WorkedRow
}

/**
 * A piece that is a row short is met again by each border on it: one asks for more row-ends than there are, another for the end of the row
 * that is missing. That is one slip. Findings that may be slips of their own are never dropped: a border, a seam and a step each have theirs.
 */
export function toldOnce(found: readonly Diagnostic[], facts: PatternFacts): readonly Diagnostic[] {
  const ofRowEnds = found.flatMap((diagnostic) => ofRow(diagnostic, facts) ?? []).filter(({ row }) => row.troubles.some(isOfRowEnds))
  const borders = new Set(ofRowEnds.filter(({ diagnostic }) => diagnostic.code !== 'place-missing').map(({ piece }) => piece.fabric))
  const followers = new Set<Diagnostic>()
  for (const { diagnostic, piece } of ofRowEnds) {
    if (diagnostic.code !== 'place-missing') continue
    if (borders.has(piece.fabric)) followers.add(diagnostic)
    borders.add(piece.fabric)
  }
  return found.filter((diagnostic) => !followers.has(diagnostic))
}

function ofRow(diagnostic: Diagnostic, { pieces }: PatternFacts): OfRow | undefined {
  const { start } = diagnostic.primary.span
  for (const piece of pieces) {
    const row = piece.rows.find(({ written }) => written.span.start <= start && start <= written.span.end)
    if (row) return { diagnostic, piece, row }
  }
  return undefined
}

/** The trouble is that the side has another number of rows than the words tell. */
const isOfRowEnds = (trouble: WorkedRow['troubles'][number]): boolean =>
  trouble.kind === 'row-ends-passed' || trouble.kind === 'overrun' && trouble.what === 'row-end' || trouble.kind === 'no-such-place' && /\brow \d+$/.test(trouble.what)
