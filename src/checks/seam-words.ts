import type { Label } from '../diagnostics/diagnostic.ts'

/** What is told of a seam whose edges do not match. */
export interface SeamWords {
  readonly message: string
  /** Beside the place. */
  readonly short: string
  readonly note?: string
  /** Where the two edges are written, when it is not the totals of the last rows. */
  readonly edges?: readonly Label[]
  /** The longer edge is meant to be eased in. */
  readonly eased?: boolean
  /** As many stitches, but in other places. */
  readonly corners?: boolean
}
