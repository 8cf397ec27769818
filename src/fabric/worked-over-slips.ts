import { endsOf } from './laid-row.ts'
import type { Place } from './place.ts'
import type { Laid } from './whole-fabric.ts'

/**
 * `Sc in next 15 sts, sl st in last 3 sts`, and a later row with stitches in those slip stitches: then they are stitches of their row like
 * the others, and the row ends at the edge and not at a step. The rows as they lie then; undefined where none changes.
 */
export function workedOverSlips(laid: readonly Laid[], made: readonly Place[]): readonly Laid[] | undefined {
  const rows = new Set(made.filter(({ kind }) => kind !== 'sl st').flatMap(({ into }) => slipsUnder(into)))
  if (!laid.some(({ row }) => row.withSlips && rows.has(row.places[0]?.row ?? -1))) return undefined
  return laid.map((one) => {
    const { withSlips, ...row } = one.row
    return withSlips && rows.has(row.places[0]?.row ?? -1) ? { ...one, row: { ...row, ...withSlips, ends: endsOf(withSlips.places) } } : one
  })
}

/** Rows of the slip stitches that lie on one another under a place. */
function slipsUnder(place: Place | undefined): readonly number[] {
  const rows: number[] = []
  for (let under = place; under?.kind === 'sl st'; under = under.into) rows.push(under.row)
  return rows
}
