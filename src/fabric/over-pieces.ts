import type { LaidRow } from './laid-row.ts'
import type { Outline } from './outline.ts'
import type { Place } from './place.ts'
import { likeness } from './likeness.ts'
import type { Lies } from './lies-on.ts'
import { underLastChain } from './parts.ts'
import type { Walk } from './walk.ts'

/** One of the pieces that a row goes over: its places in the order of the row, and the underside of the chain that led to it. */
export interface Leg {
  /** Left out: the fabric that the row was begun on. */
  readonly piece?: string
  readonly places: readonly Place[]
  readonly bridge: readonly Place[]
}

/** Fabrics that a row goes over and so holds together from then on, in its order; and those that lie beside the one it was begun on. */
export interface GoesOver {
  readonly legs: readonly Leg[]
  readonly beside: readonly Outline[]
}

/** The row goes on along another piece, or another copy, whose places begin at an index of the edge. */
export function leaveLeg(walk: Walk, from = walk.at): void {
  const places = walk.made.length === 0 ? [] : walk.edge.slice(legBegins(walk), walk.at)
  if (places.length > 0) walk.legs.push({ ...(walk.onPiece && { piece: walk.onPiece.name }), places, behind: underLastChain(walk) })
  walk.legFrom = places.length > 0 ? from : 0
}

const legBegins = ({ legs, legFrom, begunAt }: Walk): number => (legs.length === 0 ? Math.max(legFrom, begunAt) : legFrom)

/** The pieces that a flat row has gone over, where these are more than one. */
export function legsOf(walk: Walk, to: number): readonly Leg[] {
  if (walk.legs.length === 0 || walk.round) return []
  const all = [...walk.legs, { ...(walk.onPiece && { piece: walk.onPiece.name }), places: walk.edge.slice(legBegins(walk), to), behind: [] }]
  if (all.some(({ places }) => places.length === 0)) return []
  return all.map(({ behind: _, ...leg }, index) => ({ ...leg, bridge: all[index - 1]?.behind ?? [] }))
}

/**
 * How a row holds together what it goes over; where that is not known, undefined. Every copy of a piece is a fabric of its own. A row of the right side
 * goes over all of them from right to left, whichever way their last rows were worked.
 */
export function goesOver(legs: readonly Leg[], own: Outline, outlinesOf: (piece: string) => readonly Outline[], side: LaidRow['side']): GoesOver | undefined {
  const beside: Outline[] = []
  const taken = new Set<Place>()
  const over: Leg[] = []
  let toRight = side === undefined ? undefined : side === 'RS'
  for (const leg of legs) {
    const [first, last] = [leg.places[0]!, leg.places.at(-1)!]
    const at = [own, ...beside, ...(leg.piece === undefined ? [] : outlinesOf(leg.piece))].find((outline) => outline.has(first) && outline.has(last))
    if (!at) return undefined
    const runs = at.runsRight(leg.places)
    toRight ??= runs
    const places = runs === undefined || runs === toRight ? leg.places : leg.places.toReversed()
    if (!taken.has(first)) {
      over.push({ ...leg, places })
      if (at !== own && !beside.includes(at)) beside.push(at)
    } else {
      const copy = likeness()
      over.push({ ...leg, places: places.map(copy.placeFor) })
      beside.push(at.copy(copy))
    }
    for (const place of leg.places) taken.add(place)
  }
  return { legs: over, beside }
}

/** What such a row lies on, from end to end. */
export function overEnds({ legs }: GoesOver): NonNullable<Lies['over']> {
  const [first, last] = [legs[0]!.places, legs.at(-1)!.places]
  return { first: first[0]!, second: first[1] ?? first[0]!, beforeLast: last.at(-2) ?? last.at(-1)!, last: last.at(-1)! }
}
