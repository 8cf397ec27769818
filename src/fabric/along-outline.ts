import type { EdgeName, Target, Thing } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import { rowAt } from './border-edge.ts'
import { gapIn } from './edges-used.ts'
import { findNext, isThing } from './find-place.ts'
import { endsOf, handOf, type LaidRow, type Stretch } from './laid-row.ts'
import { isStitch, type Place } from './place.ts'
import type { WorkInto } from './places-of.ts'
import type { Walk } from './walk.ts'
import type { Rest } from './work-items.ts'

/** Row-ends of a straight side that a border may pass without a word: those of one tall row or two low ones (common practice, no source). */
export const passedInSilence = 2

/** At a step a border passes over the step's own height; more row-ends than that must be said. */
export function rowEndsPassed(walk: Walk, from: number, span: Span): void {
  if (walk.outline || walk.held) tellPassed(walk, from, Math.min(walk.last, walk.edge.length), span, begunSide(walk, from))
}

/** What lies between the hook and the edge that is worked next is passed; stitches and chains among it are left over. */
export function leftBefore(walk: Walk, to: number, span: Span): void {
  if (walk.outline && to < walk.end) tellPassed(walk, walk.at, to, span, false)
}

function tellPassed(walk: Walk, from: number, to: number, span: Span, begun: boolean): void {
  const { passed, missed } = passedOver(walk, from, to)
  if (missed > 0) {
    walk.missed += missed
    walk.trouble({ kind: 'left-over', span, count: missed })
  }
  if (passed > passedInSilence || begun) walk.trouble({ kind: 'row-ends-passed', span, count: Math.max(1, passed), ...gapIn(walk, walk.edge.slice(from, to), walk.edge[from - 1], span) })
}

/** A side of which some row-ends were worked is worked to its end; the one across a slit is another. */
function begunSide(walk: Walk, from: number): boolean {
  const [before, next] = [walk.edge[from - 1], walk.edge[from]]
  const sameSide = before && next && (!walk.outline || walk.outline.stretchOf.get(before) === walk.outline.stretchOf.get(next))
  return from < Math.max(walk.last, 0) && sameSide === true && next?.kind === 'row-end' && before?.kind === 'row-end' && walk.taken.has(before) && !walk.taken.has(next)
}

/** Fewer row-ends than this may be any part of a side, such as a corner or a tab; of a step, which is told by its stitches, fewer are enough (common practice, no source). */
const plainlyASide = 3
const plainlyAStep = 2

/** A flat row that stops one place before its edge or a step ends was counted one short: so near the end nobody stops without saying so. One that says it goes as far as that works all of it. */
export function stopsShort(walk: Walk, span: Span, wholeWay: boolean): void {
  const [worked, left, beyond] = [walk.edge[walk.at - 1], walk.edge[walk.at], walk.edge[walk.at + 1]]
  const stretch = left && walk.outline?.stretchOf.get(left)
  if (!worked || !left || !stretch || walk.outline!.stretchOf.get(worked) !== stretch) return
  const places = straightPart(stretch, left)
  const side = places.filter((place) => walk.taken.has(place)).length
  if (wholeWay) return walk.trouble({ kind: 'row-ends-passed', span, count: places.length - places.indexOf(left) })
  if (side < (stretch.edge === 'step' ? plainlyAStep : plainlyASide) && !tookSuchASide(walk, stretch) || side !== places.length - 1 || beyond && places.includes(beyond)) return
  walk.trouble({ kind: left.kind === 'row-end' ? 'row-ends-passed' : 'left-over', span, count: 1 })
}

/** The part of a stretch that a place lies in. Where a hem hangs on the foundation, its row-ends follow those of the piece past a corner. */
function straightPart({ edge, rows, places }: Stretch, place: Place): readonly Place[] {
  if (edge !== 'row-ends') return places
  const hangsOn = (row: LaidRow, other: LaidRow): boolean => row.over !== undefined && other.foundation.includes(row.over.first)
  const corner = (at: number): boolean => hangsOn(rows[at - 1]!, rows[at]!) || hangsOn(rows[at]!, rows[at - 1]!)
  let [from, to] = [places.indexOf(place), places.indexOf(place) + 1]
  while (from > 0 && !corner(from)) from -= 1
  while (to < places.length && !corner(to)) to += 1
  return places.slice(from, to)
}

/** Where the row went along one side or step as far as it goes, the like one is its other. */
function tookSuchASide(walk: Walk, { edge, places }: Stretch): boolean {
  return walk.outline!.stretches.some((other) => other.edge === edge && other.places !== places && other.places.length === places.length && other.places.every((place) => walk.taken.has(place)))
}

/** Row-ends of straight sides and stitches from one index to before another. */
export function passedOver(walk: Walk, from: number, to: number): { readonly passed: number; readonly missed: number } {
  let passed = 0
  let missed = 0
  for (let index = from; index < to; index += 1) {
    const place = walk.edge[index]!
    if (walk.taken.has(place)) continue
    if (place.kind === 'row-end') passed += walk.outline?.risers.has(place) ? 0 : 1
    else if (isStitch(place)) missed += 1
  }
  return { passed, missed }
}

/** `60 sc evenly along 30 row-ends`: every place is passed, and the stitches are spread over them. */
export function evenly(walk: Walk, target: Target, span: Span, count: number, work: WorkInto): void {
  const thing = target.thing ?? { kind: 'row-end' }
  leftBefore(walk, findNext(walk, walk.at, thing), span)
  const end = endOfSide(walk, findNext(walk, walk.at, thing))
  for (let place = 0; place < count; place += 1) {
    const index = findNext(walk, walk.at, thing)
    if (walk.outline && index >= end) {
      walk.trouble({ kind: 'overrun', span, wants: count, offers: place, what: 'row-end' })
      break
    }
    walk.take(index, span)
  }
  work(walk.last)
}

/** Where the side ends that holds the place at an index: at the next corner. */
export function endOfSide(walk: Walk, from = walk.at): number {
  let index = from
  while (index < walk.edge.length && !walk.outline?.corners.has(walk.edge[index]!)) index += 1
  return index
}

/** `18 sc up the row-ends of First length`, to which others are sewn: as far as those of that piece go. */
export function endOfPiece(walk: Walk, { sideOf }: { readonly sideOf?: string | undefined }, from: number, end: number): number {
  const piece = sideOf?.toLowerCase()
  const pieceAt = (index: number): string | undefined => rowAt(walk.outline, walk.edge[index]!)?.piece
  if (piece === undefined || from >= end || pieceAt(from) !== piece) return end
  const other = walk.edge.findIndex((_, index) => index >= from && pieceAt(index) !== piece)
  return other < 0 ? end : Math.min(other, end)
}

/** Where the row-ends end that are worked: with the side, or behind the last of the rows that are named. The others are left to what follows. */
export function endOfRowEnds(walk: Walk, thing: Thing, { upTo, sideOf }: Pick<Target, 'upTo' | 'sideOf'>): number {
  const first = findNext(walk, walk.at, thing)
  const side = endOfPiece(walk, { sideOf }, first, endOfSide(walk, first))
  const end = (upTo ? walk.edge.findIndex((place, index) => index >= walk.at && index < side && isEndOf(walk, place, upTo)) + 1 : 0) || side
  if (!thing.rows) return end
  let last = end
  while (last > walk.at && !isThing(walk, walk.edge[last - 1]!, thing)) last -= 1
  return last
}

/** Where the edge ends that the hook stands at; a corner that the row works next is left to it. */
export function endOfEdge(walk: Walk, rest: Rest): number {
  const stretch = walk.outline?.stretchOf.get(walk.edge[walk.at]!)
  if (!stretch || stretch.edge === 'step') return endOfSide(walk)
  let index = walk.at
  while (index < walk.edge.length && walk.outline?.stretchOf.get(walk.edge[index]!) === stretch) index += 1
  // `2 sc evenly along the short edge, sc in next 14 sts`: the straight run of a side that steps farther on, or the side with its steps.
  if (stretch.edge === 'row-ends') return index === endOfSide(walk) || walk.choose('edge-with-steps', ['the edge ends where the step begins', 'the edge goes on over its steps']) === 0 ? index : endOfSide(walk)
  return worksCorner(rest) && !cornersApart(walk) ? Math.max(walk.at, index - 1) : index
}

/** Where the next edge begins: behind the rest of the one that the row has begun. */
export function startOfNext(walk: Walk): number {
  const before = walk.edge[walk.at - 1]
  const stretch = before && walk.outline?.stretchOf.get(before)
  let index = walk.at
  if (!stretch || !walk.taken.has(before)) return index
  while (index < walk.end && walk.outline?.stretchOf.get(walk.edge[index]!) === stretch) index += 1
  return index
}

/** Index behind the last place of the edge that the hook stands at, corner included. The last stitch of a step is that of the step. */
export function lastOfEdge(walk: Walk, thing?: Thing): number {
  let index = findNext(walk, walk.at, undefined)
  const step = thing?.kind === 'stitch' && walk.edge[index] ? walk.outline?.stretchOf.get(walk.edge[index]!) : undefined
  if (step?.edge === 'step') {
    while (index < walk.edge.length && walk.outline!.stretchOf.get(walk.edge[index]!) === step) index += 1
    return index
  }
  return endOfEdge(walk, { uses: 0, items: [] })
}

/** The hook stands at stitches or chains of an outline. */
export function onEdgeOfStitches(walk: Walk): boolean {
  const edge = walk.outline?.stretchOf.get(walk.edge[walk.at]!)?.edge
  return edge === 'top' || edge === 'underside'
}

function worksCorner({ items }: Rest): boolean {
  const next = items.find(({ node }) => node !== 'aside')
  return (next?.node === 'work' || next?.node === 'group') && (next.target?.thing?.where === 'corner' || next.target?.walk === 'last' && !next.target.count)
}

/** A corner of a border is one of the edge's stitches, or a place of its own between two edges. */
export function cornersApart(walk: Walk): boolean {
  return walk.choose('corners', ['the corners are stitches of the edges', 'the corners are places of their own']) === 1
}

/** `3 sc in corner`: into the corner stitch, or between two edges. */
export function intoCorner(walk: Walk, target: Target, span: Span, work: WorkInto): void {
  // `3 sc in corner ch`, `in corner st`: that stitch, and no place beside it.
  if (target.thing?.kind === 'space' && cornersApart(walk)) return work(Math.max(0, walk.last))
  const from = walk.at
  const index = walk.take(cornerAhead(walk, target), span)
  rowEndsPassed(walk, from, span)
  work(index)
}

/** The corner of the row that is named, or the next: where a step juts out it is its stitch that the hook comes to. */
function cornerAhead(walk: Walk, target: Target): number {
  const next = findNext(walk, walk.at, undefined)
  const { corners, stepCorners } = walk.outline!
  if (target.ofRow === undefined) return walk.edge[next] && stepCorners.has(walk.edge[next]) ? next : findNext(walk, walk.at, target.thing)
  const ofSlips: Target = { ...target, thing: { kind: 'stitch', stitch: 'sl st' } }
  const named = walk.edge.findIndex((place, index) => index >= walk.at && (corners.has(place) || stepCorners.has(place)) && (isOfRow(walk, place, target) || isOfRow(walk, place, ofSlips)))
  return named < 0 ? findNext(walk, walk.at, target.thing) : named
}

/** An edge named that does not come next is a border gone astray. */
export function expectEdge(walk: Walk, named: EdgeName | undefined, span: Span): void {
  if (!walk.outline || !named || named === 'any' || named === 'next' || named === 'all') return
  const here = walk.edge[walk.at]
  if (here && isOn(walk, here, named)) return
  const next = edgeAt(walk, walk.at)
  if (next && next !== named) walk.trouble({ kind: 'other-edge', span, named, next })
}

/** `each of the 32 sts of Row 6`: they are the top of that row, and not the chains of the foundation; `the 14 skipped sts of Row 6` are no top of a row on it. */
export function onNamedRow(walk: Walk, { ofRow, thing, held, ofPiece, edge }: Target, index: number, span: Span): void {
  const place = walk.edge[index]
  const stretch = place && walk.outline?.stretchOf.get(place)
  // `sc in 10 sts across top`
  const acrossTop = edge === 'top' && !/\b(?:at (?:the )?top|uppermost|upside down)\b/.test(walk.said)
  if (ofRow === undefined && !acrossTop || thing?.kind !== 'stitch' || !stretch) return
  if (stretch.edge === 'underside') walk.trouble({ kind: 'other-edge', span, named: 'top', next: 'underside' })
  const number = stretch.rows[0]?.number
  if (held !== undefined && ofPiece === undefined && stretch.edge === 'top' && number !== undefined && ofRow !== undefined && number > ofRow) walk.trouble({ kind: 'no-such-place', span, what: `a stitch that waits on row ${ofRow}` })
}

/** Which edge the places from an index on belong to, the height of a step apart. */
function edgeAt(walk: Walk, from: number): 'side' | 'underside' | 'top' | undefined {
  let index = from
  // What is left of the edge before, such as the last row-end under a corner, is passed.
  while (index < walk.edge.length && from > 0 && walk.edge[index]!.kind === 'row-end' && (index - from < passedInSilence || walk.outline?.risers.has(walk.edge[index]!))) index += 1
  const edge = walk.outline?.stretchOf.get(walk.edge[index]!)?.edge
  return edge === 'row-ends' || edge === 'step' ? 'side' : edge
}

function isOn(walk: Walk, place: Walk['edge'][number], named: EdgeName | undefined): boolean {
  const edge = walk.outline?.stretchOf.get(place)?.edge
  return named === 'side' ? edge === 'row-ends' || edge === 'step' : edge === named
}

/** `in first unworked st of Row 4`, `at the right-hand end of Row 2`. */
export function isOfRow(walk: Walk, place: Walk['edge'][number], target: Target): boolean {
  const { hand, walk: how, thing } = target
  const stretch = walk.outline?.stretchOf.get(place)
  const row = rowAt(walk.outline, place)
  // `the 4 sl sts of Row 7` lie on the stitches that Row 6 has there, where slip stitches are no row of their own.
  const under = thing?.stitch === 'sl st' && (stretch?.edge === 'step' || stretch?.edge === 'top') && row !== undefined && liesUnder(walk, row, target)
  if (!stretch || !under && !isRowMeant(walk, row, target)) return false
  if (how !== 'edge') return stretch.edge === 'top' || stretch.edge === 'step' && (hand === undefined || (handOfStep(stretch) ?? hand) === hand)
  if (stretch.edge !== 'row-ends' || !facesRightly(walk, place, target)) return false
  return hand === undefined || row !== undefined && hand === handOf(row, place)
}

/** Whether a step lies at the left or the right end of its row; neither where it is in the middle of it. */
function handOfStep({ rows: [row], places }: Stretch): 'left' | 'right' | undefined {
  const ends = row ? endsOf(row.places).filter(({ into }) => into && places.includes(into)) : []
  return row && ends.length === 1 ? handOf(row, ends[0]!) : undefined
}

/** `the neck-side row-end of Row 6`: where one end of the row lies above a step and the other does not, the one that is meant. */
function facesRightly(walk: Walk, place: Walk['edge'][number], { facing }: Target): boolean {
  const fits = (end: Walk['edge'][number]): boolean => walk.outline!.risers.has(end) === (facing === 'step')
  return facing === undefined || fits(place) || !walk.edge.some((end) => end.kind === 'row-end' && rowAt(walk.outline, end) === rowAt(walk.outline, place) && fits(end))
}

/** Whether a row is the one under the row that is meant, which may be the first of another piece. */
function liesUnder(walk: Walk, row: Stretch['rows'][number], target: Target): boolean {
  if (row.number !== undefined && row.number + 1 === target.ofRow) return true
  return walk.outline!.stretches.some(({ rows }) => rows.some((above) => isRowMeant(walk, above, target) && above.places[0]?.row === (row.places[0]?.row ?? 0) + 1))
}

/** `3 sc in the 5th unworked st`: stitches of the step before it are passed over. */
export function toNthOfStep(walk: Walk, { nthOfStep }: Target, span: Span): void {
  const next = walk.edge[findNext(walk, walk.at, undefined)]
  const step = nthOfStep !== undefined && next ? walk.outline?.stretchOf.get(next) : undefined
  if (!step) return
  const index = walk.edge.indexOf(step.places[nthOfStep! - 1]!)
  if (index < walk.at) return walk.trouble({ kind: 'no-such-place', span, what: `a stitch ${nthOfStep} of the step` })
  leftBefore(walk, index, span)
  walk.at = index
}

/** `Rejoin yarn in last st of Row 6`: the last one that the row made, whichever way its edge is met now. */
export function isLastOfRow(walk: Walk, place: Walk['edge'][number], target: Target): boolean {
  return isOfRow(walk, place, target) && place === rowAt(walk.outline, place)?.places.at(-1)
}

/** `yoke Row 1`, `the hem row`, `the last row`: whether a row is the one that is named, by its number, its piece or its label. */
function isRowMeant(walk: Walk, row: Stretch['rows'][number] | undefined, { ofRow, rowCalled, ofPiece, walk: how }: Pick<Target, 'ofRow' | 'rowCalled' | 'ofPiece' | 'walk'>): boolean {
  if (!row || how === 'edge' && ofPiece !== undefined && row.piece !== ofPiece.toLowerCase()) return false
  if (rowCalled === undefined) return row.number === ofRow
  if (rowCalled === '') return true
  if (/^(?:last|final|top) row$/.test(rowCalled)) return walk.outline!.stretches.some(({ edge, rows }) => edge === 'top' && rows[0] === row)
  // `end of joining row`, `the row-end of Closing row`: of the piece of that name.
  return row.called === rowCalled || row.piece === rowCalled || `${row.piece} row` === rowCalled || rowCalled === 'first row' && row.number === 1
}

/** Whether a place is a row-end of the row that is named. */
export const isEndOf = (walk: Walk, place: Walk['edge'][number], row: NonNullable<Target['upTo']>): boolean => place.kind === 'row-end' && isRowMeant(walk, rowAt(walk.outline, place), { ...row, walk: 'edge' })

/** A row as a target names it: `row 4`, `the hem row`. */
export const rowNamed = ({ ofRow, rowCalled, ofPiece }: NonNullable<Target['upTo']>): string => `${rowCalled === undefined ? `row ${ofRow}` : rowCalled === '' ? 'a row' : `the ${rowCalled}`}${ofPiece === undefined ? '' : ` of ${ofPiece}`}`

/** On an outline the first chain, row-end or stitch is the one that comes next, wherever the hook stands; of the edge that the row began with it is where the row began. */
export function firstOnOutline(walk: Walk, { thing }: Target): boolean {
  const next = walk.edge[walk.at]
  if (!walk.outline || next === undefined) return walk.outline !== undefined && (thing?.kind === 'chain' || thing?.kind === 'row-end')
  return thing?.kind === 'chain' || thing?.kind === 'row-end' || next.kind === 'row-end' || walk.outline.stretchOf.get(next) !== walk.outline.stretchOf.get(walk.edge[0]!)
}
