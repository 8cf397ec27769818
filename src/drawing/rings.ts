import { isStitch, type Place } from '../fabric/place.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { placeWidth, rowHeight, type InkedRow, type StitchSize } from './gauge.ts'
import { ovalPath, polygonPath, type RingPath } from './ring-path.ts'

/** A place of a round where it lies: its stretch along the round's path. */
export interface RingPlace {
  readonly place: Place
  readonly from: number
  readonly to: number
}

/** A round of a flat piece seen from above: the path of its outer edge, and of its inner edge, in mm around [0, 0]. */
export interface Ring extends InkedRow {
  readonly path: RingPath
  /** Half the length of the straight middle of an oval; 0 for all others. */
  readonly core: number
  /** From the middle to the inner and to the outer edge. */
  readonly inner: number
  readonly outer: number
  readonly places: readonly RingPlace[]
}

/** Lays the rounds of a flat piece around their middle. Rounds with three corners or more are polygons, others circles or ovals. */
export function layRings(rows: readonly InkedRow[], size: StitchSize): readonly Ring[] {
  const sides = cornersOf(rows.map(({ row }) => row))
  const core = coreOf(rows[0]?.row) * size.width
  const cornerNumber = new Map<Place, number>()
  const share = new Map<Place, number>()
  let outer = beginsInRing(rows[0]?.row) ? 0.25 * size.height : 0
  return rows.map((inked) => {
    const inner = outer
    outer += rowHeight(inked.row, size)
    const path = sides > 0 ? polygonPath(sides, outer) : ovalPath(outer, core)
    const { made } = inked.row.fabric
    const places = sides > 0 ? alongSides(made, { sides, path, cornerNumber }) : core > 0 && share.size === 0 ? aroundChain(made, path, share) : aroundRing(made, path, share)
    return { ...inked, path, core: core / 2, inner, outer, places }
  })
}

const beginsInRing = (row: WorkedRow | undefined): boolean => row?.fabric.made.some(({ into }) => into?.kind === 'ring') ?? false

/** Stitches between the ends of a foundation chain that is worked along both sides; 0 for a piece that begins in a ring. */
function coreOf(row: WorkedRow | undefined): number {
  const chains = new Set(row?.fabric.made.flatMap(({ into }) => (into?.kind === 'ch' ? [into] : [])))
  return chains.size > 2 ? chains.size - 1 : 0
}

/** How many corners the last round with corners has. A disc has none. */
function cornersOf(rows: readonly WorkedRow[]): number {
  const counts = rows.map(({ fabric: { made } }) => cornerIndexes(made).length).filter((count) => count >= 3 && count <= 8)
  return counts.at(-1) ?? 0
}

/** Corners of a round: spaces made inside a group in one place, or else the middle stitches of threes in one place. */
function cornerIndexes(made: readonly Place[]): readonly number[] {
  const spaces = made.flatMap((place, at) => (place.kind === 'space' && place.corner === true ? [at] : []))
  if (spaces.length > 0) return spaces
  return made.flatMap((place, at) => {
    const [before, after] = [made[at - 1], made[at + 1]]
    const three = place.group !== undefined && before?.group === place.group && after?.group === place.group && place.into?.kind !== 'ring'
    return three && made[at - 2]?.group !== place.group && made[at + 2]?.group !== place.group ? [at] : []
  })
}

interface Polygon {
  readonly sides: number
  readonly path: RingPath
  /** Which corner of the piece a corner of the rounds so far is, from 0. */
  readonly cornerNumber: Map<Place, number>
}

/** Spreads a round over the sides of a polygon, corners at its corners: those worked into a corner below stand over it. */
function alongSides(made: readonly Place[], { sides, path, cornerNumber }: Polygon): readonly RingPlace[] {
  const found = cornerIndexes(made)
  const spaces = made.flatMap((place, at) => (place.kind === 'space' ? [at] : []))
  const corners = found.length === sides ? found : spaces.length === sides ? spaces : cornersOver(made, cornerNumber)
  if (corners.length !== sides) return evenly(made, path, 0)
  const [first = 0] = corners
  const under = made.find((place, at) => Math.abs(at - first) <= 2 && place.into && cornerNumber.has(place.into))?.into
  const begin = (under && cornerNumber.get(under)) ?? 0
  for (const [at, index] of corners.entries()) cornerNumber.set(made[index] as Place, (begin + at) % sides)
  const side = path.length / sides
  return corners.flatMap((index, at) => {
    const next = corners[(at + 1) % corners.length] ?? index
    const own = next > index ? made.slice(index, next + 1) : [...made.slice(index), ...made.slice(0, next + 1)]
    const widths = own.map((place, order) => (order === 0 || order === own.length - 1 ? Math.max(0.5, placeWidth(place)) / 2 : placeWidth(place)))
    const whole = widths.reduce((sum, width) => sum + width, 0)
    const start = ((begin + at) % sides) * side
    let so = 0
    return own.flatMap((place, order): readonly RingPlace[] => {
      const from = so
      so += ((widths[order] ?? 0) * side) / whole
      if (order === own.length - 1) return []
      // A corner lies on both of its sides.
      return order === 0 ? [{ place, from: start - so, to: start + so }] : [{ place, from: start + from, to: start + so }]
    })
  })
}

/** A round without corners of its own has them over the corners below. */
function cornersOver(made: readonly Place[], cornerNumber: ReadonlyMap<Place, number>): readonly number[] {
  const seen = new Set<number>()
  return made.flatMap((place, at) => {
    const number = place.into && cornerNumber.get(place.into)
    if (number === undefined || seen.has(number)) return []
    seen.add(number)
    return [at]
  })
}

/** Spreads the first round of an oval: the stitches in the last chain stand around the far end. */
function aroundChain(made: readonly Place[], path: RingPath, share: Map<Place, number>): readonly RingPlace[] {
  const plain = evenly(made, path, 0)
  const last = [...new Set(made.flatMap(({ into }) => (into?.kind === 'ch' ? [into] : [])))].at(-1)
  const atEnd = plain.filter(({ place }) => place.into === last)
  const middle = ((atEnd[0]?.from ?? 0) + (atEnd.at(-1)?.to ?? 0)) / 2
  return kept(plain, path.farEnd - middle, { path, share })
}

/** Moves places along a ring, and remembers where each stands as a share of the whole. */
function kept(places: readonly RingPlace[], by: number, { path, share }: { path: RingPath; share: Map<Place, number> }): readonly RingPlace[] {
  const placed = places.map((one) => ({ ...one, from: one.from + by, to: one.to + by }))
  for (const { place, from, to } of placed) share.set(place, (from + to) / 2 / path.length)
  return placed
}

/** Spreads a round evenly over a circle, each stitch as near as can be to what it was worked into. */
function aroundRing(made: readonly Place[], path: RingPath, share: Map<Place, number>): readonly RingPlace[] {
  const plain = evenly(made, path, 0)
  const offsets = plain.flatMap(({ place, from, to }) => {
    const under = place.into && share.get(place.into)
    return under === undefined ? [] : [wrapped(under - (from + to) / 2 / path.length)]
  })
  const mean = offsets.length === 0 ? 0 : wrapped((offsets[0] ?? 0) + offsets.reduce((sum, offset) => sum + wrapped(offset - (offsets[0] ?? 0)), 0) / offsets.length)
  return kept(plain, mean * path.length, { path, share })
}

/** A share of a turn between −½ and ½. */
const wrapped = (share: number): number => share - Math.round(share)

function evenly(made: readonly Place[], path: RingPath, start: number): readonly RingPlace[] {
  const whole = made.reduce((sum, place) => sum + placeWidth(place), 0)
  let at = start
  return made.map((place) => {
    const from = at
    at += whole === 0 ? 0 : (placeWidth(place) * path.length) / whole
    return { place, from, to: at }
  })
}

/** Whether a place of a ring is drawn as a stitch. */
export const isDrawn = ({ place }: RingPlace): boolean => isStitch(place) && place.travel !== true
