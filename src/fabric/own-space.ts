import { inSize, type Target } from '../notation/target.ts'
import { findNext, isThing } from './find-place.ts'
import type { Walk } from './walk.ts'
import type { Rest } from './work-items.ts'

/**
 * `Ch 14, sl st in same sc, turn, 20 sc in ch-14 sp`: a loop that this row made itself, and works round at once. What it makes stands in the
 * loop's stead, over the stitch from which that rises. Says whether it is meant.
 */
export function intoOwnSpace(walk: Walk, { thing, count }: Target, rest: Rest, work: () => void): boolean {
  if (rest.quiet || thing?.kind !== 'space' || !thing.chains || count || findNext(walk, walk.at, thing) < walk.edge.length) return false
  const made = walk.made.findLastIndex(({ kind }) => kind !== 'sl st')
  const space = walk.made[made]
  // A slip stitch has closed it.
  if (made === walk.made.length - 1 || space?.kind !== 'space' || space.group !== undefined || space.chains !== inSize(thing.chains, walk.setting.size)) return false
  walk.made.splice(made, walk.made.length - made)
  work()
  return true
}

/** `3 dc in first ch-2 sp` when the round has come round to it: the space in which it began. */
export function backAtFirst(walk: Walk, { thing }: Target, work: (index: number) => void): boolean {
  if (!walk.round || thing?.kind !== 'space' || walk.last < 0 || findNext(walk, walk.at, thing) < walk.end) return false
  const index = walk.edge.findIndex((place) => isThing(walk, place, thing))
  if (index < 0 || index >= walk.at) return false
  walk.last = index
  work(index)
  return true
}
