import type { Target } from '../notation/target.ts'
import type { Walk } from './walk.ts'

/**
 * `dc in the underside of each of the 13 ch of first Flag, 6 ch, dc in the underside of each of the 13 ch of second Flag`: where a piece is made several times, a
 * flat row that has worked all of an underside and asks for as much again goes on to the next of them.
 */
export function toNextCopy(walk: Walk, { thing, edge }: Target, count: number): boolean {
  const { copies = 1 } = walk.setting
  const stretch = walk.last >= 0 ? walk.outline?.stretchOf.get(walk.edge[walk.last]!) : undefined
  if (copies < 2 || walk.round || edge !== 'underside' || thing?.kind !== 'chain' || stretch?.edge !== 'underside' || stretch.places.length !== count || !stretch.places.every((place) => walk.taken.has(place))) return false
  const worked = new Set(stretch.places)
  if (walk.made.filter(({ into }) => into !== undefined && worked.has(into)).length >= copies * count) return false
  for (const place of stretch.places) walk.taken.delete(place)
  walk.at = walk.edge.indexOf(stretch.places[0]!)
  return true
}
