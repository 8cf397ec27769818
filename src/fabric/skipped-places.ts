import { corner, type Target } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import { isThing } from './find-place.ts'
import { isSpace, isStitch, type Place } from './place.ts'
import type { Walk } from './walk.ts'

/** From one index to before another; the first of several places that are asked for. */
interface Way {
  readonly from: number
  readonly to: number
  readonly first: boolean
}

/**
 * Stitches that are passed on the way to a space or a corner are passed as a matter of course. Not so where the row says what it skips (`skip next
 * 2 sc, 7 dc in next ch-2 sp`), on the way to a join, where a chain is worked chain by chain and not to its end, and round joined motifs on
 * the way to the corner in which a side ends.
 */
export function tellSkipped(walk: Walk, { thing }: Target, { from, to, first }: Way, span: Span): void {
  if (to >= walk.edge.length) return
  const before = walk.edge[from - 1]
  if (first && thing?.kind === 'space' && before && isStitch(before) && walk.last === from - 1) walk.toSpaces.push({ passed: walk.edge.slice(from, to).filter(isOwed).length, span: { start: span.start, end: span.end } })
  const all = thing?.kind === 'join' || first && (thing?.kind === 'space' || thing?.where === 'corner') && walk.skippedTo === from
  const passed = walk.edge.slice(from, to).filter(all ? isOwed : chainBegun(walk, thing, from) ? isChain : sideLeft(walk, to)).length
  if (passed === 0) return
  walk.missed += passed
  walk.trouble({ kind: 'left-over', span, count: passed })
}

/** A row that comes to its spaces just so as often as this comes to all of them so (common practice, no source). */
const oftenEnough = 2

/** `sc in next 2 sc, 3 sc in next ch-2 sp, sc in next 36 sc, 3 sc in next ch-2 sp, …`: where all counts but one lead just to the next space, that one is a slip. */
export function tellOddOneOut(walk: Walk): void {
  const off = walk.toSpaces.filter(({ passed }) => passed > 0)
  const [odd] = off
  if (!odd || off.length > 1 || walk.toSpaces.length - 1 < oftenEnough) return
  walk.missed += odd.passed
  walk.trouble({ kind: 'left-over', span: odd.span, count: odd.passed })
}

const isOwed = (place: Place): boolean => isStitch(place) && !place.travel && place.kind !== 'ch'

const isChain = ({ kind }: Place): boolean => kind === 'ch'

/** `1 sc in each of next 3 ch, 1 sc in each of next 5 sc` of which the chain has 4. */
const chainBegun = (walk: Walk, thing: Target['thing'], from: number): boolean => thing?.kind === 'stitch' && from > 1 && [from - 2, from - 1, from].every((index) => walk.edge[index]?.kind === 'ch')

/** What is left of a side before its corner: joins, and places like the one that was worked last. */
function sideLeft(walk: Walk, to: number): (place: Place) => boolean {
  if (!walk.edge[to]!.outer || !isThing(walk, walk.edge[to]!, corner)) return () => false
  const before = walk.edge[walk.last]
  return (place) => place.kind === 'join' || before !== undefined && (isSpace(before) ? isSpace(place) : isStitch(place))
}

/** A join lies on the side that is worked now: motifs that meet behind the next corner are another side's. */
export function joinAhead(walk: Walk, index: number): boolean {
  if (index >= walk.edge.length) return !walk.edge.some(({ kind }) => kind === 'join')
  return !walk.edge.slice(walk.at, index).some((place) => isThing(walk, place, corner))
}

/** A chain that is passed on the way to `each sc` was made to be worked into: it is left over. */
export function chainsPassed(walk: Walk, to: number, span: Span): void {
  let passed = 0
  for (let index = walk.at; index < Math.min(to, walk.edge.length); index += 1) if (walk.edge[index]!.kind === 'ch') passed += 1
  if (passed === 0) return
  walk.missed += passed
  walk.trouble({ kind: 'left-over', span, count: passed })
}

/** `sc in each of next 5 ch, sc in each sc to end` over six chains: the one that is left of them is no sc. */
export function leaveBegunSpace(walk: Walk, { thing }: Target, span: Span): void {
  if (walk.opened === 0 || thing?.kind !== 'stitch' || thing.stitch === undefined || walk.edge[walk.at - 1]?.kind !== 'ch') return
  const to = walk.edge.findIndex(({ kind }, index) => index >= walk.at && kind !== 'ch')
  chainsPassed(walk, to, span)
  if (to > walk.at) walk.at = to
}
