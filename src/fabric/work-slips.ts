import { inSize, type Work } from '../notation/syntax.ts'
import { placesOf } from './places-of.ts'
import { begin } from './work-start.ts'
import type { Walk } from './walk.ts'
import type { Rest } from './work-items.ts'

/**
 * Slip stitches among other stitches. At a row's start they carry the yarn inwards; on a round they move its start; else they are
 * stitches like others until the row's end shows that nothing follows them.
 */
export function workSlips(walk: Walk, item: Work, rest: Rest): void {
  if (walk.setting.slipsFasten || walk.begun) return stitch(walk, item, rest)
  if (walk.round) return moveStart(walk, item, rest)
  placesOf(walk, targetOf(walk, item), item, rest, (index) => {
    walk.make({ kind: 'sl st', into: walk.place(index), travel: true })
    walk.travelled += 1
  })
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
  placesOf(walk, targetOf(walk, item), item, rest, (index) => { reached = index })
  if (reached < 0 || reached >= walk.end) return
  begin(walk, reached)
}
