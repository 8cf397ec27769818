import { severityOf } from '../diagnostics/codes.ts'
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
 * A piece that is a row short, or that steps in too far, is met again by each border on it and by each seam of its sides. That is one
 * slip: the seam tells of the rows, the border of the step.
 */
export function toldOnce(found: readonly Diagnostic[], facts: PatternFacts): readonly Diagnostic[] {
  const onRows = found.flatMap((diagnostic) => ofRow(diagnostic, facts) ?? [])
  const ofRowEnds = onRows.filter(({ diagnostic, row }) => (row.along !== undefined || diagnostic.code === 'place-missing') && row.troubles.some(isOfRowEnds))
  const seamed = fabricsOfSides(found, facts)
  const followers = new Set<Diagnostic>()
  const fabricsTold = new Set<string>()
  for (const { diagnostic, piece } of ofRowEnds.toSorted((a, b) => Number(a.diagnostic.code === 'place-missing') - Number(b.diagnostic.code === 'place-missing'))) {
    const again = diagnostic.code === 'place-missing' && fabricsTold.has(piece.fabric)
    if (again || seamed.has(piece.fabric)) followers.add(diagnostic)
    fabricsTold.add(piece.fabric)
  }
  const stepOf = new Map<Diagnostic, Diagnostic>()
  for (const step of onRows.filter(({ diagnostic }) => diagnostic.code === 'step-lopsided')) {
    const border = onRows.find((other) => other.piece !== step.piece && other.piece.fabric === step.piece.fabric && other.row.along !== undefined && severityOf(other.diagnostic.code) === 'error')
    if (!border) continue
    followers.add(step.diagnostic)
    stepOf.set(border.diagnostic, step.diagnostic)
  }
  return found.filter((diagnostic) => !followers.has(diagnostic)).map((diagnostic) => {
    const step = stepOf.get(diagnostic)
    return step ? { ...diagnostic, secondary: [...diagnostic.secondary, step.primary] } : diagnostic
  })
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

/** The fabrics of pieces whose sides do not match at a seam. */
function fabricsOfSides(found: readonly Diagnostic[], { seams, pieces }: PatternFacts): ReadonlySet<string> {
  const wrong = seams.filter(({ span, edges }) => edges?.some((edge) => edge === 'left' || edge === 'right' || edge === 'side') && found.some(({ code, primary }) => code === 'seam-mismatch' && primary.span.start === span.start))
  return new Set(pieces.filter(({ name }) => wrong.some(({ join }) => join.includes(name))).map(({ fabric }) => fabric))
}
