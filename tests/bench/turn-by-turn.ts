/** What a run of the bench found: one figure as a multiple of another. */
export interface Ratio {
  readonly name: string
  readonly ratio: number
  readonly detail: string
}

/** The value in the middle. */
export const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN

/** Milliseconds that a piece of work takes. */
export function milliseconds(work: () => unknown): number {
  const start = performance.now()
  work()
  return performance.now() - start
}

/**
 * Does two pieces of work in turn, warm, and compares them turn by turn, so that a load that comes and goes weighs on both sides of
 * each quotient. Gives the median quotient and the median milliseconds of each.
 */
export function turnByTurn(ours: () => unknown, theirs: () => unknown, turns: number): { readonly ratio: number; readonly ours: number; readonly theirs: number } {
  for (let warm = 0; warm < turns; warm += 1) {
    ours()
    theirs()
  }
  const times = Array.from({ length: turns }, () => ({ ours: milliseconds(ours), theirs: milliseconds(theirs) }))
  return { ratio: median(times.map((turn) => turn.ours / turn.theirs)), ours: median(times.map((turn) => turn.ours)), theirs: median(times.map((turn) => turn.theirs)) }
}
