import { Outline } from './outline.ts'
import type { LaidRow } from './laid-row.ts'
import { likeness } from './likeness.ts'
import type { Place } from './place.ts'
import { begunBehind, partsOfRing, spotsOf, type Ring, type Spot } from './sewn-rings.ts'

/** A finished piece: its outline and its rows. */
export interface Layer {
  readonly outline: Outline
  readonly rows: readonly LaidRow[]
}

/**
 * Two pieces of one shape are held together, or two copies of one, and rows go through both: what they leave free of the one lies beside what
 * they leave of the other, as at the mouth of a pouch. With two like sides together they are mirrored: the left end of a row lies on the right
 * end of the other's. Between them lie the ends of the joining rows, which are places or are passed. Nothing where the rows go along what the
 * other piece has not.
 */
export function sewnLayers(front: Layer, joining: readonly LaidRow[], behind: Layer): readonly Outline[] {
  const over = joining[0]?.over
  const [ring, other] = [front, behind].map(({ outline }) => spotsOf(outline.seenFromRight.parts))
  const run = over && ring ? runAlong(ring, over.first, over.second, over.last) : []
  if (!over || !ring || !other || run.length === 0 || run.length >= ring.length) return []
  const facing = run.flatMap((spot) => mirror(spot, behind.rows[front.rows.indexOf(spot.row)]) ?? [])
  if (facing.length < run.length || !facing.every((place) => other.some((spot) => spot.place === place))) return []
  const [rest, restBehind] = [begunBehind(ring, run.map(({ place }) => place)), begunBehind(other, facing)]
  const seam: Ring = [{ ...run[0]!, edge: 'seam' }]
  const ends = run.at(-1)!.place === over.last ? [endsAt(joining, 1), endsAt(joining, 0)] as const : [endsAt(joining, 0), endsAt(joining, 1)] as const
  const round = (before: Ring, between: Ring): Outline => Outline.round(partsOfRing([...before, ...rest, ...between, ...(front === behind ? copied(restBehind) : restBehind)]))
  return [round(seam, front === behind ? copied(seam) : seam), round(ends[0], ends[1])]
}

/** The ends of joining rows on the side where the first of them begins, or on the other; every other row is worked back. */
function endsAt(joining: readonly LaidRow[], side: 0 | 1): Ring {
  return joining.flatMap((row, index) => {
    const place = row.ends?.[index % 2 === 0 ? side : 1 - side]
    return place ? [{ edge: 'row-ends' as const, row, place }] : []
  })
}

/** The places of a ring from one to another, on the way on which the second of them lies nearer. */
function runAlong(ring: Ring, first: Place, second: Place, last: Place): Ring {
  const at = (place: Place): number => ring.findIndex((spot) => spot.place === place)
  const [from, next, to] = [at(first), at(second), at(last)]
  if (from < 0 || next < 0 || to < 0) return []
  const steps = (start: number, end: number): number => (end - start + ring.length) % ring.length
  const [start, end] = steps(from, next) <= steps(next, from) ? [from, to] : [to, from]
  return Array.from({ length: steps(start, end) + 1 }, (_, index) => ring[(start + index) % ring.length]!)
}

/**
 * The place of the other piece's like row that lies on this one: the other end, or as far from the other side; of a row that was worked with the other
 * side facing, as that of a left half beside a right one, it is as far from the same side.
 */
function mirror({ edge, row, place }: Spot, like: LaidRow | undefined): Place | undefined {
  const under = ({ foundation, startChains, endChains }: LaidRow): readonly Place[] => (row.foundation.includes(place) ? foundation : [...startChains, ...endChains])
  const of = (one: LaidRow): readonly Place[] => (edge === 'row-ends' ? (one.ends ?? []) : edge === 'underside' ? under(one) : one.places)
  const places = of(row)
  const at = places.indexOf(place)
  const turned = row.side !== undefined && like?.side !== undefined && row.side !== like.side
  return like && of(like).length === places.length ? of(like)[turned ? at : places.length - 1 - at] : undefined
}

/** The same places once more, as those of another piece. */
function copied(ring: Ring): Ring {
  const { placeFor, rowFor } = likeness()
  return ring.map(({ edge, row, place }) => ({ edge, row: rowFor(row), place: placeFor(place) }))
}

/** Places of the piece behind that lie on those of the piece in front that were worked through both layers. */
export function usedBehind(front: Layer, through: readonly Place[], behind: Layer): readonly Place[] {
  const worked = new Set(through)
  if (worked.size === 0) return []
  return spotsOf(front.outline.seenFromRight.parts).filter(({ place }) => worked.has(place)).flatMap((spot) => mirror(spot, behind.rows[front.rows.indexOf(spot.row)]) ?? [])
}
