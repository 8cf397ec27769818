import { inSize, type Thing } from '../notation/target.ts'
import { beforeDecreases, beforeInnerCorners } from './inner-corners.ts'
import { isPassed, isSpace, isStitch, type Place } from './place.ts'
import type { Walk } from './walk.ts'

/** The turning chain of the row below lies at the end of a row; the row that is mirrored meets it at its start, and a stitch in its stead at its end. */
function isTurning(walk: Walk, place: Place): boolean {
  const [first, last] = [walk.edge[0], walk.edge.at(-1)]
  return walk.setting.mirrored && first?.turning ? place === last : place.turning === true
}

/** Whether a place is what a row names. `st` is any stitch; `dc` is a dc or a stitch counted among them. */
export function isThing(walk: Walk, place: Place, thing: Thing | undefined): boolean {
  if (!thing) return isStitch(place)
  if (thing.kind === 'join') return place.kind === 'join' || isStitch(place) && !corners(walk.edge).joins
  if (thing.where === 'inner') return (thing.again ? beforeDecreases(walk.edge) : beforeInnerCorners(walk.edge, thing.valleys)).has(place)
  if (thing.kind === 'stitch') return thing.where === 'corner' ? isCornerStitch(walk, place) : thing.ofGroup ? isInGroup(walk, place, thing.ofGroup) : isNamed(walk, place, thing.stitch)
  if (thing.kind === 'chain') return place.kind === 'ch' || place.kind === 'space'
  if (thing.kind === 'space' && thing.where === 'corner' && corners(walk.edge).longest === 0) return isCornerStitch(walk, place)
  if (thing.kind === 'space') return isSpaceNamed(walk, place, thing)
  if (thing.kind === 'gap') return place.kind === 'gap'
  if (thing.kind === 'turning-chain') return isTurning(walk, place)
  if (thing.kind === 'ring') return place.kind === 'ring'
  if (thing.kind === 'row-end') return place.kind === 'row-end' && (thing.rows === undefined || thing.rows.some((stitch) => endsRowOf(walk, place, stitch)))
  if (thing.kind === 'edge') return place.kind === 'row-end' || isStitch(place)
  if (thing.kind === 'group') return isStitch(place)
  return isStitch(place)
}

/** Whether a row-end is that of a row of such stitches: by the stitch that the row ends with; shells by their groups. */
function endsRowOf(walk: Walk, place: Place, stitch: string): boolean {
  if (stitch !== 'sh') return place.into !== undefined && isNamed(walk, place.into, stitch)
  const stretch = walk.outline?.stretchOf.get(place)
  const groups = Map.groupBy(stretch?.rows[stretch.places.indexOf(place)]?.places ?? [], ({ group }) => group)
  return [...groups].some(([group, members]) => group !== undefined && members.length >= smallestShell)
}

const smallestShell = 3

function isNamed(walk: Walk, place: Place, stitch: string | undefined): boolean {
  // `along the underside of the fsc, 3 sc in first fsc`: the chain below it.
  if (place.kind === 'ch' && walk.outline && stitch !== undefined && walk.setting.lexicon.stitch(stitch)?.into === 'nothing') return true
  if (!isStitch(place)) return false
  if (stitch === undefined || place.kind === stitch) return true
  return walk.setting.lexicon.stitch(place.kind)?.base === stitch || walk.setting.lexicon.stitch(stitch)?.base === place.kind
}

function isSpaceNamed(walk: Walk, place: Place, thing: Thing): boolean {
  if (!isSpace(place)) return false
  const chains = thing.chains && inSize(thing.chains, walk.setting.size)
  if (chains !== undefined && place.kind === 'space' && place.chains !== chains) return false
  if (thing.where === 'corner') return isCorner(walk, place)
  if (thing.where === 'side') return !isCorner(walk, place)
  return true
}

interface Corners {
  readonly spacesMade: boolean
  /** Motifs meet on it. */
  readonly joins: boolean
  readonly longest: number
  readonly stitches: ReadonlySet<Place>
  /** Stitches that stand together in one place: which of how many. */
  readonly together: ReadonlyMap<Place, { readonly nth: number; readonly size: number }>
}

const cornersOf = new WeakMap<readonly Place[], Corners>()

/** What an edge tells of its corners, worked out once an edge. */
function corners(edge: readonly Place[]): Corners {
  const known = cornersOf.get(edge)
  if (known) return known
  const groups = new Map<number, Place[]>()
  let spacesMade = false
  let longest = 0
  for (const place of edge) {
    if (place.kind === 'space') {
      spacesMade ||= place.corner === true
      longest = Math.max(longest, place.chains ?? 0)
    } else if (place.group !== undefined && isStitch(place)) {
      const members = groups.get(place.group)
      if (members) members.push(place)
      else groups.set(place.group, [place])
    }
  }
  const parted = edge[0]?.group
  if (parted !== undefined && edge.at(-1)!.group === parted) groups.set(parted, roundTheStart(edge, parted))
  const together = new Map([...groups.values()].map((members) => withChain(edge, members)).flatMap((members) => members.map((place, index) => [place, { nth: index + 1, size: members.length }] as const)))
  const middle = [...groups.values()].filter((members) => members.length > 1 && members.length % 2 === 1).map((members) => members[(members.length - 1) / 2]!)
  const found = { spacesMade, longest, joins: edge.some(({ kind }) => kind === 'join'), stitches: new Set(middle), together }
  cornersOf.set(edge, found)
  return found
}

/** A round that begins inside a corner has its first stitches at the end: they come first in the corner all the same. */
function roundTheStart(edge: readonly Place[], group: number): Place[] {
  const begins = Math.max(0, edge.findIndex((place) => place.group !== group))
  const isMember = (place: Place): boolean => place.group === group && isStitch(place)
  return [...edge.slice(begins), ...edge.slice(0, begins)].filter(isMember)
}

/** A counted beginning chain stands in the same place as the stitches that follow in it. */
function withChain(edge: readonly Place[], members: readonly Place[]): readonly Place[] {
  const before = edge[edge.indexOf(members[0]!) - 1]
  return before?.turning && before.into !== undefined && before.into === members[0]!.into ? [before, ...members] : members
}

/** Of how many stitches the corner is that a place lies in; undefined where it was not made so. */
export const sizeOfCorner = (edge: readonly Place[], place: Place): number | undefined => corners(edge).together.get(place)?.size

function isInGroup(walk: Walk, place: Place, { nth, size }: NonNullable<Thing['ofGroup']>): boolean {
  const found = corners(walk.edge).together.get(place)
  return found?.nth === nth && (size === undefined ? found.size >= smallestShell : found.size === size)
}

/** Whether chain spaces lie on an edge. */
export function hasSpaces(edge: readonly Place[]): boolean {
  return corners(edge).longest > 0
}

/** Corner spaces are those made inside a group in one place; when there are none, the longest; when all are alike, all. */
function isCorner(walk: Walk, place: Place): boolean {
  if (place.corner || walk.outline?.corners.has(place)) return true
  const { spacesMade, longest } = corners(walk.edge)
  return place.kind === 'space' && !spacesMade && (place.chains ?? 0) === longest
}

/** The middle stitch of three made in one place. */
function isCornerStitch(walk: Walk, place: Place): boolean {
  return walk.outline?.corners.has(place) === true || corners(walk.edge).stitches.has(place)
}

/**
 * Index of the next place that is what the row names, from `from` on. Stitches are passed over on the way to a space, and spaces
 * on the way to a stitch. Past the end of the edge it gives the first index beyond it.
 */
export function findNext(walk: Walk, from: number, thing: Thing | undefined): number {
  const { edge } = walk
  if (!thing || thing.kind === 'stitch' && thing.stitch === undefined && thing.where === undefined) {
    let index = from
    while (index < edge.length && isPassed(edge[index]!)) index += 1
    return index
  }
  const name = `${thing.kind} ${thing.stitch ?? ''} ${thing.where ?? ''} ${thing.chains?.values.join() ?? ''} ${thing.rows?.join() ?? ''} ${thing.ofGroup?.nth ?? ''} ${thing.ofGroup?.size ?? ''}`
  if (from < (walk.noneFrom.get(name) ?? Number.POSITIVE_INFINITY)) {
    for (let index = from; index < edge.length; index += 1) if (isThing(walk, edge[index]!, thing)) return index
    walk.noneFrom.set(name, from)
  }
  return nextUnnamed(walk, from, thing)
}

/** Nothing of that name is left: take the next of the same sort, or none. */
function nextUnnamed(walk: Walk, from: number, thing: Thing): number {
  const { edge } = walk
  if (thing.kind === 'stitch' || thing.kind === 'group' || thing.kind === 'turning-chain' && walk.setting.rowIndex === 0) {
    let index = from
    while (index < edge.length && isPassed(edge[index]!)) index += 1
    return index
  }
  return edge.length
}

/** Index of the next place that is just what the row names; -1 where none is left. */
export function indexAhead(walk: Walk, thing: Thing): number {
  return walk.edge.findIndex((place, index) => index >= walk.at && isThing(walk, place, thing))
}

/** Index at which `keepBack` stitches are left to the end of the edge. */
export function indexBefore(walk: Walk, keepBack: number, of?: Thing): number {
  if (of?.kind === 'space' || of?.stitch === 'tile') return indexBeforeSpaces(walk, keepBack)
  let index = walk.edge.length
  for (let kept = 0; kept < keepBack && index > walk.at; ) {
    index -= 1
    if (!isPassed(walk.edge[index]!)) kept += 1
  }
  return index
}

/** `to last ch-2 sp`, `to last tile`: index of the first space that is kept back. */
function indexBeforeSpaces(walk: Walk, keepBack: number): number {
  let kept = 0
  for (let index = walk.edge.length - 1; index >= walk.at; index -= 1) {
    if (isSpace(walk.edge[index]!)) kept += 1
    if (kept === keepBack) return index
  }
  return walk.at
}

/** `ch 5, sc in last sc` of a round that began inside a shell: stitches of other kinds stand behind the last of that name. */
export function isOnlyOneLeft(walk: Walk, thing: Thing | undefined): boolean {
  if (!walk.round || walk.outline || thing?.kind !== 'stitch' || thing.stitch === undefined) return false
  const end = walk.edge.at(-1)
  if (!end || isThing(walk, end, thing)) return false
  const index = indexAhead(walk, thing)
  return index >= 0 && !walk.edge.some((place, at) => at > index && isThing(walk, place, thing))
}
