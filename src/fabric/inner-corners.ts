import type { Place } from './place.ts'

const known = new WeakMap<readonly Place[], InnerCorners>()

/** The last places before the inner corners of an edge, each beside the first one behind it. */
interface InnerCorners {
  /** Between row-ends and stitches, or added chains. */
  readonly steps: ReadonlySet<Place>
  /** Between the row-ends of two parts that stand beside one another, as at the bottom of a slit or between two points; and where a seam ends. */
  readonly valleys: ReadonlySet<Place>
}

function innerCorners(edge: readonly Place[]): InnerCorners {
  const before = (meet: (one: Place, other: Place) => boolean): ReadonlySet<Place> => new Set(edge.filter((place, index) => index + 1 < edge.length && meet(place, edge[index + 1]!)))
  const found = known.get(edge) ?? { steps: before(meetInside), valleys: before(meetInValley) }
  known.set(edge, found)
  return found
}

/** The last places before an inner corner, each beside the first one behind it. Valleys are corners where an edge has no others, or all are meant. */
export function beforeInnerCorners(edge: readonly Place[], all = false): ReadonlySet<Place> {
  const { steps, valleys } = innerCorners(edge)
  return all ? new Set([...steps, ...valleys]) : steps.size > 0 ? steps : valleys
}

/** The last places before a decrease that lies in an inner corner. Worked over a stitch of either side, it stands on both. */
export function beforeDecreases(edge: readonly Place[]): ReadonlySet<Place> {
  const corners = beforeInnerCorners(edge)
  return new Set(edge.filter((place, index) => {
    const [decrease, behind] = [edge[index + 1], edge[index + 2]]
    if (decrease === undefined || behind === undefined) return false
    // At the bottom of a notch one stitch may lie between the two sides.
    return corners.has(place) && corners.has(decrease) || /\dtog$/.test(decrease.kind) && (corners.has(place) || corners.has(decrease) || liesInValley(decrease, behind))
  }))
}

/**
 * Whether the edge turns inwards between two places that lie beside one another, or between what their rounds were worked into:
 *
 *          │ ← the end of a row worked later
 *     ─────┘   stitches that an earlier row holds out; or the other way up, and chains added by a later row
 */
function meetInside(one: Place, other: Place): boolean {
  const [a, b] = underneath(one, other)
  if (!a || !b || a.kind === b.kind || !ofOnePiece(a, b)) return false
  const [rowEnd, along] = a.kind === 'row-end' ? [a, b] : [b, a]
  if (along.kind === 'ch') return rowEnd.row < along.row
  return rowEnd.row > along.row || along.travel === true && rowEnd.row === along.row
}

/**
 * Whether two places lie on the row-ends of two parts that stand on one row, beside one another:
 *
 *     \\  //   the ends of their rows
 *     ──┴┴──   the row that both stand on
 */
function meetInValley(one: Place, other: Place): boolean {
  const [a, b] = underneath(one, other)
  if (!a || !b) return false
  if (a.kind !== b.kind) return a.kind === 'row-end' ? meetAtSeam(a, b) : meetAtSeam(b, a)
  if (a.kind !== 'row-end') return false
  const [below, beside] = [a.into?.into, b.into?.into]
  if (!below || !beside) return false
  // Two points that stand on one row; on one foundation the rows on its other side are none.
  if (below.kind !== 'row-end' && beside.kind !== 'row-end') return below.kind !== 'ch' && beside.kind !== 'ch' && a.row !== b.row && below.row === beside.row
  // Points on two sides of another piece, or one that stands on a side beside the rest of that.
  return a.row === b.row || isNextTo(a, beside) || isNextTo(b, below)
}

/** The end of a row beside that on which a part stands, so many rows farther on. */
const isNextTo = (rowEnd: Place, stoodOn: Place | undefined, rows = 1): boolean => stoodOn?.kind === 'row-end' && Math.abs(rowEnd.row - stoodOn.row) <= rows

/** A decrease over the ends of two first rows stands on the one; what comes behind it stands on the end of the second row of the other side. */
function liesInValley(decrease: Place, behind: Place): boolean {
  const [a, second] = underneath(decrease, behind)
  if (a?.kind === 'row-end' && second?.kind === 'row-end' && isNextTo(second, a.into?.into, 2)) return true
  const first = second?.kind === 'row-end' ? second.into?.into : undefined
  return a !== undefined && first !== undefined && meetInValley(a, { kind: 'row-end', row: first.row, into: first })
}

const ofOnePiece = (one: Place, other: Place): boolean => {
  const [a, b] = [pieceOf(one), pieceOf(other)]
  return a === undefined || b === undefined || a === b
}

/** The piece at whose foundation a place stands; undefined where that is none of chains. */
function pieceOf(place: Place): string | undefined {
  let under = place
  while (under.into) under = under.into
  return under.piece
}

/** The end of a row beside a stitch or chain of another piece: an arm that is sewn to the top of a plate. */
function meetAtSeam(rowEnd: Place, along: Place): boolean {
  if (!ofOnePiece(rowEnd, along)) return true
  if (along.kind === 'ch') return rowEnd.row > along.row + 1
  return rowEnd.row < along.row || rowEnd.row === along.row && rowEnd.into !== along && !along.travel
}

/** What two places beside one another stand on, round under round, as far as the end of a row. */
function underneath(one: Place, other: Place): readonly (Place | undefined)[] {
  let [a, b]: readonly (Place | undefined)[] = [one, other]
  while (a && b && a.kind !== 'row-end' && b.kind !== 'row-end') [a, b] = [a.into, b.into]
  return [a, b]
}
