import { isEndOfRow } from '../notation/end-of-row.ts'
import { inSize, type Target, type Thing } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import { findNext, hasSpaces, indexBefore, isOnlyOneLeft, isThing } from './find-place.ts'
import { endOfEdge, endOfRowEnds, isLastOfRow, toNthOfStep, lastOfEdge, leftBefore, onNamedRow, onEdgeOfStitches, evenly, firstOnOutline, intoCorner, rowEndsPassed } from './along-outline.ts'
import { inPairs } from './both-layers.ts'
import { goToEndsOf, heldToRows, intoEndOfRow, isOfAnother, pastAnother } from './ends-of-rows.ts'
import { backToOwn, goesOnAlong, goToPiece, goToRow, toUnderside } from './older-row.ts'
import { betweenGroups, eachChain, openAll, openChains, withoutClosingChain } from './open-chains.ts'
import { compareOutOf } from './out-of.ts'
import { goToPart } from './parts.ts'
import { backAtFirst, intoOwnSpace } from './own-space.ts'
import { nothingNeeded } from './passed-runs.ts'
import { isSpace, isStitch } from './place.ts'
import { chainsPassed, joinAhead, leaveBegunSpace, tellSkipped } from './skipped-places.ts'
import { below, chainAhead, everyNth, fromHook, gaps, lastOf, lastSpace, layers, nth, ring, skipped, spaceFromBelow, take } from './special-places.ts'
import { toNextCopy } from './next-copy.ts'
import { startsAtSpace } from './starts-at-space.ts'
import type { Walk } from './walk.ts'
import { begin, goesRoundTheEnd, turnTheEnd } from './work-start.ts'
import type { Rest } from './work-items.ts'

export type WorkInto = (index: number) => void

/**
 * Walks to every place that a target means and works there. `over` is how many places one stitch uses up: 2 for `sc2tog`.
 */
export function placesOf(walk: Walk, target: Target, span: Span, rest: Rest, work: WorkInto, over = 1, spikes = true): void {
  toPlaces(walk, target, span, rest, work, over, spikes)
  compareOutOf(walk, target, walk.last)
}

function toPlaces(walk: Walk, target: Target, span: Span, rest: Rest, work: WorkInto, over: number, spikes: boolean): void {
  if (walk.inPlace !== undefined) return work(walk.inPlace)
  if (walk.held) return ofHeld(walk, target, span, rest, work, over)
  if (target.ofPart !== undefined) goToPart(walk, target.ofPart, span)
  if (target.ofPiece !== undefined && !walk.outline) {
    const begins = target.walk === 'last' && goesOnAlong(rest, target.ofPiece)
    goToPiece(walk, target, span, begins)
    if (begins) return next(walk, { ...target, walk: 'next' }, span, rest, 1, work, over)
  }
  if (walk.bridge > 0 && target.thing?.kind === 'chain') return overBridge(walk, target, span, work)
  backToOwn(walk, target)
  if (walk.outline && isEndOfRow(target)) return intoEndOfRow(walk, target, span, work)
  if (target.edge === 'underside' && target.ofPiece === undefined && !walk.outline && walk.foundation && walk.at > 0 || goesRoundTheEnd(walk, target.thing)) turnTheEnd(walk, span)
  if (target.ofRow !== undefined && !onOutline(walk, target)) goToRow(walk, target, span)
  // `2 sc in first loop` along an underside: the loops below its stitches. `in each free loop` of an older row: its stitches.
  if (walk.outline && target.thing?.kind === 'space' && target.thing.chains === undefined && target.thing.where === undefined && !hasSpaces(walk.edge)) return toPlaces(walk, { ...target, thing: { kind: 'chain' } }, span, rest, work, over, spikes)
  const fromBelow = spaceFromBelow(walk, target, span)
  if (fromBelow) return toPlaces(walk, fromBelow, span, rest, work, over, spikes)
  if (walk.onRow !== undefined && target.thing?.kind === 'space' && target.thing.chains === undefined && !hasSpaces(walk.edge)) return toPlaces(walk, { ...target, thing: { kind: 'stitch' } }, span, rest, work, over, spikes)
  if (target.thing?.kind === 'gap' && target.thing.where === 'corner') betweenGroups(walk)
  // `8 dc into loop` of a magic loop.
  if (target.thing?.kind === 'space' && walk.edge.length === 1 && walk.edge[0]!.kind === 'ring') return ring(walk, span, work)
  if (target.thing?.kind === 'space' || target.thing?.kind === 'gap') walk.worksSpaces = true
  if (target.walk === 'next' && intoOwnSpace(walk, target, rest, () => work(Math.max(0, walk.last)))) return
  if (walk.outline && target.thing?.where === 'corner' && target.walk === 'next' && !target.count) return intoCorner(walk, target, span, work)
  const count = target.count ? inSize(target.count, walk.setting.size) : 1
  switch (target.walk) {
    case 'next': {
      toNthOfStep(walk, target, span)
      goToEndsOf(walk, target)
      const from = walk.at
      next(walk, target, span, rest, count, work, over)
      return heldToRows(walk, target, span, from)
    }
    case 'each': return each(walk, target, span, rest, work, over)
    case 'same': return target.thing?.kind === 'gap' ? work(Math.max(0, walk.last)) : same(walk, target, span, work)
    case 'first': return backAtFirst(walk, target, work) ? undefined : target.thing?.kind === 'space' || firstOnOutline(walk, target) ? next(walk, target, span, rest, count, work, over) : first(walk, span, count, work, over)
    case 'last': return last(walk, target, span, rest, count, work, over)
    case 'nth': return nth(walk, target, span, work)
    case 'from-hook': return fromHook(walk, span, count, work)
    // On the way along an outline the ring in which the piece began lies between two row-ends, and is no place that must be worked.
    case 'ring': return walk.outline ? work(Math.max(0, walk.last)) : ring(walk, span, work)
    case 'skipped': return walk.outline && walk.skipped.length === 0 ? next(walk, { ...target, walk: 'next', thing: { kind: 'stitch' } }, span, rest, count, work, over) : skipped(walk, span, count, work)
    case 'marked': return next(walk, { ...target, walk: 'next' }, span, rest, 1, work, over)
    case 'below': return below(walk, span, rest, count, work, over === 1 && (target.loop !== undefined || spikes))
    case 'layers': return layers(walk, span, work)
    case 'edge': return each(walk, { ...target, walk: 'each', toEnd: true }, span, rest, work, over)
    case 'other-side': return walk.trouble({ kind: 'no-such-place', span, what: 'an edge' })
  }
}

/** `12 unworked sts of Rnd 20`, `8 sc of Row 9 of the Hearth` on the way along an outline: they are what it comes to next, or somewhere on. */
function onOutline(walk: Walk, { ofRow, ofPiece, thing, leftBy }: Target): boolean {
  if (walk.outline && ofPiece !== undefined) return true
  const below = (leftBy || thing?.stitch === 'sl st' || thing?.where === 'corner') && ofRow !== undefined ? ofRow - 1 : ofRow
  // `the 4 added ch of Row 8` are an underside once Row 9 lies on them.
  const above = thing?.kind === 'chain' && ofRow !== undefined ? ofRow + 1 : ofRow
  return walk.outline?.stretches.some(({ edge, rows }) => edge !== 'row-ends' && (rows[0]?.number === ofRow || rows[0]?.number === (edge === 'underside' ? above : below))) === true
}

/** The chain between two pieces: `3 sc in ch`, `sc in each of 3 ch`; both its sides are worked, one after the other. */
function overBridge(walk: Walk, { count }: Target, span: Span, work: WorkInto): void {
  const chains = count ? inSize(count, walk.setting.size) : 1
  for (let chain = 0; chain < chains; chain += 1) work(walk.last)
  if (!count || chains === walk.bridge) return
  if (chains > walk.bridge) walk.trouble({ kind: 'overrun', span, wants: chains, offers: walk.bridge, what: 'chain' })
  else walk.trouble({ kind: 'left-over', span, count: walk.bridge - chains })
}

/** Stitches that waited, and the chain over them, are an edge like others, in which a chain is told from a stitch. */
function ofHeld(walk: Walk, target: Target, span: Span, rest: Rest, work: WorkInto, over: number): void {
  // `1 sc in the gap at the corner`, `sc in the side of the row`: beside the stitches that waited lies no place of its own.
  if (isEndOfRow(target) || target.walk === 'next' && (target.thing?.kind === 'gap' || target.thing?.kind === 'row-end' || target.thing?.where === 'corner')) return work(Math.max(0, walk.last))
  if (target.walk === 'same' && walk.last >= 0) return same(walk, target, span, work)
  const { ofRow: _, held: __, edge: ___, ...plain } = target
  const count = target.count ? inSize(target.count, walk.setting.size) : 1
  if (target.walk === 'each' || target.walk === 'skipped' && !target.count) {
    const ends = walk.edge.findIndex(({ kind }, index) => index >= walk.at && kind === 'ch')
    // `in each remaining underarm ch`: as far as the chain goes.
    const chain = target.walk === 'each' && target.thing?.kind === 'chain' ? chainAhead(walk) : 0
    if (chain > 0) return next(walk, { ...plain, walk: 'next' }, span, rest, chain, work, over)
    const chains = target.thing?.kind === 'chain' || ends === walk.at || target.walk !== 'skipped'
    if (chains || ends < 0) return each(walk, { ...plain, walk: 'each' }, span, rest, work, over)
    return next(walk, { ...plain, walk: 'next' }, span, rest, ends - walk.at, work, over)
  }
  next(walk, { ...plain, walk: 'next' }, span, rest, count, work, over)
}

function next(walk: Walk, target: Target, span: Span, rest: Rest, count: number, work: WorkInto, over: number): void {
  if (walk.pairs > 1 && over === 1 && target.thing?.kind === 'row-end') return inPairs(walk, count, () => next(walk, { ...target, count: { values: [count * 2], start: span.start, end: span.end } }, span, rest, count * 2, work, 2))
  if (target.evenly) return evenly(walk, target, span, count, work)
  leaveBegunSpace(walk, target, span)
  if (target.together) return take(walk, findNext(walk, walk.at, target.thing), span, work, count, target.thing?.kind === 'row-end' ? target.thing : undefined)
  const passes = over > 1 && count >= over ? Math.floor(count / over) : count
  if (over > 1 && count > over && count % over !== 0) walk.trouble({ kind: 'does-not-divide', span, room: count, each: over, before: 0, after: 0 })
  for (let pass = 0; pass < passes; pass += 1) {
    if (target.thing?.kind === 'chain' || count > 1 && eachChain(walk, target.thing)) openChains(walk)
    const from = walk.at
    const index = pass === 0 ? pastAnother(walk, target, findNext(walk, walk.at, target.thing)) : findNext(walk, walk.at, target.thing)
    if (target.thing?.kind === 'join' && !joinAhead(walk, index)) return edgeRunsOut(walk, target, span, count, pass)
    if (pass === 0) onNamedRow(walk, target, index, span)
    if (pass === 0 && (toUnderside(walk, target) || toNextCopy(walk, target, count))) return next(walk, target, span, rest, count, work, over)
    if (pass === 0 && startsAtSpace(walk, target, index, rest)) return next(walk, target, span, rest, count, work, over)
    if (pass > 0 && index > walk.at && leavesRun(walk, target, index) || isOfAnother(walk, target, index)) return edgeRunsOut(walk, target, span, count, pass)
    tellSkipped(walk, target, { from, to: index, first: pass === 0 }, span)
    if (walk.outline && index >= walk.edge.length && !walk.overrun) edgeRunsOut(walk, target, span, count, pass)
    take(walk, index, span, work, over, target.thing?.kind === 'row-end' || target.thing?.kind === 'edge' ? target.thing : undefined)
    rowEndsPassed(walk, from, span)
    if (walk.overrun && walk.at > 2 * walk.edge.length + 2_000) return
  }
}

/** Row-ends and chains are counted along one side: a step or a corner between ends them. */
function leavesRun(walk: Walk, { thing }: Target, to: number): boolean {
  return walk.outline !== undefined && (thing?.kind === 'row-end' || thing?.kind === 'chain') && to < walk.end
}

/** A border asks for more of an edge than is left of it. */
function edgeRunsOut(walk: Walk, { thing }: Target, span: Span, wants: number, offers: number): void {
  walk.overrun = true
  walk.trouble({ kind: 'overrun', span, wants, offers, what: thing?.kind === 'row-end' || thing?.kind === 'chain' || thing?.kind === 'join' ? thing.kind : 'stitch' })
}

function each(walk: Walk, said: Target, span: Span, rest: Rest, work: WorkInto, over: number): void {
  const target = toCorner(walk, said)
  if (walk.pairs > 1 && over === 1 && target.thing?.kind === 'row-end') return inPairs(walk, undefined, () => each(walk, said, span, rest, work, 2))
  if (target.thing?.kind === 'gap') return gaps(walk, span, work)
  leaveBegunSpace(walk, target, span)
  if (eachChain(walk, target.thing)) openAll(walk)
  withoutClosingChain(walk)
  const limit = upToSpace(walk, target, rest) ?? (walk.outline && (target.edge && target.edge !== 'all' || target.across) ? endOfEdge(walk, rest) : target.thing?.kind === 'row-end' && !target.toEnd ? endOfRowEnds(walk, target.thing, target) : limitOf(walk, target, rest))
  const thing = named(walk, target.thing, limit, span)
  if (thing === 'none') return
  if (target.every && target.every > 1) return everyNth(walk, target.every, limit, span, work)
  const from = walk.at
  if (walk.outline && thing?.kind === 'row-end') leftBefore(walk, findNext(walk, walk.at, thing), span)
  for (;;) {
    const { at: passed } = walk
    const index = findNext(walk, passed, thing)
    // A row that has run out stands behind its edge, where nothing comes next.
    if (index >= limit || index < passed) break
    if (over > 1 && lastOf(walk, index, over) > limit) {
      walk.trouble({ kind: 'does-not-divide', span, room: limit - from, each: over, before: from, after: walk.edge.length - limit })
      break
    }
    chainsPassed(walk, index, span)
    take(walk, index, span, work, over)
    if (thing?.rows) rowEndsPassed(walk, passed, span)
  }
  walk.at = Math.max(walk.at, limit)
  noneWorked(walk, from, limit, span)
}

/** `Sc in each st to corner`: on an outline an edge ends there, and the corner itself may be no place. */
function toCorner(walk: Walk, { until, ...target }: Target): Target {
  if (until === undefined) return target
  return walk.outline && until.where === 'corner' ? { ...target, toEnd: true } : { ...target, until }
}

/** `*Sc in each sc, (sc, ch 2, sc) in ch-2 sp; rep from *`: within a repeat a fill goes as far as the space that is named next. */
function upToSpace(walk: Walk, target: Target, rest: Rest): number | undefined {
  const next = rest.quiet && target.thing?.kind === 'stitch' && !target.toEnd && !target.keepBack && !target.until ? rest.items.find(({ node }) => node !== 'aside') : undefined
  if (next?.node !== 'work' && next?.node !== 'group') return undefined
  const { thing, walk: how, count } = next.target ?? {}
  return thing?.kind === 'space' && how === 'next' && !count ? Math.min(walk.end, findNext(walk, walk.at, thing)) : undefined
}

/** A row that fills "each st" of nothing has nothing below it. */
function noneWorked(walk: Walk, from: number, limit: number, span: Span): void {
  if (from >= limit && walk.edge.length === 0) walk.trouble({ kind: 'no-such-place', span, what: 'a row to work into' })
}

/** Where a fill stops: before what is kept back, or before what the rest of the row needs. */
function limitOf(walk: Walk, target: Target, rest: Rest): number {
  if (target.until) return Math.min(walk.edge.length, findNext(walk, walk.at, target.until) + (target.including ? 1 : 0))
  // `to last ch` of a border's edge: of this edge, not of all.
  if (target.keepBack && onEdgeOfStitches(walk)) return Math.max(walk.at, lastOfEdge(walk) - inSize(target.keepBack, walk.setting.size))
  if (target.keepBack) return indexBefore(walk, inSize(target.keepBack, walk.setting.size), target.keepBack.of)
  const limit = indexBefore(walk, rest.uses)
  // The row does not tell where the marker is: any place will do, since the rest of the row takes what is left.
  if (target.toMarker) return walk.at + Math.max(0, Math.floor((limit - walk.at) / 2))
  return limit
}

/** What `each dc` means on this edge: the dc alone, or every stitch when none of that name is there. */
function named(walk: Walk, thing: Thing | undefined, limit: number, span: Span): Thing | undefined | 'none' {
  if (!thing || thing.kind === 'stitch' && thing.stitch === undefined && thing.where === undefined) return thing ?? { kind: 'stitch' }
  let some = false
  let others = false
  for (let index = walk.at; index < limit; index += 1) {
    const place = walk.edge[index]!
    if (isThing(walk, place, thing)) some = true
    // A chain is no dc, whatever else lies among them.
    else if (isStitch(place) && place.kind !== 'ch') others = true
    if (some && others) break
  }
  if (!some && (thing.kind === 'space' || thing.kind === 'turning-chain' || thing.kind === 'chain') && walk.at < walk.edge.length) {
    walk.trouble({ kind: 'no-such-place', span, what: thing.kind === 'space' ? 'a chain space' : thing.kind === 'chain' ? 'a chain' : 'a turning chain' })
    return 'none'
  }
  if (!some && thing.kind === 'stitch') return { kind: 'stitch' }
  if (some && others && thing.kind === 'stitch' && thing.where === undefined) {
    const all = walk.choose(`each-named ${thing.stitch ?? ''}`, [`every stitch is worked, whatever its kind`, `only the ${thing.stitch ?? 'named'} are worked`]) === 0
    if (all) return { kind: 'stitch' }
  }
  return thing
}

function same(walk: Walk, { asFirst }: Target, span: Span, work: WorkInto): void {
  // The last corner of a border is finished where it was begun.
  const begun = asFirst && walk.round && walk.outline ? walk.made[0]?.into : undefined
  if (begun) return work(walk.edge.indexOf(begun))
  const index = Math.max(0, walk.last)
  if (index >= walk.at) walk.take(index, span)
  walk.last = index
  work(index)
  walk.last = index
}

function first(walk: Walk, span: Span, count: number, work: WorkInto, over: number): void {
  if (walk.edge[0]?.kind === 'ch' && walk.chain && count === 1 && walk.edge.length > 1 && walk.closedChain === false && walk.at === 0) {
    take(walk, 0, span, work, over)
    return
  }
  for (let index = 0; index < count; index += Math.max(1, over)) {
    const place = walk.tookFirst || walk.at === 0 ? index : walk.at
    if (place >= walk.at) take(walk, place, span, work, over)
    else {
      walk.last = place
      work(place)
    }
  }
}

/** `3 sc in last st of Row 16`, where the border comes to it first: the row was worked the other way. */
function isLastAsWorked(walk: Walk, target: Target): boolean {
  const place = walk.edge[findNext(walk, walk.at, { kind: 'stitch' })]
  return walk.outline !== undefined && target.ofRow !== undefined && place !== undefined && isLastOfRow(walk, place, target)
}

function last(walk: Walk, target: Target, span: Span, rest: Rest, count: number, work: WorkInto, over: number): void {
  if (target.thing?.kind === 'space') return lastSpace(walk, target, span, work)
  if (count === 1 && (isOnlyOneLeft(walk, target.thing) || isLastAsWorked(walk, target))) return next(walk, { ...target, walk: 'next' }, span, rest, count, work, over)
  if (count > 1 && target.thing?.kind === 'chain' && eachChain(walk, target.thing)) openAll(walk)
  // The last stitch of a border's edge is that of this edge, not of all.
  const start = walk.outline ? Math.max(walk.at, lastOfEdge(walk, target.thing) - count) : indexBefore(walk, count)
  const gap = start - walk.at
  // `sc in each of last 8 sts` at the start of a part: what lies before them stays for other parts.
  if (gap > 0 && walk.setting.beginsPart && !walk.round && !walk.outline && walk.made.length === 0 && walk.at === 0) begin(walk, start)
  else if (gap > 0 && !nothingNeeded(walk, walk.at, walk.worksSpaces)) {
    let needed = 0
    for (let index = walk.at; index < start; index += 1) if (!isSpace(walk.edge[index]!)) needed += 1
    if (needed > 0) walk.trouble({ kind: 'left-over', span, count: needed })
    walk.missed += needed
    walk.at = start
  }
  const passes = over > 1 ? Math.max(1, Math.floor(count / over)) : count
  const from = walk.at
  for (let pass = 0; pass < passes; pass += 1) {
    take(walk, findNext(walk, walk.at, undefined), span, work, over > 1 && passes === 1 ? Math.max(over, count) : over) // `sc2tog over last 3 sts` uses three.
    if (pass === 0) rowEndsPassed(walk, from, span)
  }
}
