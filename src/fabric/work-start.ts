import { isEndOfRow } from '../notation/end-of-row.ts'
import type { Start } from '../notation/syntax.ts'
import { inSize, type Target, type Thing } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import { expectEdge, isLastOfRow, isOfRow, rowNamed } from './along-outline.ts'
import { rowAt } from './border-edge.ts'
import { findNext, indexAhead, isThing } from './find-place.ts'
import type { LaidRow } from './laid-row.ts'
import { goToRow, isBelow } from './older-row.ts'
import { compareOutOf } from './out-of.ts'
import type { Place } from './place.ts'
import type { Walk } from './walk.ts'

/** `Join B in any ch-2 sp`: the row begins there. On a round the places before it wait at its end. */
export function workStart(walk: Walk, item: Start): void {
  // The edge of stitches that waited begins where the row begins.
  if (walk.held) return compareOutOf(walk, item.target, 0)
  if (item.target.walk === 'layers') return layLayers(walk, item)
  if (item.target.walk === 'ring') {
    walk.edge = [{ kind: 'ring', row: walk.setting.rowIndex }]
    walk.at = 0
    walk.ring = true
    return
  }
  if (item.target.walk === 'other-side') return walk.outline ? expectEdge(walk, item.target.edge, item) : turnTheEnd(walk, item)
  if (walk.outline) return alongOutline(walk, item)
  if (item.target.walk === 'edge') return
  // The underside is the edge that the row goes along, of whatever row it is told.
  if (item.target.ofRow !== undefined && item.target.edge !== 'underside' && !isBelow(walk, item.target)) {
    goToRow(walk, item.target, item)
    if (item.target.passing) begin(walk, Math.min(walk.at, walk.end - 1))
    return
  }
  const corner = cornerToStart(walk, item.target)
  // What the row goes along from a corner may lie on either side of the place where the round below began.
  if (corner !== undefined && walk.onRing) return begin(walk, corner, true)
  const index = item.target.walk === 'last' ? lastNamed(walk, item.target) : corner ?? findNext(walk, item.target.after ? indexBehind(walk, item.target.after) : walk.at, item.target.thing)
  if (index < 0 || index >= walk.edge.length) return
  // On a round what lies before the joined stitch is left with what lies behind.
  if (item.target.passing) begin(walk, passing(walk, index, item.target), walk.round || walk.onRing)
  else begin(walk, index)
  if (item.atCorner) expectCorner(walk, item)
}

const middleOfCorner: Thing = { kind: 'stitch', where: 'corner' }

/** `in the second sc, which is the center of the first corner`, of an edge that has corners. */
function expectCorner(walk: Walk, span: Span): void {
  const isCorner = (place: Place | undefined): boolean => place !== undefined && isThing(walk, place, middleOfCorner)
  if (walk.edge.some(isCorner) && !isCorner(walk.edge[walk.at])) walk.trouble({ kind: 'no-such-place', span, what: 'the middle of a corner there' })
}

/** `in 4th htr of Row 5`, `in the 4th row-end`: so many stitches or row-ends farther on. */
function passing(walk: Walk, from: number, { passing: places = 0, thing }: Target): number {
  let index = from
  for (let passed = 0; passed < places && index < walk.end - 1; passed += 1) index = findNext(walk, index + 1, thing?.kind === 'row-end' ? thing : undefined)
  return Math.min(index, walk.end - 1)
}

/** `last st`; `2nd dc of last 5-dc group`: the last of those. */
function lastNamed(walk: Walk, { thing, fromEnd, ofRow }: Target): number {
  if (fromEnd) return walk.edge.length - inSize(fromEnd, walk.setting.size)
  // A row that is joined anew on the last stitch that was worked goes back over the whole of that row.
  if (ofRow !== undefined && !thing?.ofGroup && !walk.round && walk.choose('last-meant', ['the last stitch of the row is the last as the new row goes', 'the last stitch of the row is the one that was worked last']) === 1) return 0
  return thing?.ofGroup ? walk.edge.findLastIndex((place) => isThing(walk, place, thing)) : walk.edge.length - 1
}

/** `in first dc after any ch-2 sp`: the index behind that place; past the end of the edge where there is none. */
export function indexBehind(walk: Walk, { thing, last }: NonNullable<Target['after']>): number {
  const found = last ? walk.edge.findLastIndex((place) => isThing(walk, place, thing)) : indexAhead(walk, thing)
  return found < 0 ? walk.edge.length : (found + 1) % walk.edge.length
}

/** More corners than these are not tried one by one. */
const mostCorners = 6

function cornerToStart(walk: Walk, { thing, walk: how }: Target): number | undefined {
  return how === 'next' && thing?.where === 'corner' && !walk.setting.round && walk.at === 0 ? cornerMeant(walk, thing) : undefined
}

/** `Join yarn in centre dc of first top corner`: a flat row on a border that was worked round; which corner lies there the border does not tell. */
export function cornerMeant(walk: Walk, thing: Thing): number | undefined {
  const found = walk.edge.flatMap((place, index) => (isThing(walk, place, thing) ? [index] : []))
  if (found.length < 2 || found.length > mostCorners) return undefined
  return found[walk.choose('corner-meant', found.map((_, nth) => `of the corners of the border the ${nth === 0 ? 'first one' : `one ${nth + 1} in its order`} is meant`))]
}

/** `along the underside of the 5 added ch`: as many as are told must lie there. */
function expectChains(walk: Walk, { count, edge, start, end }: Target): void {
  const next = count && edge === 'underside' ? findNext(walk, walk.at, { kind: 'chain' }) : -1
  const there = next < 0 || next >= walk.end ? undefined : walk.outline!.stretchOf.get(walk.edge[next]!)?.places.length
  if (there !== undefined && there !== inSize(count!, walk.setting.size)) walk.trouble({ kind: 'places-apart', span: { start, end }, says: inSize(count!, walk.setting.size), worksOver: there, what: 'chain' })
}

/** A border is joined anywhere on the outline, or told which edge comes next. */
function alongOutline(walk: Walk, { target: said, start, end }: Start): void {
  const target = asItLies(walk, said)
  if (target.walk === 'edge' && !isEndOfRow(target)) {
    expectEdge(walk, target.edge, { start, end })
    return expectChains(walk, target)
  }
  if (target.nthOfStep !== undefined) return beginAtStep(walk, target.nthOfStep)
  const { corners, stepCorners } = walk.outline!
  const atCorner = target.thing?.kind === 'stitch' && target.thing.where === 'corner'
  // The row below may lie on the outline as any other, as the parts of a piece do whose shoulders are sewn.
  const asRowBelow = isBelow(walk, target) && target.walk !== 'edge' && !walk.edge.some((place) => isOfRow(walk, place, target))
  const isMeant = (place: Place): boolean => (target.ofRow === undefined && !isEndOfRow(target) || asRowBelow ? isThing(walk, place, target.thing) : isOfRow(walk, place, target))
  const fits = (place: Place): boolean => (atCorner && stepCorners.has(place) && target.ofRow === undefined || isMeant(place)) && (!atCorner || corners.has(place) || stepCorners.has(place))
  // `the row-end of Row 1` is that of the piece that this one goes on from, where it has one, and not of a tab beside it.
  const isOwn = (place: Place): boolean => rowAt(walk.outline, place)?.piece === walk.setting.standsOn
  const ownAlone = target.ofRow !== undefined && target.ofPiece === undefined && walk.edge.some((place) => isOwn(place) && fits(place))
  const named = (place: Place): boolean => fits(place) && (!ownAlone || isOwn(place))
  const amongLast = fromEndOfRow(walk, target)
  const lastOfRow = amongLast >= 0 ? amongLast : target.walk === 'last' && target.ofRow !== undefined ? walk.edge.findIndex((place) => isLastOfRow(walk, place, target)) : -1
  const asWorked = lastOfRow < 0 && target.fromEnd === undefined && target.walk === 'last' && target.ofRow !== undefined ? lastAsWorked(walk, walk.edge.findLastIndex(named), named) : -1
  const index = asWorked >= 0 ? asWorked : lastOfRow >= 0 ? lastOfRow : target.walk === 'last' || target.hand === 'left' && target.walk === 'next' ? walk.edge.findLastIndex(named) : walk.edge.findIndex((place, at) => at >= (walk.skips ? walk.at : target.after ? indexBehind(walk, target.after) : 0) && named(place))
  // A row that begins in the middle of an edge may come back to what lies before it.
  if (index >= 0) {
    compareOutOf(walk, target, index)
    begin(walk, nthOfRow(walk, index, target) ?? passing(walk, index, target), walk.round || (target.passing ?? 0) > 0)
  } else if (target.ofRow !== undefined || isEndOfRow(target)) walk.trouble({ kind: 'no-such-place', span: { start, end }, what: `${isEndOfRow(target) ? 'the end' : 'a stitch'} of ${rowNamed(target)}` })
}

/** `in 6th st of Row 19`, of which the first five are sewn to a shoulder: counted along the whole row, and not along what is open. */
function nthOfRow(walk: Walk, index: number, { passing: places = 0, ofRow, ofLeft }: Target): number | undefined {
  const all = places > 0 && ofRow !== undefined && !ofLeft ? rowAt(walk.outline, walk.edge[index]!)?.places : undefined
  if (!all) return undefined
  const [first, second] = [all.indexOf(walk.edge[index]!), all.indexOf(walk.edge[index + 1]!)]
  const found = walk.edge.indexOf((second >= 0 && second < first ? all.toReversed() : all)[places]!)
  if (found < 0 || found === passing(walk, index, { walk: 'next', passing: places, start: 0, end: 0 })) return undefined
  return walk.choose('nth-of-row', ['the stitch is counted among those that are open', 'the stitch is counted along the whole row']) === 1 ? found : undefined
}

/** `in last unworked st of Row 6` of a row that was worked the other way: the one that is met first. -1 where it is the last either way, or taken so. */
function lastAsWorked(walk: Walk, last: number, named: (place: Place) => boolean): number {
  const place = walk.edge[last]
  const stretch = place && walk.outline!.stretchOf.get(place)
  const places = rowAt(walk.outline, place ?? walk.edge[0]!)?.places ?? []
  const first = walk.edge.findIndex((one) => named(one) && walk.outline!.stretchOf.get(one) === stretch)
  if (!place || first < 0 || first === last || places.indexOf(walk.edge[first]!) < places.indexOf(place)) return -1
  return walk.choose('last-meant', ['the last stitch is the last as the new row goes', 'the last stitch is the one that was worked last']) === 1 ? first : -1
}

/** `Join yarn in the sc next to the step`: of several steps the words do not tell which one is meant. */
function beginAtStep(walk: Walk, nth: number): void {
  const steps = walk.outline!.stretches.filter(({ edge }) => edge === 'step')
  const place = steps.length === 1 ? steps[0]!.places[nth - 1] : undefined
  if (place) begin(walk, walk.edge.indexOf(place))
}

/** `in the first of the last 4 unworked dc of Rnd 5`: of those that the row made last, the one that is come to first. */
function fromEndOfRow(walk: Walk, target: Target): number {
  const last = target.fromEnd && inSize(target.fromEnd, walk.setting.size)
  return last === undefined ? -1 : walk.edge.findIndex((place) => isOfRow(walk, place, target) && rowAt(walk.outline, place)!.places.indexOf(place) >= rowAt(walk.outline, place)!.places.length - last)
}

/**
 * `With RS facing and foundation edge uppermost, join yarn in row-end of Edging Row 2 at the right-hand end`: the row was worked the other way up,
 * as an edging that hangs on a foundation always is. Of one that stands on a side neither end is to the left or right of the other.
 */
function asItLies(walk: Walk, target: Target): Target {
  if (!target.hand) return target
  const on = target.walk === 'edge' ? standsOn(walk, target) : undefined
  const other = { ...target, hand: target.hand === 'left' ? 'right' : 'left' } as const
  if (on === 'a side') {
    const { hand: _, ...either } = target
    const meant = walk.choose('hand-meant', ['either end of the row may be meant', 'left and right are as the row was worked', 'left and right are as the piece lies now'])
    return meant === 0 ? either : meant === 1 ? target : other
  }
  if (on === undefined && !/\b(?:at (?:the )?top|uppermost|upside down)\b/.test(walk.said)) return target
  return walk.choose('hand-meant', ['left and right are as the row was worked', 'left and right are as the piece lies now']) === 1 ? other : target
}

/** What the rows that are meant stand on, row by row down; nothing where that is a foundation of their own, and they lie as they were worked. */
function standsOn({ outline }: Walk, { ofRow, ofPiece }: Target): 'a side' | 'a foundation' | 'a round' | undefined {
  const rows = [...new Set(outline!.stretches.flatMap((stretch) => stretch.rows))]
  const meant = rows.find((row) => row.number === ofRow && (ofPiece === undefined || row.piece === ofPiece.toLowerCase()))
  for (let row = meant, steps = 0; row && steps <= rows.length; steps += 1) {
    const { over } = row
    if (row.foundation.length > 0 || !over) return undefined
    if ([over.first, over.last].some(({ kind }) => kind === 'row-end')) return 'a side'
    if (rows.some(({ foundation }) => foundation.includes(over.first) || foundation.includes(over.last))) return 'a foundation'
    const below: LaidRow | undefined = rows.find(({ places }) => places.includes(over.first))
    // Of a piece that is sewn in part the rows below may be gone from this outline.
    if (!below) return row.onRound ? 'a round' : undefined
    row = below
  }
  return undefined
}

/** A flat tube closed through both layers: two places make one. */
export function layLayers(walk: Walk, item: Span): void {
  if (walk.layers > 1 || walk.pairs > 1) return
  // A strap that is folded lengthwise has its two sides on one another, row by row.
  const laidOn = walk.outline !== undefined || /\b(?:panels?|pieces|halves|squares|motifs|sides together|(?:ws|rs|wrong sides?|right sides?)\b.*\b(?:together|tog|touch|touching|in|inside)|ws to ws|both (?:pieces|borders)|foundation|behind|beginning edge|starting chain)\b/.test(walk.said)
  // `place the Back layer behind`: two pieces, where nothing is said of a fold.
  const folded = !/\b(?:layer|piece|panel|square|motif)\b.*\bbehind\b/.test(walk.said)
  const ways = ['the piece is folded, and two of its places make one', 'two pieces or two sides lie on one another, and each gives one place']
  if (laidOn && walk.choose('layers', folded ? ways : ways.toReversed()) === (folded ? 1 : 0)) return
  if (walk.outline) {
    walk.pairs = 2
    return
  }
  if (walk.edge.length % 2 !== 0) walk.trouble({ kind: 'does-not-divide', span: { start: item.start, end: item.end }, room: walk.edge.length, each: 2, before: 0, after: 0 })
  const half = Math.floor(walk.edge.length / 2)
  walk.behind = walk.edge.slice(half)
  walk.edge = walk.edge.slice(0, half)
  walk.layers = 2
  walk.closes = true
}

/** `3 dc in last ch, rotate, dc in next 8 ch` of a round, and `in each of next 8 ch` of a row: behind several stitches in the last chain it can only go on along the other side. */
export function goesRoundTheEnd(walk: Walk, thing?: Thing): boolean {
  const { foundation, round, outline, onRing, lastMayWait, at, edge, made } = walk
  return foundation !== undefined && (round || thing?.kind === 'chain') && !outline && !onRing && !lastMayWait && at === edge.length && made.filter(({ into }) => into === foundation.at(-1)).length > 1
}

/**
 * Along the other side of the foundation chain, back to the first chain that was worked. That chain holds stitches from above
 * already; the row may work into it again or not.
 */
export function turnTheEnd(walk: Walk, span: Span): void {
  if (walk.bridge > 0 || walk.lastMayWait) return
  if (!walk.foundation) {
    // A round on the other edge of a tube goes along it already.
    if (walk.round && walk.edge.length > 0 && walk.edge.every(({ kind }) => kind === 'ch')) return
    walk.trouble({ kind: 'no-such-place', span, what: 'the other side of a foundation chain' })
    return
  }
  const last = walk.foundation.length - 1
  // Several stitches in the last chain go round its end; with one alone its other side is still a place.
  const single = walk.made.filter(({ into }) => into === walk.foundation![last]).length < 2
  const under = walk.foundation.slice(walk.firstChain, single ? last + 1 : last).toReversed()
  walk.edge = [...walk.edge.slice(0, walk.at), ...under]
  walk.noneFrom.clear()
  walk.lastMayWait = true
}

/** Makes the place at `index` the row's first place; of a ring the places before it come last. */
export function begin(walk: Walk, index: number, ring = walk.round): void {
  if (ring) {
    walk.edge = [...walk.edge.slice(index), ...walk.edge.slice(0, index)]
    walk.noneFrom.clear()
    walk.at = 0
    walk.last = 0
  } else {
    walk.at = index
    walk.last = index
    walk.begunAt = index
  }
}
