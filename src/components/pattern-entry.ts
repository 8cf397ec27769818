import type { Booklet } from '../booklet/booklet.ts'
import type { LedgerPiece } from '../booklet/ledger.ts'
import type { Card } from './card.ts'

/** One pattern as its pages get it. */
export interface PatternEntry {
  readonly slug: string
  /** Left out when the file could not be read as a pattern; this happens only while it is being written. */
  readonly card?: Card
  /** Left out with the card, and where only the card is kept. */
  readonly booklet?: Booklet
  /** The same in the other terms, where the pattern comes out in them. */
  readonly other?: Booklet
  /** Of each row, by its name: what it says, in the pattern's own terms, cut short. */
  readonly digests: Readonly<Record<string, string>>
  /** Every row as it was worked; empty where it is not shown. */
  readonly ledger: readonly LedgerPiece[]
  /** Warnings that the designer lets stand, with the reason: for the ledger. */
  readonly accepted?: readonly Accepted[]
  readonly listing: Listing
  /** A pattern that is sold: its rows never reach the public site. */
  readonly sold: boolean
  /** What is to be looked at. Empty in a published site. */
  readonly remarks: readonly Remark[]
}

/** What a pattern is sorted by on the shelf, and what came with its versions. */
export interface Listing {
  readonly level?: string
  readonly madeFor?: string
  /** Yarn weights, 0 to 7. */
  readonly weights: readonly number[]
  readonly changes: readonly { readonly version: string; readonly date: string; readonly what: string }[]
}

/** A warning that the designer lets stand. */
export interface Accepted {
  readonly code: string
  readonly message: string
  /** Line of the file. */
  readonly line: number
  readonly why: string
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
