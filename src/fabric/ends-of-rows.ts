import { inSize, type Target } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import { isEndOf, isOfRow, leftBefore, rowNamed } from './along-outline.ts'
import { isOnOutline, rowAt } from './border-edge.ts'
import type { WorkInto } from './places-of.ts'
import type { Place } from './place.ts'
import type { Walk } from './walk.ts'
import { begin } from './work-start.ts'

/** `in each of the 6 row-ends of Rows 7 to 12`: the ends that are worked are those of these rows, whichever of them is named first. */
export function heldToRows(walk: Walk, { ofRows, upTo }: Target, span: Span, from: number): void {
  if (walk.overrun) return
  if (upTo) endsWithRow(walk, upTo, span, from)
  if (!ofRows) return
  const [first, last] = [inSize(ofRows.first, walk.setting.size), inSize(ofRows.last, walk.setting.size)]
  const ends = walk.edge.slice(from, walk.at).filter((place) => place.kind === 'row-end' && walk.taken.has(place))
  const numbers = ends.map((place) => rowAt(walk.outline, place)?.number)
  // Rows without a number are not told from one another.
  if (numbers.includes(undefined)) return
  const meant = numbers.length === Math.abs(last - first) + 1 && new Set([...numbers, first, last]).size === numbers.length && numbers.every((number) => number! >= Math.min(first, last) && number! <= Math.max(first, last))
  if (!meant) walk.trouble({ kind: 'no-such-place', span, what: `the ends of rows ${first} to ${last}` })
}

/**
 * `in each of the 5 row-ends of Rows 14-10` at the other side of an opening that a seam left: what lies between is sewn, and so is what lies
 * behind. Only where the pattern tells of sewing.
 */
export function goToEndsOf(walk: Walk, { ofRows, thing }: Target): void {
  if (!ofRows || thing?.kind !== 'row-end' || !walk.outline || !walk.setting.sewn || walk.overrun) return
  const [first, last] = [inSize(ofRows.first, walk.setting.size), inSize(ofRows.last, walk.setting.size)].toSorted((a, b) => a - b)
  const isMeant = (place: Place | undefined): boolean => {
    const number = place?.kind === 'row-end' ? rowAt(walk.outline, place)?.number : undefined
    return number !== undefined && number >= first! && number <= last!
  }
  const next = walk.edge.findIndex((place, at) => at >= walk.at && place.kind === 'row-end')
  const meant = walk.edge.findIndex((place, at) => at >= walk.at && isMeant(place))
  if (walk.last < 0 || meant < 0 || next < 0 || isMeant(walk.edge[next])) return
  walk.at = meant
  walk.leaves = true
}

/** `in each of the 7 row-ends down to Row 1`: the last that is worked is that of this row, or lies next to it where the row has no end of this side. */
function endsWithRow(walk: Walk, upTo: NonNullable<Target['upTo']>, span: Span, from: number): void {
  const worked = walk.edge.slice(from, walk.at).filter((place) => place.kind === 'row-end' && walk.taken.has(place))
  const last = worked.at(-1)
  if (!last || rowAt(walk.outline, last)?.number === undefined || isEndOf(walk, last, upTo)) return
  const { places } = walk.outline!.stretchOf.get(last)!
  if (places.some((place) => isEndOf(walk, place, upTo))) walk.trouble({ kind: 'no-such-place', span, what: `the end of ${rowNamed(upTo)} there` })
}

/** `1 dc in the side of Row 1`: the next end of that row. Where a row that is joined anew begins there, it may be that of either side. */
export function intoEndOfRow(walk: Walk, target: Target, span: Span, work: WorkInto): void {
  const from = walk.at
  const ends = walk.edge.flatMap((place, at) => (at >= from && isOfRow(walk, place, target) ? [at] : []))
  const [next] = ends
  if (next === undefined) return walk.trouble({ kind: 'no-such-place', span, what: `the end of ${rowNamed(target)}` })
  const begins = ends.length === 2 && !walk.round && !walk.begun && walk.last < 0
  const index = begins && walk.choose('side-meant', ['the row begins at the first end of the row that it names', 'the row begins at the other end of the row that it names']) === 1 ? ends[1]! : next
  if (index !== next) begin(walk, index)
  leftBefore(walk, index, span)
  walk.take(index, span)
  work(index)
}

/** `next 9 row-ends of Left front, next 9 row-ends of Back`: those of either are told, and these are of the other. */
export function isOfAnother(walk: Walk, { sideOf }: Target, index: number): boolean {
  const place = walk.edge[index]
  const piece = sideOf === undefined || !place ? undefined : rowAt(walk.outline, place)?.piece
  const told = sideOf?.toLowerCase() ?? ''
  if (piece === undefined || piece === told) return false
  return walk.setting.sidesNamed.has(piece) && walk.setting.sidesNamed.has(told) || !walk.setting.copied && walk.setting.pieces.has(told) && !isOnOutline(walk.outline, told)
}

/** `next 3 row-ends of Yoke, next 6 row-ends of Left panel` where the yoke has 4 on this side: the last of them is passed, and that is told. */
export function pastAnother(walk: Walk, target: Target, index: number): number {
  const before = walk.edge[walk.at - 1]
  const stretch = before && walk.taken.has(before) ? walk.outline?.stretchOf.get(before) : undefined
  if (!stretch || !isOfAnother(walk, target, index)) return index
  const ahead = walk.edge.findIndex((place, at) => at > index && walk.outline?.stretchOf.get(place) === stretch && !isOfAnother(walk, target, at))
  return ahead < 0 ? index : ahead
}
