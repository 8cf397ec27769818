import type { Work } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import { isStitch } from './place.ts'
import { placesOf } from './places-of.ts'
import { begin } from './work-start.ts'
import type { Walk } from './walk.ts'
import type { Rest } from './work-items.ts'

/**
 * Slip stitches among other stitches. At a row's start they carry the yarn inwards; on a round they move its start; else they are
 * stitches like others until the row's end shows that nothing follows them.
 */
export function workSlips(walk: Walk, item: Work, rest: Rest): void {
  if (closesSpiral(walk, rest)) return
  if (walk.setting.slipsFasten || walk.begun) return stitch(walk, item, rest)
  if (walk.round) return moveStart(walk, item, rest)
  placesOf(walk, targetOf(walk, item), item, rest, (index) => {
    walk.make({ kind: 'sl st', into: walk.place(index), travel: true })
    walk.travelled += 1
  })
}

/** `Sc in each st around, sl st in next 2 sts.` In a spiral that was worked to its end they go into its own first stitches, to end it evenly. */
function closesSpiral(walk: Walk, rest: Rest): boolean {
  return walk.round && walk.begun && walk.left === 0 && !rest.quiet && !walk.outline && walk.edge.length > 0 && rest.items.every(({ node }) => node === 'aside' || node === 'turn' || node === 'join')
}

function targetOf(walk: Walk, item: Work): NonNullable<Work['target']> {
  if (item.target) return item.target
  const count = item.count ? inSize(item.count, walk.setting.size) : 1
  return { walk: 'next', count: { values: [count], start: item.start, end: item.end }, start: item.start, end: item.end }
}

function stitch(walk: Walk, item: Work, rest: Rest): void {
  placesOf(walk, targetOf(walk, item), item, rest, (index) => {
    walk.make({ kind: 'sl st', into: walk.place(index), ...(walk.setting.slipsFasten && { travel: true }), ...(rest.group !== undefined && { group: rest.group }) })
  })
}

/** The round now begins at the place of the last slip stitch; the places before it wait at the round's end. */
function moveStart(walk: Walk, item: Work, rest: Rest): void {
  let reached = -1
  if (onFromTheJoin(walk, item)) walk.at = 1
  placesOf(walk, targetOf(walk, item), item, rest, (index) => { reached = index })
  if (reached < 0 || reached >= walk.end) return
  begin(walk, reached)
}

/** The round below was joined in its first stitch: `ss in next dc` goes into that one once more, or into the one after it, which shows at the corners. */
function onFromTheJoin(walk: Walk, { target }: Work): boolean {
  const [first, second] = walk.edge
  if (walk.outline || walk.at > 0 || target?.walk !== 'next' || target.thing?.kind !== 'stitch' || !first || !second || !isStitch(first) || !isStitch(second)) return false
  return walk.choose('on-from-the-join', ['the slip stitches begin in the stitch of the join', 'the slip stitches begin in the stitch after the join']) === 1
}
