import type { Group, Work } from '../notation/syntax.ts'
import { inSize, type Target } from '../notation/target.ts'
import { sizeOfCorner } from './find-place.ts'
import { isStitch, type Place } from './place.ts'
import type { Walk } from './walk.ts'

/** `join yarn in the first of the 6 skipped sc`: of those that lie together where this one is, there must be as many as are told. */
export function compareOutOf(walk: Walk, { outOf, start, end }: Target, index: number): void {
  const place = walk.edge[index]
  if (!outOf || !place) return
  const what = place.kind === 'ch' ? 'chain' as const : 'stitch' as const
  const together = walk.held ? walk.edge : stretchLeft(walk, place)
  const there = together?.filter((one) => (what === 'chain' ? one.kind === 'ch' : isStitch(one) && one.kind !== 'ch')).length
  const says = inSize(outOf, walk.setting.size)
  if (there !== undefined && there !== says) walk.trouble({ kind: 'out-of-apart', span: { start, end }, says, there, what })
}

/** `3 sc in center sc of each 3-sc corner`: the corners must be of so many. It is told once. */
export function compareCornerSize(walk: Walk, { target, start, end }: Work | Group, place: Place): void {
  const says = target?.thing?.size
  const there = says === undefined ? undefined : sizeOfCorner(walk.edge, place)
  if (there === undefined || there === says || walk.troubles.some((trouble) => trouble.kind === 'out-of-apart' && trouble.span.start === start)) return
  walk.trouble({ kind: 'out-of-apart', span: { start, end }, says: says!, there, what: 'stitch' })
}

/** What lies together where a place is that a row has left: chains, or fewer stitches than their row has. */
function stretchLeft(walk: Walk, place: Place): readonly Place[] | undefined {
  const stretch = walk.outline?.stretchOf.get(place)
  if (!stretch || stretch.edge === 'row-ends') return undefined
  return stretch.edge === 'underside' || stretch.places.length < stretch.rows[0]!.places.length ? stretch.places : undefined
}
