import type { PatternEntry, Remark } from '../components/pattern-entry.ts'
import type { Collected } from './collect-patterns.ts'
import { rowDigests } from './row-digests.ts'
import { withoutRows } from './without-rows.ts'

/** A pattern with its rows, for the site when it is free, and for the folder of what is sold. */
export function fullEntry({ slug, sold, booklet, other, listing, ledger }: Collected, remarks: readonly Remark[]): PatternEntry {
  return {
    slug, sold, remarks, listing, digests: booklet ? rowDigests(booklet) : {}, ledger: booklet ? ledger() : [],
    ...(booklet ? { booklet } : {}), ...(other ? { other: other.booklet } : {}),
  }
}

/** What the public site may know of a pattern that is sold: nothing of its rows, in any terms. */
export function listedEntry({ slug, sold, booklet, listing }: Collected, remarks: readonly Remark[]): PatternEntry {
  return { slug, sold, remarks, listing, digests: {}, ledger: [], ...(booklet ? { booklet: withoutRows(booklet) } : {}) }
}
