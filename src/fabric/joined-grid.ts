import { motifEdge, type MotifEdge, type MotifSide } from './motif-sides.ts'
import type { Edge, Place } from './place.ts'
import type { PieceRun } from './piece-run.ts'

/** Motifs joined side to side: so many beside one another, so many below. */
export interface JoinedGrid {
  /** Indexes of their pieces. */
  readonly pieces: readonly number[]
  readonly across: number
  readonly down: number
}

/** What a border finds where two motifs meet; print has all three (common practice, no source). The first is the usual way. */
const joins: readonly { readonly words: string; readonly at: (corners: readonly Place[]) => readonly Place[] }[] = [
  { words: 'two corners at each join are worked', at: (corners) => corners.map(asJoin) },
  { words: 'each join is worked once', at: (corners) => corners.slice(0, 1).map(asJoin) },
  { words: 'the joins are passed over', at: (corners) => corners.filter(({ kind }) => kind === 'space').map((place) => ({ ...place, corner: false })) },
]

const asJoin = ({ row }: Place): Place => ({ kind: 'join', row })

/**
 * The edge all round a joined grid: sides of the outer motifs one after another, with a corner at each end and the joins between. None
 * where the motifs do not tell their corners, or are not all alike.
 */
export function gridEdges(motifs: readonly PieceRun[], { across, down }: JoinedGrid): readonly { readonly edge: Edge; readonly words: string }[] {
  const [motif, ...others] = motifs.map(motifEdge)
  if (!motif || [motif, ...others].some(({ corners }) => corners.length !== 4) || others.some((other) => !alike(motif.sides, other.sides))) return []
  const { sides } = motif
  const oblong = !sameLength(sides[0]!, sides[1]!)
  if (!sameLength(sides[0]!, sides[2]!) || !sameLength(sides[1]!, sides[3]!) || oblong && others.length > 0) return []
  const ways = oblong && across !== down ? [[across, down], [down, across]] : [[across, down]]
  return ways.flatMap(([first, second]) => joins.map(({ words, at }) => ({
    words, edge: { round: true, chain: false, places: sides.flatMap((_, side) => sideOf(motif, side, side % 2 === 0 ? first! : second!, at)) },
  })))
}

const sameLength = (one: MotifSide, other: MotifSide): boolean => one.stitches === other.stitches && one.spaces === other.spaces

const alike = (one: readonly MotifSide[], other: readonly MotifSide[]): boolean => one.every((side, index) => sameLength(side, other[index]!))

/** One side of the grid, from its first corner to before the next. */
function sideOf({ corners, sides }: MotifEdge, side: number, motifs: number, at: (corners: readonly Place[]) => readonly Place[]): readonly Place[] {
  const [from, to] = [corners[side]!, corners[(side + 1) % 4]!]
  return Array.from({ length: motifs }, (_, index) => [
    ...(index === 0 ? [{ ...from, ...cornerOf(from, from, side) }] : at([to, from])),
    ...sides[side]!.places.map((place): Place => {
      const { group: _group, ...plain } = place
      return { ...plain, ...(index === 0 && cornerOf(place, from, side)), ...(index === motifs - 1 && cornerOf(place, to, (side + 1) % 4)) }
    }),
  ]).flat()
}

/** A place in the corner itself: the space, or one of the stitches in one place. The corners of the grid are four, whichever motifs they are of. */
function cornerOf(place: Place, corner: Place, number: number): Pick<Place, 'corner' | 'group'> {
  if (corner.kind === 'space') return place === corner ? { corner: true } : {}
  return place.into !== undefined && place.into === corner.into ? { group: number } : {}
}
