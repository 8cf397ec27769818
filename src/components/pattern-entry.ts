import type { Booklet } from '../booklet/booklet.ts'

/** One pattern as its page gets it. */
export interface PatternEntry {
  readonly slug: string
  /** Left out when the file could not be read as a pattern; this happens only while it is being written. */
  readonly booklet?: Booklet
  /** A pattern that is sold: its rows never reach the public site. */
  readonly sold: boolean
  /** What is to be looked at. Empty in a published site. */
  readonly remarks: readonly Remark[]
}

/** One diagnostic as a page shows it. */
export interface Remark {
  readonly code: string
  readonly severity: 'error' | 'warning'
  readonly message: string
  /** `patterns/skiff.md:33:71` */
  readonly place: string
  /** The source's own lines with what is to be said of them, the tally, note and hint: text of one width. */
  readonly report: string
}
