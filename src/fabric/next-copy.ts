import type { Target } from '../notation/target.ts'
import { leaveLeg } from './over-pieces.ts'
import { findNext } from './find-place.ts'
import type { Walk } from './walk.ts'

/**
 * `dc in the underside of each of the 13 ch of first Flag, 6 ch, dc in the underside of each of the 13 ch of second Flag`: where a piece is made several times, a
 * flat row that has worked all of an underside and asks for as much again goes on to the next of them.
 */
export function toNextCopy(walk: Walk, target: Target, count: number): boolean {
  const { thing, edge } = target
  const { copies = 1 } = walk.setting
  if (beginsAgain(walk, target, copies)) return true
  const stretch = walk.last >= 0 ? walk.outline?.stretchOf.get(walk.edge[walk.last]!) : undefined
  if (copies < 2 || walk.round || edge !== 'underside' || thing?.kind !== 'chain' || stretch?.edge !== 'underside' || stretch.places.length !== count || !stretch.places.every((place) => walk.taken.has(place))) return false
  const worked = new Set(stretch.places)
  if (walk.made.filter(({ into }) => into !== undefined && worked.has(into)).length >= copies * count) return false
  for (const place of stretch.places) walk.taken.delete(place)
  const from = walk.edge.indexOf(stretch.places[0]!)
  leaveLeg(walk, from)
  walk.at = from
  return true
}

/**
 * `sc in the row-end of the edging, sc in the underside of each of the 12 ch of first Flag, sc in the row-end of the edging, ch 3, sc in the
 * row-end of the edging`: no row-end is left of this copy, and the row begins on the next as it began on the first.
 */
function beginsAgain(walk: Walk, { thing }: Target, copies: number): boolean {
  const [first] = walk.taken.keys()
  if (copies < 2 || walk.round || thing?.kind !== 'row-end' || first?.kind !== 'row-end' || !alongUnderside(walk) || findNext(walk, walk.at, thing) < walk.edge.length) return false
  if (walk.made.filter(({ into }) => into === first).length >= copies) return false
  walk.taken.clear()
  const from = walk.edge.indexOf(first)
  leaveLeg(walk, from)
  walk.at = from
  return true
}

const alongUnderside = (walk: Walk): boolean => [...walk.taken.keys()].some((place) => walk.outline?.stretchOf.get(place)?.edge === 'underside')
