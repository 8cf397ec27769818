import type { Place } from './place.ts'

const known = new WeakMap<readonly Place[], ReadonlySet<Place>>()

/** The last places before an inner corner, each beside the first one behind it. */
export function beforeInnerCorners(edge: readonly Place[]): ReadonlySet<Place> {
  const found = known.get(edge) ?? new Set(edge.filter((place, index) => index + 1 < edge.length && meetInside(place, edge[index + 1]!)))
  known.set(edge, found)
  return found
}

/** The last places before a decrease that lies in an inner corner. Worked over a stitch of either side, it stands on both. */
export function beforeDecreases(edge: readonly Place[]): ReadonlySet<Place> {
  const corners = beforeInnerCorners(edge)
  return new Set(edge.filter((place, index) => {
    const [decrease, behind] = [edge[index + 1], edge[index + 2]]
    if (decrease === undefined || behind === undefined) return false
    // At the bottom of a notch one stitch may lie between the two sides.
    return corners.has(place) && corners.has(decrease) || /\dtog$/.test(decrease.kind) && (corners.has(place) || corners.has(decrease))
  }))
}

/**
 * Whether the edge turns inwards between two places that lie beside one another, or between what their rounds were worked into:
 *
 *          │ ← the end of a row worked later
 *     ─────┘   stitches that an earlier row holds out; or the other way up, and chains added by a later row
 */
function meetInside(one: Place, other: Place): boolean {
  let [a, b]: readonly (Place | undefined)[] = [one, other]
  while (a && b && a.kind !== 'row-end' && b.kind !== 'row-end') [a, b] = [a.into, b.into]
  if (!a || !b || a.kind === b.kind) return false
  const [rowEnd, along] = a.kind === 'row-end' ? [a, b] : [b, a]
  if (along.kind === 'ch') return rowEnd.row < along.row
  return rowEnd.row > along.row || along.travel === true && rowEnd.row === along.row
}
