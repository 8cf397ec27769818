import { cardOf, type Card } from '../components/card.ts'
import type { PatternEntry, Remark } from '../components/pattern-entry.ts'
import type { Collected } from './collect-patterns.ts'
import { rowDigests } from './row-digests.ts'
import { withoutRows } from './without-rows.ts'

/** A pattern with its rows, for the site when it is free, and for the folder of what is sold. */
export function fullEntry(collected: Collected, remarks: readonly Remark[]): PatternEntry {
  const { slug, sold, booklet, other, listing, ledger, accepted } = collected
  return {
    slug, sold, remarks, listing, digests: booklet ? rowDigests(booklet) : {}, ledger: booklet ? ledger() : [], accepted,
    ...cardIn(collected), ...(booklet ? { booklet } : {}), ...(other ? { other: other.booklet } : {}),
  }
}

/** What the public site may know of a pattern that is sold: nothing of its rows, in any terms. */
export function listedEntry(collected: Collected, remarks: readonly Remark[]): PatternEntry {
  const { slug, sold, booklet, listing } = collected
  return { slug, sold, remarks, listing, digests: {}, ledger: [], ...cardIn(collected), ...(booklet ? { booklet: withoutRows(booklet) } : {}) }
}

/** The card of a pattern; none where it has no booklet. */
function cardIn({ booklet, sold, listing }: Collected): { readonly card?: Card } {
  return booklet ? { card: cardOf(sold ? withoutRows(booklet) : booklet, sold, listing) } : {}
}
