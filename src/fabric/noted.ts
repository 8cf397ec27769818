import type { Span } from '../text/span.ts'
import type { Step } from './worked-row.ts'

/** A step of the tally while the row is worked: which of the stitches that the row made are its own, from one index to before another. */
export interface NotedStep extends Omit<Step, 'makes' | 'soFar'> {
  readonly from: number
  readonly to: number
}

/** What one reading decided, and how many ways there were. */
export interface ReadingPoint {
  readonly name: string
  readonly ways: number
  readonly taken: number
  /** What each way means, in words. */
  readonly words: readonly string[]
  /** The words of the row that can be read in these ways. */
  readonly span?: Span
}
