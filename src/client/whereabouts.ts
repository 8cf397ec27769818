import type { Progress } from './progress.ts'
import { boxesIn, keyFor, type Box, type Part } from './rows-on-page.ts'

/** Where somebody is: a piece, a copy of it, the boxes to be ticked in it, and the one that is next. */
export interface Whereabouts {
  readonly part: Part
  readonly copy: number
  /** Those that the chosen size works. */
  readonly boxes: readonly Box[]
  readonly done: number
  /** The first box that is not ticked; undefined when the piece is done. */
  readonly here?: Box
  /** Stitches worked and stitches in all; undefined where a row was not counted. */
  readonly stitches?: { readonly done: number; readonly all: number }
}

/** Where the progress stands: in the piece that was worked last, or the next one when that is done. */
export function whereabouts(parts: readonly Part[], progress: Progress, size: number): Whereabouts | undefined {
  const turns = parts.flatMap((part) => Array.from({ length: part.copies }, (_, at) => ({ part, copy: at + 1 })))
  const at = Math.max(0, turns.findIndex(({ part, copy }) => part.id === progress.part && copy === (progress.copy ?? 1)))
  const turn = turns[at]
  return turn && standing(turn.part, turn.copy, progress, size)
}

/** A copy of a piece and how much of it is done. */
export function standing(part: Part, copy: number, progress: Progress, size: number): Whereabouts {
  const boxes = boxesIn(part, size)
  const isDone = (box: Box) => keyFor(box, copy) in progress.ticks
  const here = boxes.find((box) => !isDone(box))
  // While no size is chosen the figures are those of the first; a row that it leaves out adds nothing to them.
  const counts = boxes.map((box) => ({ count: box.stitches[Math.max(0, size)], ticked: isDone(box) }))
  const sum = (of: typeof counts) => of.reduce((total, { count }) => total + (count ?? 0), 0)
  const counted = counts.every(({ count }) => count !== undefined)
  return {
    part, copy, boxes, done: counts.filter(({ ticked }) => ticked).length,
    ...(here ? { here } : {}),
    ...(counted ? { stitches: { done: sum(counts.filter(({ ticked }) => ticked)), all: sum(counts) } } : {}),
  }
}

/** The copy of a piece that comes after: the first one with something to do, in the order of the pattern; undefined when all is done. */
export function nextTurn(parts: readonly Part[], progress: Progress, size: number): Whereabouts | undefined {
  return parts.flatMap((part) => Array.from({ length: part.copies }, (_, at) => standing(part, at + 1, progress, size))).find(({ here }) => here)
}
