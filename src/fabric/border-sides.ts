import { handOf, type LaidRow, type Part } from './laid-row.ts'
import type { NamedEdge } from './named-edges.ts'
import type { JoinedEdge } from './outer-sides.ts'
import type { Place } from './place.ts'

/**
 * One side of a border that goes round a flat piece, in the order of the round: the stitches that stand on that side of the piece, and the corners at
 * either end of it as far as their centres, with those or without. Undefined where the round stands on no flat piece, or has no corner there.
 */
export function sideOfBorder(round: readonly Place[], pieces: readonly (readonly LaidRow[])[], side: NamedEdge, withCentres: boolean): readonly Place[] | undefined {
  const sideUnder = sidesUnder(pieces)
  const on = round.flatMap((place, index) => (sideUnder(place) === side ? [index] : []))
  if (on.length === 0) return undefined
  const at = (index: number): Place => round[(index + round.length) % round.length]!
  const gap = widestGap(on, round.length)
  const [from, to] = [on[(gap + 1) % on.length]!, on[gap]! + (gap + 1 < on.length ? round.length : 0)]
  const centres = centresOf(round)
  // A corner that was made in a stitch or chain of the side is one of its own: its centre lies inside.
  const inside = (index: number): boolean => index >= from && index <= to && centres.has(at(index))
  const reach = reachOfCorner(at(from))
  const start = nearest(reach, (step) => inside(from + step)) ?? negative(nearest(reach, (step) => centres.has(at(from - step))))
  const end = negative(nearest(reach, (step) => inside(to - step))) ?? nearest(reach, (step) => centres.has(at(to + step)))
  if (start === undefined || end === undefined) return undefined
  const [first, last] = withCentres ? [from + start, to + end] : [from + start + 1, to + end - 1]
  return Array.from({ length: last - first + 1 }, (_, index) => at(first + index))
}

/** What a border finds where two borders are sewn to one another (common practice, no source). The first is the usual way. */
const atSeams: readonly { readonly words: string; readonly places: readonly Place[] }[] = [
  { words: 'each seam is worked once', places: [{ kind: 'join', row: 0 }] },
  { words: 'the seams are passed over', places: [] },
]

/** All round borders that are sewn to one another, begun at the centre of each corner and behind each seam. None where the ring is of anything else. */
export function roundBorders(ring: readonly Part[]): readonly JoinedEdge[] {
  if (!ring.every(({ edge, row }) => edge === 'seam' || edge === 'top' && row.round)) return []
  const ofPieces = new Set(ring.flatMap(({ row }) => row.piece ?? []))
  return atSeams.flatMap(({ words, places: seam }) => {
    const places = ring.flatMap((part) => (part.edge === 'seam' ? seam : part.places)).map((place) => ({ ...place, outer: true }))
    const centres = centresOf(places)
    return places.flatMap((place, index) => (centres.has(place) || place.kind === 'join' ? [{ words, edge: { round: true, chain: false, ofPieces, places: [...places.slice(index), ...places.slice(0, index)] } }] : []))
  })
}

const negative = (step: number | undefined): number | undefined => step && -step

const nearest = (reach: number, found: (step: number) => boolean): number | undefined => Array.from({ length: reach + 1 }, (_, step) => step).find(found)

/** Places between the end of a side and the centre of its corner, at the most: one more with each round, and a corner of five has two on either side of it. */
function reachOfCorner(place: Place): number {
  let rounds = 0
  for (let under: Place | undefined = place; under && under.kind !== 'row-end' && under.kind !== 'ch'; under = under.into) rounds += 1
  return Math.min(rounds, most) + 1
}

/** Rounds of a border, at the most: below a top lie the rows of the piece as well. */
const most = 6

/** Which of some indexes of a ring stands before the longest stretch that holds none of them. */
export function widestGap(on: readonly number[], length: number): number {
  const gaps = on.map((index, at) => (on[at + 1] ?? on[0]! + length) - index)
  return gaps.indexOf(Math.max(...gaps))
}

/** The middle ones of three or more in one place. */
function centresOf(round: readonly Place[]): ReadonlySet<Place> {
  const groups = new Map<Place, Place[]>()
  for (const place of round) if (place.into) groups.set(place.into, [...(groups.get(place.into) ?? []), place])
  return new Set([...groups.values()].flatMap((group) => (group.length > 2 && group.length % 2 === 1 ? [group[(group.length - 1) / 2]!] : [])))
}

/** The side of a flat piece that a stitch of a round stands on, over however many rounds. */
function sidesUnder(pieces: readonly (readonly LaidRow[])[]): (place: Place) => NamedEdge | undefined {
  const flat = pieces.map((rows) => rows.filter(({ round }) => !round))
  const rowOf = new Map(flat.flat().flatMap((row) => row.places.map((place) => [place, row] as const)))
  const tops = new Set(flat.map((rows) => rows.at(-1)))
  const chains = new Set(flat.flat().flatMap(({ foundation }) => foundation))
  return (place) => {
    for (let under: Place | undefined = place; under; under = under.into) {
      if (chains.has(under)) return 'bottom'
      const row = rowOf.get(under) ?? (under.kind === 'row-end' && under.into ? rowOf.get(under.into) : undefined)
      if (row) return under.kind === 'row-end' ? handOf(row, under) : tops.has(row) ? 'top' : undefined
    }
    return undefined
  }
}
