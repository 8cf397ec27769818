import type { Neighbour } from '../notation/neighbour.ts'
import type { Span } from '../text/span.ts'
import { roundEdge, type MotifEdge } from './motif-sides.ts'
import type { Place } from './place.ts'
import type { Walk } from './walk.ts'

/** A join to the motif beside the one that is worked. */
export interface NotedNeighbour extends Neighbour {
  /** How many places the row had made before it. */
  readonly at: number
  readonly span: Span
}

/** A side of the round with the joins on it. */
interface JoinedSide {
  readonly joins: readonly NotedNeighbour[]
  readonly spaces: number
}

/**
 * A motif that is joined on the way takes the spaces of its neighbour one by one: from corner to corner there are as many joins as the
 * neighbour's side has spaces. A side that is joined at some of its spaces only, as in the middle, is the designer's choice.
 */
export function joinNeighbours(walk: Walk): void {
  if (!walk.round || !walk.neighbours.some(({ space, corner }) => space && !corner)) return
  const own = roundEdge(walk.made)
  const sides = sidesJoined(walk, own)
  for (const { joins, spaces } of sides) {
    const first = joins[0]
    if (!first || joins.some(({ space, piece }) => !space || piece !== first.piece)) continue
    const there = spacesOfNeighbour(walk, first.piece, own.sides.length) ?? plainSides(sides)
    if (!there || there.spaces.includes(joins.length)) continue
    const whole = joins.length >= spaces || joins.every(({ next }) => next)
    if (joins.length < Math.max(...there.spaces) && !whole) continue
    walk.trouble({ kind: 'neighbour-apart', span: first.span, joins: joins.length, holds: there.spaces[0]!, piece: there.piece })
  }
}

/** The sides of the round whose two corners are joined, or that are not joined at all. */
function sidesJoined({ neighbours, made }: Walk, { corners, sides }: MotifEdge): readonly JoinedSide[] {
  const carriers = neighbours.map((join) => ({ join, carrier: made[join.at - 1] }))
  const cornersJoined = neighbours.filter(({ corner }) => corner).length
  const onSide = sides.map(({ places, spaces }) => {
    const on: ReadonlySet<Place | undefined> = new Set(places)
    return { spaces, joins: carriers.flatMap(({ join, carrier }) => (on.has(carrier) && !join.corner ? [join] : [])) }
  })
  const lost = carriers.some(({ join, carrier }) => !join.corner && (carrier === undefined || corners.includes(carrier)))
  return lost || cornersJoined < 2 ? [] : onSide
}

/** Spaces on the sides of the piece that is named, or of any motif before that has as many corners. */
function spacesOfNeighbour({ setting }: Walk, piece: string | undefined, corners: number): { readonly spaces: readonly number[]; readonly piece: string } | undefined {
  const named = [...setting.pieces].filter(([name]) => piece === undefined || name === piece.toLowerCase())
  const found = named.flatMap(([, { places }]) => {
    const { sides } = roundEdge(places)
    return sides.length === corners && sides.some(({ spaces }) => spaces > 0) ? [sides.map(({ spaces }) => spaces)] : []
  })
  return found.length === 0 ? undefined : { spaces: found.toReversed().flat(), piece: piece ?? '' }
}

/** The motif before is of the same pattern: the sides that are not joined are as its own. */
function plainSides(sides: readonly JoinedSide[]): { readonly spaces: readonly number[]; readonly piece: string } | undefined {
  const spaces = sides.filter(({ joins }) => joins.length === 0).map((side) => side.spaces)
  return spaces.length === 0 || spaces.every((count) => count === 0) ? undefined : { spaces, piece: '' }
}
