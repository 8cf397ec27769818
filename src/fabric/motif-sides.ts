import { isStitch, type Place } from './place.ts'
import type { PieceRun } from './piece-run.ts'

/** What lies between two corners of a motif, the corners apart. */
export interface MotifSide {
  readonly places: readonly Place[]
  readonly stitches: number
  /** Chain spaces among the stitches, and their chains. */
  readonly spaces: number
  readonly chains: number
  /** It is fastened to a motif beside it. */
  readonly joined: boolean
}

/** A motif as it is joined to others: its corners, where they are places of their own, and the sides that follow on each. */
export interface MotifEdge {
  readonly corners: readonly Place[]
  readonly sides: readonly MotifSide[]
}

/** Most corners that a motif is taken to have: more spaces or groups than these are its pattern. */
const mostCorners = 8

/** The sides of a piece from corner to corner, in the order of its outline; none where it does not tell its corners. */
export function motifEdge(run: PieceRun): MotifEdge {
  if (run.edge.round || run.outline.flatRows === 0) return roundEdge(run.edge.places)
  const walk = run.outline.walk(false)
  const top = walk.findIndex(({ edge }) => edge === 'top')
  const sides = [...walk.slice(top), ...walk.slice(0, top)]
  const oblong = sides.map(({ edge }) => edge).join(' ') === 'top row-ends underside row-ends'
  return { corners: [], sides: oblong ? sides.map(({ places }) => sideOf(places)) : [] }
}

/** The sides of a round between its corners; the first is the one after the first corner. */
export function roundEdge(places: readonly Place[]): MotifEdge {
  const corners = cornersOf(places)
  if (corners.length < 2 || corners.length > mostCorners) return { corners: [], sides: [] }
  const at = corners.map((corner) => places.indexOf(corner))
  const sides = at.map((from, index) => {
    const to = at[index + 1]
    const side = sideOf(to === undefined ? [...places.slice(from + 1), ...places.slice(0, at[0])] : places.slice(from + 1, to))
    return { ...side, joined: side.joined || corners[index]!.joined === true && corners[(index + 1) % corners.length]!.joined === true }
  })
  return { corners, sides }
}

function sideOf(places: readonly Place[]): MotifSide {
  const spaces = places.filter(({ kind }) => kind === 'space')
  return {
    places, stitches: places.filter((place) => (isStitch(place) || place.kind === 'row-end') && !place.travel).length,
    joined: places.some(({ joined }) => joined), spaces: spaces.length, chains: spaces.reduce((sum, { chains }) => sum + (chains ?? 0), 0),
  }
}

/** Corner spaces are made inside a group in one place, or are the longest; without spaces a corner is the middle one of the stitches in one place. */
function cornersOf(places: readonly Place[]): readonly Place[] {
  const spaces = places.filter(({ kind }) => kind === 'space')
  const inGroups = spaces.filter(({ corner }) => corner)
  const longest = Math.max(2, ...spaces.map(({ chains }) => chains ?? 0))
  const long = spaces.filter(({ chains }) => chains === longest)
  // The group of the corner in which a round begins is parted by the join, that of a joined corner by the join to the motif beside it: their spaces are of the longest all the same.
  const apart = long.filter((space) => !inGroups.includes(space))
  const parted = inGroups.every((space) => long.includes(space)) && (apart.length === 1 || apart.every((space) => space.joined))
  if (inGroups.length > 0 || long.length > 0) return inGroups.length === 0 || parted ? long : inGroups
  return middlesOf(places)
}

/** The middle stitch of each three or more in one place; of several such, the largest are the corners. */
function middlesOf(places: readonly Place[]): readonly Place[] {
  const begin = places.findIndex((place, index) => place.into !== places.at(index - 1)!.into)
  const inOne: Place[][] = []
  for (let step = 0; step < places.length && begin >= 0; step += 1) {
    const place = places[(begin + step) % places.length]!
    const last = inOne.at(-1)
    if (last && place.into !== undefined && last[0]!.into === place.into) last.push(place)
    else inOne.push([place])
  }
  const most = Math.max(3, ...inOne.map(({ length }) => length))
  const middles = new Set(inOne.filter(({ length }) => length === most && length % 2 === 1).map((group) => group[(group.length - 1) / 2]!))
  return places.filter((place) => middles.has(place))
}
