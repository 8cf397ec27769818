import type { WorkedRow } from '../../fabric/worked-row.ts'
import type { CheckedPattern } from '../checked-pattern.ts'

/** Whether two readings of a pattern work to the same: every row in every size, stitch by stitch, and nothing is found in one alone. */
export function sameCounts(a: CheckedPattern, b: CheckedPattern): boolean {
  const codes = ({ diagnostics }: CheckedPattern) => diagnostics.map(({ code }) => code).toSorted().join()
  return codes(a) === codes(b) && a.pieces.length === b.pieces.length && a.pieces.every(({ piece, rows }, at) => {
    const other = b.pieces[at]
    return other !== undefined && other.piece.name === piece.name && other.rows.length === rows.length
      && rows.every((row, index) => facts(row, a) === facts(other.rows[index], b))
  })
}

/** A row's facts as one text. A stitch of the pattern's own counts by its place in the list of them, since its word may differ. */
function facts(row: WorkedRow | undefined, { pattern }: CheckedPattern): string {
  if (row === undefined) return ''
  const own = new Map((pattern?.stitches ?? []).map(({ abbr }, at) => [abbr, `own ${at}`]))
  const kinds = Object.entries(row.kinds).map(([kind, count]) => `${own.get(kind) ?? kind} ${count}`).toSorted()
  const { label, number, side, offers, worksOver, leaves, makes, spaces, verdict, says } = row
  return JSON.stringify([label, number, side, offers, worksOver, leaves, makes, kinds, spaces, verdict, says?.count, says?.change, row.repeats.map(({ times }) => times)])
}
