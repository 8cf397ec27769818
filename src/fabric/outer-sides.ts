import type { MotifEdge } from './motif-sides.ts'
import type { Edge, Place } from './place.ts'

/** A side of a motif on the outside of what was joined. */
export interface OuterSide {
  readonly side: number
  /** It begins where its motif meets the one before it, and not at a corner. */
  readonly met: boolean
}

/** An edge that a border may go round, and in words which. */
export interface JoinedEdge {
  readonly edge: Edge
  readonly words: string
}

/** What a border finds where two motifs meet; print has all three (common practice, no source). The first is the usual way. */
const joins: readonly { readonly words: string; readonly at: (corners: readonly Place[]) => readonly Place[] }[] = [
  { words: 'two corners at each join are worked', at: (corners) => corners.map(asJoin) },
  { words: 'each join is worked once', at: (corners) => corners.slice(0, 1).map(asJoin) },
  { words: 'the joins are passed over', at: (corners) => corners.filter(({ kind }) => kind === 'space').map((place) => ({ ...place, corner: false })) },
]

const asJoin = ({ row }: Place): Place => ({ kind: 'join', row })

/**
 * Motifs with four corners joined to a grid: all round it, from a corner on.
 *
 *      side 0, first motifs
 *     ┌────┬────┬────┐
 *   3 │    │    │    │ 1, second motifs
 *     └────┴────┴────┘
 */
export function outsideOfGrid(first: number, second: number): readonly OuterSide[] {
  return [first, second, first, second].flatMap((motifs, side) => Array.from({ length: motifs }, (_, index) => ({ side, met: index > 0 })))
}

/** Motifs with any number of corners joined to a row, each by the side across from that of the one before it; of two, by any side. */
export function outsideOfRow(corners: number, motifs: number): readonly OuterSide[] {
  const sides = (from: number, count: number): readonly OuterSide[] => Array.from({ length: count }, (_, index) => ({ side: (from + index) % corners, met: index === 0 }))
  const along = Array.from({ length: motifs - 2 }, () => sides(1, corners / 2 - 1)).flat()
  return [...sides(1, corners - 1), ...along, ...sides(1, corners - 1), ...along]
}

/** The edge all round, from the first of the outer sides on, in each way in which a border may meet the joins. */
export function edgesRound(motif: MotifEdge, outer: readonly OuterSide[]): readonly JoinedEdge[] {
  return joins.map(({ words, at }) => ({ words, edge: ringOf(stretchesOf(motif, outer, at).flatMap(({ lead, along }) => [...lead, ...along])) }))
}

/** The same, begun behind the first corner or join: what lies there comes at the round's end. */
export function edgesBehind(motif: MotifEdge, outer: readonly OuterSide[]): readonly JoinedEdge[] {
  return joins.map(({ words, at }) => {
    const [first, ...others] = stretchesOf(motif, outer, at)
    return { words, edge: ringOf([...first!.along, ...others.flatMap(({ lead, along }) => [...lead, ...along]), ...first!.lead]) }
  })
}

const ringOf = (places: readonly Place[]): Edge => ({ round: true, chain: false, places: places.map((place) => ({ ...place, outer: true })) })

/** What lies at a side's beginning, and the side. */
interface OuterStretch {
  readonly lead: readonly Place[]
  readonly along: readonly Place[]
}

function stretchesOf({ corners, sides }: MotifEdge, outer: readonly OuterSide[], at: (corners: readonly Place[]) => readonly Place[]): readonly OuterStretch[] {
  const after = (side: number): number => (side + 1) % sides.length
  return outer.map(({ side, met }, index) => {
    const next = outer[(index + 1) % outer.length]!
    const [from, to] = [corners[side]!, corners[after(side)]!]
    const ends = (place: Place): Partial<Place> => ({ ...(!met && cornerOf(place, from, index)), ...(!next.met && cornerOf(place, to, (index + 1) % outer.length)) })
    const plain = ({ group: _, joined: __, ...place }: Place): Place => place
    return {
      lead: met ? at([corners[after(outer.at(index - 1)!.side)]!, from].map(plain)) : [{ ...plain(from), ...cornerOf(from, from, index) }],
      along: sides[side]!.places.map((place) => ({ ...plain(place), ...ends(place) })),
    }
  })
}

/** A place in the corner itself: the space, or one of the stitches in one place. The corners of the whole are its own, whichever motifs they are of. */
function cornerOf(place: Place, corner: Place, number: number): Pick<Place, 'corner' | 'group'> {
  if (corner.kind === 'space') return place === corner ? { corner: true } : {}
  return place.into !== undefined && place.into === corner.into ? { group: number } : {}
}
