import type { Booklet } from '../booklet/booklet.ts'
import type { PatternEntry } from './pattern-entry.ts'

/** A pattern in one kind of terms, as a page shows it. */
export interface Edition {
  readonly booklet: Booklet
  /** The terms that the designer wrote in. */
  readonly written: Booklet['terms']
  readonly digests: PatternEntry['digests']
  readonly changes: PatternEntry['listing']['changes']
  /** Whether rows, papers and ledger belong to it. */
  readonly withRows: boolean
}

/** The editions of a pattern: in the terms that it was written in, and in the others where it comes out in them. */
export function editionsOf({ booklet, other, digests, sold, listing }: PatternEntry, release = false): readonly Edition[] {
  const withRows = !sold || release
  return [booklet, withRows ? other : undefined].flatMap((one) => (one && booklet ? [{ booklet: one, written: booklet.terms, digests, changes: listing.changes, withRows }] : []))
}
