import type { EdgeUse, WorkedRow } from '../fabric/worked-row.ts'
import type { WorkedPiece } from './checked-pattern.ts'
import type { Piece, Seam } from './pattern.ts'

/**
 * A lining behind three pads that are sewn end to end: along each side of them the row goes through as many rows of it as it makes stitches, or as they have
 * rows, with or without one in each seam (common practice, no source).
 */
export function behindSeveral({ name, on, onAlso = [] }: Piece, { along = [], written }: WorkedRow, worked: readonly WorkedPiece[]): readonly Seam[] {
  const listed = onAlso.length > 1 ? worked.filter(({ piece }) => piece.name === on || onAlso.includes(piece.name)) : []
  const behind = listed.filter(({ piece }) => !along.some(({ rows }) => rows.some((row) => row.endsWith(` of ${piece.name}`))))
  const rows = behind[0]?.edges.filter(({ edge }) => edge === 'row-ends').map(({ places }) => places) ?? []
  if (behind.length !== 1 || behind[0]!.edges.length !== 4 || rows.length !== 2) return []
  return sidesOf(along).flatMap((side): readonly Seam[] => {
    if (!side.every(({ offers, worksOver }) => offers === worksOver)) return []
    const sums = [side.reduce((sum, { makes }) => sum + makes, 0), side.reduce((sum, { offers }) => sum + offers, 0)].flatMap((sum) => [sum + side.length - 1, sum])
    if (sums.some((sum) => rows.includes(sum))) return []
    return [{ join: [name, behind[0]!.piece.name], edges: [[{ edge: 'top', part: true, count: sums[0]! }, { edge: 'side' }]], within: true, span: written.text }]
  }).slice(0, 1)
}

/** Row-ends that follow one another, of one piece after another. */
function sidesOf(along: readonly EdgeUse[]): readonly (readonly EdgeUse[])[] {
  const sides: EdgeUse[][] = [[]]
  for (const use of along) {
    if (use.edge === 'row-ends') sides.at(-1)!.push(use)
    else sides.push([])
  }
  return sides.filter(({ length }) => length > 0)
}
