import type { Instruction } from '../notation/syntax.ts'
import { borderEdge } from './border-edge.ts'
import { standBeside, withBase, type Stretch } from './laid-row.ts'
import type { Outline } from './outline.ts'
import { alongEdges, joinsAnew, onFoundation } from './edge-for.ts'
import type { Edge, Place } from './place.ts'
import { everyReading, type Readings } from './readable.ts'
import type { RowSetting } from './row-setting.ts'
import { lessAmiss } from './places-amiss.ts'
import type { RowToWork, RowTry } from './work-row.ts'

/** Another way to meet an outline, and in words which. */
interface OtherBorder {
  readonly edge: Edge
  readonly words: string
  /** Places that it has more than others: a flat row that works none of them does not need them. */
  readonly adds?: readonly Place[]
}

/** More stretches than this are not tried one by one as the place where a border begins. */
const mostStarts = 24

/**
 * Where the words leave open how a border meets the outline: a row that is joined anew may begin at any edge and on either side, and the
 * chain under a skipped turning chain that counts as a stitch is taken for a place by some.
 */
function otherBorders(toWork: RowToWork, outline: Outline, { round, sewn, laidOn }: RowSetting): readonly OtherBorder[] {
  const { items, edge } = toWork
  const border = edge.outline
  if (!border) return []
  const { turned } = border
  const made = (stretches: readonly Stretch[], way: boolean): Edge => ({ ...edge, places: stretches.flatMap(({ places }) => places), outline: borderEdge(stretches, way) })
  const bases = outline.walk(turned).flatMap(({ rows, edge: kind }) => (kind === 'underside' && rows[0]?.base) || [])
  const onBases = bases.length > 0 ? [{ edge: made(based(outline.walk(turned)), turned), adds: bases, words: 'the chain under the counted turning chain is a place of the underside' }] : []
  const ring = round && alongEdges(items) ? closedStrip(outline.walk(turned), sewn === true).map((side) => ({ edge: made(side, turned), words: 'the ends of the strip are joined, and the round goes along one of its sides' })) : []
  const unturned = namesFirstEdge(items) ? [{ edge: made(outline.walk(!turned), !turned), words: 'the edge that is named comes next, whether the work is turned or not' }] : []
  const anew = begunAnew(toWork)
  const closed = round && sewn && (alongEdges(items) || onFoundation(items)) ? closedEdges(outline.walk(turned)).flatMap((rest) => (anew ? turnsOf(rest) : [rest])).map((rest) => ({ edge: made(rest, turned), words: 'an edge that the round does not reach is folded or sewn together' })) : []
  const points = withoutPoints(outline.walk(turned))
  const besidePoints = points ? (anew ? turnsOf(points) : [points]).map((begun) => ({ edge: made(begun, turned), words: 'the row of a point has no sides that are worked' })) : []
  if (!anew) return [...onBases, ...ring, ...closed, ...unturned, ...besidePoints]
  // Where the words say which side faces, the work goes along the edge in one direction only.
  const ways = border.faced ? [turned] : [turned, !turned]
  const startsOn = (walkOf: (way: boolean) => readonly Stretch[], adds: readonly Place[]): readonly OtherBorder[] => ways.flatMap((way) => {
    const walk = walkOf(way)
    const parted = walk.flatMap((stretch) => whereNumbersBegin(stretch, laidOn))
    return [walk, ...(parted.length > walk.length ? [parted] : [])].flatMap((all) => (all.length > mostStarts ? [] : turnsOf(all).map((begun) => ({ edge: made(begun, way), ...(adds.length > 0 && { adds }), words: 'the row begins where its words fit the edge' }))))
  })
  const starts = [...startsOn((way) => outline.walk(way), []), ...(bases.length > 0 ? startsOn((way) => based(outline.walk(way)), bases) : [])]
  const heel = outline.opened ? [turned, !turned].map((way) => ({ edge: made(sidesUp(outline.walk(way)), way), words: 'the edge that the piece began with is folded and sewn together' })) : []
  const withEnds = turnsOf(outline.opened ? outline.openingWithEnds : []).map((begun) => ({ edge: made(begun, turned), words: 'the round that closes the opening has an end on either side of it' }))
  return [...onBases, ...ring, ...starts, ...heel, ...withEnds, ...closed, ...besidePoints]
}

/** At a point of one stitch makers work into that stitch and into the sides of the row, or into the stitch alone (common practice, no source); nothing where there is no point. */
function withoutPoints(stretches: readonly Stretch[]): readonly Stretch[] | undefined {
  const points = new Set(stretches.flatMap(({ edge, rows, places }) => (edge === 'top' && places.length === 1 ? rows : [])))
  if (points.size === 0) return undefined
  return stretches.map((stretch) => {
    const stays = stretch.rows.map((row) => stretch.edge !== 'row-ends' || !points.has(row))
    return stays.every(Boolean) || stretch.rows.length !== stretch.places.length ? stretch : { ...stretch, rows: stretch.rows.filter((_, index) => stays[index]), places: stretch.places.filter((_, index) => stays[index]), seams: [] }
  }).filter(({ places }) => places.length > 0)
}

/** A side that goes on from a bag to its flap, or over a seam: where the rows are numbered anew, at a seam and where another piece is laid on it another row may begin. */
function whereNumbersBegin(stretch: Stretch, laidOn?: number): readonly Stretch[] {
  const { edge, rows, places, seams } = stretch
  if (edge !== 'row-ends' || rows.length !== places.length) return [stretch]
  const cuts = rows.flatMap(({ number }, index) => {
    const before = rows[index - 1]?.number
    if (seams.includes(index)) return [index]
    if (laidOn !== undefined && before !== undefined && number !== undefined && Math.min(before, number) === laidOn && Math.max(before, number) === laidOn + 1) return [index]
    return before !== undefined && number !== undefined && (number === 1 || before === 1) && Math.abs(number - before) !== 1 ? [index] : []
  })
  return cuts.length === 0 ? [stretch] : [0, ...cuts].map((cut, part) => ({ ...stretch, rows: rows.slice(cut, cuts[part]), places: places.slice(cut, cuts[part]) }))
}

/** The same ring, begun at each of its stretches. A side at which the hook stands is whole where the row begins elsewhere. */
function turnsOf(all: readonly Stretch[]): readonly (readonly Stretch[])[] {
  const [first, last] = [all[0], all.at(-1)]
  const side = first && last && first !== last && isOneSide(last, first) ? wholeSide(last, first) : undefined
  const others = side ? [...all.slice(1, -1), side] : all
  return [...(side ? [all] : []), ...others.map((_, index) => [...others.slice(index), ...others.slice(0, index)])]
}

const isOneSide = (one: Stretch, other: Stretch): boolean => one.edge === 'row-ends' && other.edge === 'row-ends' && !standBeside(one.rows.at(-1)!, other.rows[0]!)

const wholeSide = (one: Stretch, other: Stretch): Stretch => ({ edge: 'row-ends', rows: [...one.rows, ...other.rows], places: [...one.places, ...other.places], seams: [...one.seams, ...other.seams.map((at) => one.places.length + at)] })

/** What is left of an outline where its top, its underside or both are folded and sewn, as at a heel; where its sides are, its underside alone. */
function closedEdges(stretches: readonly Stretch[]): readonly (readonly Stretch[])[] {
  const tops = stretches.filter(({ edge }) => edge === 'top')
  const unders = stretches.filter(({ edge }) => edge === 'underside')
  const without = (closed: readonly Stretch[]): readonly (readonly Stretch[])[] => (closed.length > 0 ? [stretches.filter((stretch) => !closed.includes(stretch))] : [])
  return [...without(tops), ...without(unders), ...(tops.length > 0 ? without([...tops, ...unders]) : []), ...(unders.length === 1 ? [unders] : [])]
}

/**
 * A band worked sideways is closed to a ring before a round goes along its row-ends: cuff, brim, waistband. Either side may be meant; one
 * with steps, as at a thumb, where the pattern tells of sewing.
 */
function closedStrip(stretches: readonly Stretch[], sewn: boolean): readonly (readonly Stretch[])[] {
  // The row of slip stitches that joins the ends is a seam, and no row whose end is worked.
  const sides = stretches.filter(({ edge }) => edge === 'row-ends').map((side) => ({ ...side, places: side.places.filter(({ into }) => into?.kind !== 'sl st') }))
  if (stretches.length === 4 && sides.length === 2) return sides.map((side) => [side])
  const ends = stretches.flatMap(({ edge, rows }, index) => (edge === 'top' || edge === 'underside' && rows[0]!.foundation.length > 0 ? [index] : []))
  const [one, other] = ends
  if (!sewn || one === undefined || other === undefined || ends.length > 2) return []
  return [stretches.slice(one + 1, other), [...stretches.slice(other + 1), ...stretches.slice(0, one)]].filter(({ length }) => length > 0)
}

/** The two sides of an opening below a tube, from its lower end up and down again. */
function sidesUp(stretches: readonly Stretch[]): readonly Stretch[] {
  const under = stretches.findIndex(({ edge }) => edge === 'underside')
  return [...stretches.slice(under + 1), ...stretches.slice(0, Math.max(0, under))]
}

/** `Working down the first side,` before anything is worked, and no word of a turn in the row: the edge is told. */
function namesFirstEdge(items: readonly Instruction[]): boolean {
  const first = items.find(({ node }) => node !== 'aside' && node !== 'chain')
  return first?.node === 'start' && first.target.walk === 'edge' && first.target.edge !== undefined && items.every(({ node }) => node !== 'turn')
}

/** The row joins the yarn, or a remark over it does. */
const begunAnew = ({ items, joined }: Pick<RowToWork, 'items' | 'joined'>): boolean => joined === true || joinsAnew(items)

function based(stretches: readonly Stretch[]): readonly Stretch[] {
  return stretches.map((stretch) => (stretch.edge === 'underside' ? { ...stretch, places: withBase(stretch.places, stretch.rows[0]!) } : stretch))
}

/**
 * Where a border does not come out from where the hook stands, the other ways to meet the outline are tried. When it comes out in none of
 * them and is joined anew, the one with the least wrong is what the designer means, and tells of the slip.
 */
export function bestOnOutline(first: Readings, toWork: RowToWork, setting: RowSetting, outline: Outline): Readings {
  if (!toWork.edge.outline || first.usual?.comesOut || first.others.length > 0) return first
  let best: Readings | undefined
  let leastWrong = first
  const anew = begunAnew(toWork)
  for (const { edge, words, adds } of otherBorders(toWork, outline, setting)) {
    const there = everyReading({ ...toWork, edge }, setting)
    const found = there.usual?.comesOut ? there.usual : there.others[0]
    if (!found) {
      if (anew && there.usual && leastWrong.usual && lessAmiss(there.usual, leastWrong.usual)) leastWrong = there
      continue
    }
    if (adds && !setting.round && !found.row.made.some(({ into }) => into && adds.includes(into))) continue
    const readings: Readings = { usual: { ...found, assumed: [...found.assumed, words] }, others: [] }
    if (!leavesSide(found)) return readings
    best ??= readings
  }
  return best ?? leastWrong
}

/** It works along a part of a side. Where its words leave open which side is meant, one that it works along from end to end is likelier. */
export function leavesSide({ along = [] }: RowTry): boolean {
  return along.some(({ edge, offers, worksOver }) => edge === 'row-ends' && worksOver > 0 && worksOver < offers)
}

/** It works places that seams of the pattern have used up: it comes out as if nothing were sewn, and is meant for what is. */
export function worksSewnPlaces({ along, row }: RowTry, sewn: () => readonly Outline[]): boolean {
  const outlines = along ? sewn() : []
  return outlines.length > 0 && row.made.some(({ into }) => into !== undefined && !outlines.some((outline) => outline.has(into)))
}

/** A row that comes out on an outline. */
export interface OnOutline {
  readonly toWork: RowToWork
  readonly tried: RowTry
  readonly outline: Outline
}

/** Works a row on an outline, from where the hook stands or from where its words fit. */
function onOutline(toWork: RowToWork, setting: RowSetting, outline: Outline): OnOutline | undefined {
  const { usual, others } = bestOnOutline(everyReading(toWork, setting), toWork, setting, outline)
  const tried = usual?.comesOut ? usual : others[0]
  return tried && { toWork, tried, outline }
}

type EdgeOn = (outline: Outline) => Edge

/** A row that comes out on another outline than that of the piece it goes on from; the rows after it go on there. */
export function elsewhere(outlines: readonly Outline[], toWork: RowToWork, setting: RowSetting, edgeOn: EdgeOn): OnOutline | undefined {
  for (const outline of outlines) {
    const edge = edgeOn(outline)
    const found = edge.outline && onOutline({ ...toWork, edge }, setting, outline)
    if (found) return found
  }
  return undefined
}

/** A row that comes out nowhere is meant for the outline on which it is least wrong. */
export function nearest(outlines: readonly Outline[], toWork: RowToWork, setting: RowSetting, here: RowTry, edgeOn: EdgeOn): OnOutline | undefined {
  let best: OnOutline | undefined
  for (const outline of outlines) {
    const there = { ...toWork, edge: edgeOn(outline) }
    const tried = there.edge.outline && bestOnOutline(everyReading(there, setting), there, setting, outline).usual
    if (tried && lessAmiss(tried, best?.tried ?? here)) best = { toWork: there, tried, outline }
  }
  return best
}
