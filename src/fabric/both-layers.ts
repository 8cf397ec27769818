import type { Work } from '../notation/syntax.ts'
import type { Walk } from './walk.ts'
import { begin, layLayers } from './work-start.ts'

/** `sc through both layers in each of next 15 row-ends`: what follows on an outline is worked in one layer again. */
export function throughBoth(walk: Walk, item: Work, work: () => void): void {
  const { pairs } = walk
  const before = walk.taken.size
  layLayers(walk, item)
  work()
  for (const place of [...walk.taken.keys()].slice(before)) walk.throughBoth.add(place)
  walk.pairs = pairs
}

/**
 * Row-ends in pairs, one of each layer. Where a side is folded, the pairs lie around the fold, so that so many of them take twice as many
 * row-ends that lie next to one another. `work` goes along those.
 */
export function inPairs(walk: Walk, pairs: number | undefined, work: () => void): void {
  const before = walk.made.length
  if (before === 0 && pairs !== undefined) beginAtFold(walk, 2 * pairs)
  work()
  walk.paired += walk.made.length - before
  walk.closes = walk.paired === walk.made.length
}

/** What is folded up is the end that the piece began with, up to where the pairs end; the last rows are left over, as a flap is. */
function beginAtFold(walk: Walk, ends: number): void {
  const side = walk.outline?.stretches.find(({ edge, places }) => edge === 'row-ends' && places.length >= ends && walk.edge.indexOf(places[0]!) >= walk.at)
  if (!side) return
  const down = side.places[0]!.row > side.places.at(-1)!.row
  begin(walk, walk.edge.indexOf(side.places[0]!) + (down ? side.places.length - ends : 0))
}
