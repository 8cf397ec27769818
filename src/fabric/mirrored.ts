import type { Instruction } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import type { Edge } from './place.ts'
import type { Lies } from './lies-on.ts'
import type { RowTry } from './work-row.ts'

/**
 * `As for Left Front, reversing shaping`: what the copied row does at its start is done at its end. It is worked over the edge from the
 * other end, and what it makes is laid the other way round again.
 */
export function mirroredEdge(edge: Edge): Edge {
  return { ...edge, places: edge.places.toReversed() }
}

/** Whether a row is shaped nowhere: it takes all that it is worked on, in one stitch and told without a number, and there is nothing in it to reverse. */
export function isEven(items: readonly Instruction[]): boolean {
  const stitches = new Set(items.flatMap((item) => (item.node === 'work' ? [item.stitch] : [])))
  return stitches.size < 2 && items.every((item) => item.node === 'chain' || item.node === 'turn' || item.node === 'aside'
    || item.node === 'skip' && item.from === 'first' && inSize(item.count, 0) === 1
    || item.node === 'work' && !item.count && !item.target?.keepBack && (item.target?.count === undefined || item.target.walk === 'from-hook' || inSize(item.target.count, 0) === 1) && !/tog$|^(?:inc|dec|sl st)$/.test(item.stitch))
}

/** A row that was worked over a mirrored edge, as it really lies. */
export function mirroredBack(tried: RowTry): RowTry {
  return {
    ...tried,
    next: mirroredEdge(tried.next),
    row: { ...tried.row, made: tried.row.made.toReversed() },
    lies: mirroredLies(tried.lies),
  }
}

function mirroredLies({ over, steps, places, startChains, endChains, foundation }: Lies): Lies {
  return {
    ...(steps && { steps: { start: steps.end, end: steps.start } }),
    ...(over && { over: { first: over.last, second: over.beforeLast, last: over.first, beforeLast: over.second } }),
    places: places.toReversed(), startChains: endChains.toReversed(), endChains: startChains.toReversed(), foundation,
  }
}
