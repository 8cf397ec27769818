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
