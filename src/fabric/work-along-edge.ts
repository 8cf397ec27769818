import type { Work } from '../notation/syntax.ts'
import { corner, inSize, type EdgeName, type Target } from '../notation/target.ts'
import { endOfEdge, endOfPiece, expectEdge, leftBefore, startOfNext } from './along-outline.ts'
import { isOfAnother } from './ends-of-rows.ts'
import { shiftSteps } from './tally.ts'
import { findNext, isThing } from './find-place.ts'
import type { Place } from './place.ts'
import { rowEndRates } from './row-end-rates.ts'
import { placesOf } from './places-of.ts'
import type { Walk } from './walk.ts'
import type { Doing } from './work-stitches.ts'
import type { Rest } from './work-items.ts'

/** Stitches worked along an edge whose number the row leaves to the maker. */
export interface Loose {
  /** What they come to, at the usual rate and at others. */
  readonly sums: readonly number[]
  /** Index of the last of them among what the row made; -1 for none. */
  readonly last: number
  /** `about 12 sc`: a number is told, but not meant to the stitch. */
  readonly about: boolean
  /** The words give a rate, so that a total far from it is wrong and not for the maker to decide. */
  readonly rated: boolean
  readonly span: { readonly start: number; readonly end: number }
}

/** `30 sc evenly along the short edge`, `sc across the bottom`, `sc evenly around`: all places of the edge are passed. */
export function workAlongEdge(walk: Walk, item: Work, doing: Doing, rest: Rest): void {
  const { target } = item
  if (!target) return
  const { size } = walk.setting
  if (!walk.outline && (target.rate || !item.count && target.evenly)) {
    walk.undecided ??= { reason: 'no arithmetic decides these words', span: { start: item.start, end: item.end } }
    return
  }
  if (isPartOfRound(walk, item, rest)) return placesOf(walk, { walk: 'next', count: item.count!, start: item.start, end: item.end }, item, rest, (index) => walk.make({ kind: doing.kind, into: walk.place(index) }))
  expectEdge(walk, target.edge, item)
  const from = walk.outline ? Math.min(walk.end, startOf(walk, target.edge)) : walk.at
  leftBefore(walk, from, item)
  walk.at = from
  const end = endOfPiece(walk, target, from, target.motif && !walk.outline ? endOfMotif(walk, from) : !walk.outline || target.edge === 'all' ? walk.end : endOfEdge(walk, rest))
  if (isOfAnother(walk, target, from)) walk.trouble({ kind: 'no-such-place', span: item, what: `a row-end of ${target.sideOf}` })
  for (let index = from; index < end; index += 1) walk.take(index, item)
  const places = walk.edge.slice(from, end)
  if (places.length === 0) walk.trouble({ kind: 'no-such-place', span: item, what: 'an edge' })
  // Row-ends that are the height of a step may be passed, as by a border that goes from stitch to stitch.
  const flush = places.filter((place) => !walk.outline?.risers.has(place))
  const sums = item.count ? [inSize(item.count, size)] : flush.length < places.length ? [...sumsOf(walk, places), ...sumsOf(walk, flush)] : sumsOf(walk, places)
  const rated = target.rate && atRate(walk, item, target.rate, places, flush)
  const count = rated ?? sums[0]!
  for (let stitch = 0; stitch < count; stitch += 1) walk.make({ kind: doing.kind, into: places[Math.floor((stitch * places.length) / count)] })
  if (!target.rate && (!item.count || item.about)) loosen(walk, sums, item)
}

/** `3 sc in corner sc, 12 sc along the top, …` on a round of stitches: the edge is told, and one goes into each of so many. */
function isPartOfRound(walk: Walk, { count, target }: Work, rest: Rest): boolean {
  return walk.round && !walk.outline && count !== undefined && target?.motif !== true && !target?.evenly && target?.ofRow === undefined && target?.ofPiece === undefined
    && inSize(count, walk.setting.size) < walk.left && (rest.quiet === true || rest.items.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat'))
}

/** Where the side of the motif ends that the hook stands at: at a corner, or where the next motif is joined. */
function endOfMotif(walk: Walk, from: number): number {
  let index = from
  while (index < walk.end && walk.edge[index]!.kind !== 'join' && !isThing(walk, walk.edge[index]!, corner)) index += 1
  return index
}

/** Where the edge that is named begins: a side at its first row-end, the next edge behind the rest of the one that was begun. */
function startOf(walk: Walk, edge: EdgeName | undefined): number {
  if (edge === 'side') return findNext(walk, walk.at, { kind: 'row-end' })
  return edge === 'next' ? startOfNext(walk) : walk.at
}

/** What stitches along places come to, at each of the usual rates. */
export function sumsOf(walk: Walk, places: readonly Place[]): readonly number[] {
  const rates = places.map((place) => (place.kind === 'row-end' ? rowEndRates(place.into?.kind ?? 'sc', walk.setting.lexicon) : [1, 1, 1]))
  return [0, 1, 2].map((way) => Math.round(rates.reduce((sum, rate) => sum + rate[way]!, 0)))
}

/** `3 sc for every 2 rows`: what that comes to; a row that is left over gets one stitch more or one fewer. */
function atRate(walk: Walk, item: Work, rate: NonNullable<Target['rate']>, places: readonly Place[], flush: readonly Place[]): number {
  const along = [places, flush].map((all) => ({ all: all.length, ends: all.filter(({ kind }) => kind === 'row-end').length }))
  const sums = [...new Set(along.flatMap(({ all, ends }) => sumsAtRate(walk, item, rate, ends).map((sum) => sum + all - ends)))]
  if (rate.stitches && item.count) return told(walk, item, sums)
  if (item.target?.evenly || rate.about || item.about) {
    loosen(walk, sums, item, true)
    return sums[0]!
  }
  return sums.length === 1 ? sums[0]! : sums[walk.choose(`rate ${item.start}`, sums.map((sum) => `the rate comes to ${sum}`))]!
}

/** So many stitches to so many rows; of rows left over, those that lie nearest to it. */
function sumsAtRate({ setting }: Walk, { count }: Work, { stitches, rows }: NonNullable<Target['rate']>, ends: number): readonly number[] {
  // `sc to 2 rows`: one of them, where no number is told.
  const number = stitches ?? count
  const each = ((number ? inSize(number, setting.size) : 1) * ends) / inSize(rows, setting.size)
  return [Math.floor(each), Math.ceil(each)]
}

/** `30 sc evenly along 20 row-ends (3 for every 2 rows)`: two statements of one number. */
export function tellRateOf(walk: Walk, item: Work, rate: NonNullable<Target['rate']>, ends: number): void {
  told(walk, item, sumsAtRate(walk, item, rate, ends))
}

function told(walk: Walk, item: Work, sums: readonly number[]): number {
  const number = inSize(item.count!, walk.setting.size)
  if (!sums.includes(number)) walk.trouble({ kind: 'rate-apart', span: { start: item.start, end: item.end }, told: number, comes: sums[0]! })
  return number
}

/** Notes stitches whose number the row leaves to the maker. */
export function loosen(walk: Walk, sums: readonly number[], span: Work, rated = false): void {
  const before = walk.loose?.sums ?? [0]
  const ways = Math.max(before.length, sums.length)
  const at = (list: readonly number[], way: number): number => list[way] ?? list[0]!
  walk.loose = { sums: Array.from({ length: ways }, (_, way) => at(before, way) + at(sums, way)), last: walk.made.length - 1, about: walk.loose?.about === true || span.about === true, rated, span: { start: span.start, end: span.end } }
}

/**
 * Where the maker is told no number, the total is the number. One more or fewer than the edge holds does not matter to a maker, and is
 * told; more than that the words do not decide.
 */
export function settleLoose(walk: Walk, said: number | undefined): number {
  const { loose } = walk
  if (!loose) return 0
  if (said === undefined) {
    if (loose.about) walk.undecided ??= { reason: 'no arithmetic decides these words', span: loose.span }
    return 0
  }
  const others = walk.stitches() - loose.sums[0]!
  const exact = loose.sums.find((sum) => others + sum === said)
  const wanted = exact ?? loose.sums.find((sum) => Math.abs(others + sum - said) === 1)
  if (wanted === undefined) {
    if (loose.rated) return 0
    walk.undecided ??= { reason: `one stitch in each place of the edge comes to ${others + loose.sums[0]!}, and the words do not tell how it comes to ${said}`, span: loose.span }
    return 0
  }
  spread(walk, loose.last, said - others - loose.sums[0]!)
  return exact === undefined ? said - others - wanted : 0
}

/** So many stitches more or fewer among those that lie along the edge. */
function spread(walk: Walk, last: number, by: number): void {
  const like = walk.made[last]
  shiftSteps(walk, last, by)
  if (by < 0) walk.made.splice(last + by + 1, -by)
  else if (like) walk.made.splice(last, 0, ...Array.from({ length: by }, () => like))
}
