import type { LaidRow, Stretch } from './laid-row.ts'
import type { Place } from './place.ts'

/** An outline as a border meets it. */
export interface BorderEdge {
  /** The work was turned before it. */
  readonly turned: boolean
  /** Words say which side faces the maker. */
  readonly faced?: boolean
  readonly stretches: readonly Stretch[]
  readonly stretchOf: ReadonlyMap<Place, Stretch>
  /** The first and last places of tops and undersides. */
  readonly corners: ReadonlySet<Place>
  /** Where a step juts out: its stitch beside the ends of the rows below. */
  readonly stepCorners: ReadonlySet<Place>
  /** Row-ends that are the height of a step: a border that goes from stitch to stitch passes them in silence. */
  readonly risers: ReadonlySet<Place>
}

/** What a border along an outline has to know of it. */
export function borderEdge(stretches: readonly Stretch[], turned: boolean): BorderEdge {
  return {
    turned,
    stretches,
    stretchOf: new Map(stretches.flatMap((stretch) => stretch.places.map((place) => [place, stretch] as const))),
    corners: new Set(stretches.filter(({ edge }) => edge === 'top' || edge === 'underside').flatMap(({ places }) => [places[0]!, places.at(-1)!])),
    stepCorners: new Set(stretches.flatMap((stretch, index) => juttingEnds(stretch, stretches.at(index - 1)!, stretches[(index + 1) % stretches.length]!))),
    risers: new Set(stretches.flatMap((stretch, index) => (isRiser(stretch, stretches.at(index - 1)!, stretches[(index + 1) % stretches.length]!) ? stretch.places : []))),
  }
}

/** Row-ends above a step, next to it: the rows that they end were worked after the row that has the step. */
function isRiser({ edge, rows }: Stretch, before: Stretch, after: Stretch): boolean {
  return edge === 'row-ends' && [before, after].some((beside) => beside.edge === 'step' && !rows.includes(beside.rows[0]!))
}

/** The stitches of a step that lie next to the row-end of its own row. */
function juttingEnds({ edge, rows, places }: Stretch, before: Stretch, after: Stretch): readonly Place[] {
  if (edge !== 'step') return []
  const isOwn = (beside: Stretch): boolean => beside.edge === 'row-ends' && beside.rows.includes(rows[0]!)
  return [...(isOwn(before) ? [places[0]!] : []), ...(isOwn(after) ? [places.at(-1)!] : [])]
}

/** Whether a row of a piece lies on the outline. */
export const isOnOutline = (outline: BorderEdge | undefined, piece: string): boolean => outline?.stretches.some(({ rows }) => rows.some((row) => row.piece === piece)) === true

/** The row that a place of the outline belongs to: each row-end is another row's. */
export function rowAt(outline: BorderEdge | undefined, place: Place): LaidRow | undefined {
  const stretch = outline?.stretchOf.get(place)
  return stretch?.rows[stretch.edge === 'row-ends' ? stretch.places.indexOf(place) : 0]
}
