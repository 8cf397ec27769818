import { isStitch } from './place.ts'
import type { Walk } from './walk.ts'
import type { Step } from './worked-row.ts'

/**
 * The row's arithmetic, step by step. Reckoned when the row is done: only then it is known whether the slip stitches at its ends count,
 * and how many stitches lie along an edge that is worked evenly.
 */
export function tallyOf({ steps, made }: Walk): readonly Step[] {
  let soFar = 0
  return steps.map(({ span, worksOver, times, from, to }) => {
    const makes = made.slice(from, to).filter((place) => isStitch(place) && !place.travel).length
    soFar += makes
    return { span, worksOver, makes, soFar, times }
  })
}

/** So many stitches more, or fewer, among those of the step that made the one at an index: the steps after it begin so much later. */
export function shiftSteps({ steps }: Walk, at: number, by: number): void {
  for (const [index, step] of steps.entries()) {
    if (step.to > at) steps[index] = { ...step, from: step.from > at ? step.from + by : step.from, to: step.to + by }
  }
}
