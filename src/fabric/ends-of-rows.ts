import { inSize, type Target } from '../notation/syntax.ts'
import type { Span } from '../text/span.ts'
import { rowAt } from './along-outline.ts'
import type { Walk } from './walk.ts'

/** `in each of the 6 row-ends of Rows 7 to 12`: the ends that are worked are those of these rows, whichever of them is named first. */
export function heldToRows(walk: Walk, { ofRows }: Target, span: Span, from: number): void {
  if (!ofRows || walk.overrun) return
  const [first, last] = [inSize(ofRows.first, walk.setting.size), inSize(ofRows.last, walk.setting.size)]
  const ends = walk.edge.slice(from, walk.at).filter((place) => place.kind === 'row-end' && walk.taken.has(place))
  const numbers = ends.map((place) => rowAt(walk, place)?.number)
  // Rows without a number are not told from one another.
  if (numbers.includes(undefined)) return
  const meant = numbers.length === Math.abs(last - first) + 1 && new Set([...numbers, first, last]).size === numbers.length && numbers.every((number) => number! >= Math.min(first, last) && number! <= Math.max(first, last))
  if (!meant) walk.trouble({ kind: 'no-such-place', span, what: `the ends of rows ${first} to ${last}` })
}
