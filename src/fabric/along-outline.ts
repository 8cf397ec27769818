import type { Target } from '../notation/syntax.ts'
import type { Span } from '../text/span.ts'
import { findNext } from './find-place.ts'
import { isStitch } from './place.ts'
import type { WorkInto } from './places-of.ts'
import type { Walk } from './walk.ts'

/** At a step a border passes over the step's own height; more row-ends than that must be said. */
export function rowEndsPassed(walk: Walk, from: number, span: Span): void {
  if (!walk.outline) return
  let passed = 0
  let missed = 0
  for (let index = from; index < Math.min(walk.last, walk.edge.length); index += 1) {
    if (walk.edge[index]!.kind === 'row-end') passed += 1
    else if (isStitch(walk.edge[index]!)) missed += 1
  }
  if (missed > 0) {
    walk.missed += missed
    walk.trouble({ kind: 'left-over', span, count: missed })
  }
  if (passed > 2) walk.trouble({ kind: 'row-ends-passed', span, count: passed })
}

/** `60 sc evenly along 30 row-ends`: every place is passed, and the stitches are spread over them. */
export function evenly(walk: Walk, target: Target, span: Span, count: number, work: WorkInto): void {
  const many = target.walk === 'edge' ? sideAhead(walk) : count
  for (let place = 0; place < many; place += 1) walk.take(findNext(walk, walk.at, target.thing ?? { kind: 'row-end' }), span)
  work(walk.last)
}

/** Where this side ends: at the next corner. */
export function endOfSide(walk: Walk): number {
  let index = walk.at
  while (index < walk.edge.length && !walk.outline?.corners.has(walk.edge[index]!)) index += 1
  return index
}

/** Row-ends from here to the next corner. */
function sideAhead(walk: Walk): number {
  let index = walk.at
  while (walk.edge[index]?.kind === 'row-end') index += 1
  return index - walk.at
}
