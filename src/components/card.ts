import type { Booklet } from '../booklet/booklet.ts'
import { linkedPapers, type PaperLink } from './paper-path.ts'
import type { Listing } from './pattern-entry.ts'
import { filedUnder, type FiledUnder } from './shelf-filters.ts'
import { rowsIn, shelfLine, type ShelfLine } from './shelf-line.ts'
import { shelfPiece, type ShelfPiece } from './shelf-pieces.ts'

/** What the shelf, the feed and the other pages know of a pattern: little enough to be kept from one build to the next. */
export interface Card {
  readonly slug: string
  readonly title: string
  readonly number?: number
  readonly publisher: string
  readonly sold: boolean
  readonly terms: Booklet['terms']
  /** The other terms, where there is a page in them. */
  readonly alsoIn?: Booklet['terms']
  readonly date: string
  readonly listing: Listing
  readonly line: ShelfLine
  readonly filed: FiledUnder
  readonly piece?: ShelfPiece
  /** None for a pattern that is sold. */
  readonly papers: readonly PaperLink[]
  /** Real rows, and how many of them could not be counted. */
  readonly rows: number
  readonly uncounted: number
}

/** The card of a pattern. For one that is sold the booklet must be the one without rows. */
export function cardOf(booklet: Booklet, sold: boolean, listing: Listing): Card {
  const { slug, title, number, publisher, terms, alsoIn, date } = booklet
  const piece = shelfPiece(booklet)
  return {
    slug, title, publisher, sold, terms, date, listing, line: shelfLine(booklet), filed: filedUnder(listing), papers: sold ? [] : linkedPapers(booklet), ...rowsIn(booklet),
    ...(alsoIn === undefined || sold ? {} : { alsoIn }), ...(number === undefined ? {} : { number }), ...(piece ? { piece } : {}),
  }
}
