import type { Target } from '../notation/target.ts'
import type { Walk } from './walk.ts'
import type { Rest } from './work-items.ts'

/**
 * `*(Sc, ch 1, sc) in ch-1 sp, …` right after the join: the stitches before that space are worked at the round's end, or passed. So is the stitch of
 * the join where the round is turned and goes into the space beside it: `turn. Rnd 2: 3 sc in first ch-2 sp`.
 */
export function startsAtSpace(walk: Walk, { thing }: Target, to: number, rest: Rest): boolean {
  if (!walk.round || walk.outline || walk.last >= 0 || walk.at > 0 || to === 0 || to >= walk.end || thing?.kind !== 'space') return false
  // Only a repeat that goes from space to space leads round to the stitches before the first one.
  const goesRound = rest.quiet && rest.items.some((item) => item.node === 'work' && item.target?.until !== undefined)
  if (!goesRound && !(walk.turnedRound && to === 1)) return false
  if (walk.choose('start-at-space', ['stitches before the first space are passed over', 'stitches before the first space are worked at the round\'s end']) === 0) return false
  walk.edge = [...walk.edge.slice(to), ...walk.edge.slice(0, to)]
  walk.noneFrom.clear()
  return true
}
