import type { ClosedInPart } from '../notation/closed-in-part.ts'
import type { Sewn } from '../notation/sewn.ts'
import { inSize } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import type { WrittenEntry } from './real-rows.ts'
import { isStitch } from './place.ts'
import type { Walk } from './walk.ts'

/** Edges that are sewn to one another have as many places; what stays free of a piece is what its last row has beyond them. */
export function compareSewn(walk: Walk, { one, other, piece, ends = 1, free }: Sewn, span: Span): void {
  const { size, pieces } = walk.setting
  const [here, there] = [inSize(one, size), inSize(other, size)]
  if (here !== there) return walk.trouble({ kind: 'sewn-apart', span, one: here, other: there })
  const edge = piece === undefined ? undefined : pieces.get(piece.toLowerCase())
  if (!free || !edge?.sound) return
  const has = edge.places.filter(isStitch).length
  const left = inSize(free, size)
  // `the 9 sts of each shoulder to the 9 sts at the outer end`: both ends of the piece are meant.
  const sums = [ends * there + left, 2 * there + left]
  if (!sums.includes(has)) walk.trouble({ kind: 'sewn-apart', span, one: sums[0]!, other: has })
}

/** Where it is told what is closed and what stays open, the two are the whole side: as many row-ends as there are rows. */
export function compareClosed(walk: Walk, { portions }: ClosedInPart, span: Span): void {
  const { size, rowsOnSide } = walk.setting
  const told = portions.reduce((sum, { count }) => sum + inSize(count, size), 0)
  const whole = portions.some(({ open }) => open) && portions.some(({ open }) => !open)
  if (rowsOnSide === undefined || rowsOnSide === told || !whole && told < rowsOnSide) return
  walk.trouble({ kind: 'sewn-apart', span, one: told, other: rowsOnSide, along: true })
}

/** Whether the piece was sewn to others, in words, before this row: what it goes along then is no longer its own outline. */
export function sewnBefore(entries: readonly WrittenEntry[], entry: WrittenEntry): boolean {
  return entries.slice(0, entries.indexOf(entry) + 1).some(({ read }) => read.items.some((item) => item.node === 'aside' && (item.sewn ?? item.closed) !== undefined))
}
