import { bookletInSize } from '../booklet/booklet-in-size.ts'
import { bookletsInBothTerms, type TermsBooklets } from '../booklet/booklet-in-terms.ts'
import type { Booklet } from '../booklet/booklet.ts'
import { ledgerOf, type LedgerPiece } from '../booklet/ledger.ts'
import { makeBooklet } from '../booklet/make-booklet.ts'
import type { Accepted, Listing } from '../components/pattern-entry.ts'
import { severityOf } from '../diagnostics/codes.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import type { Pattern } from '../pattern/pattern.ts'
import { slugOf } from '../pattern/slug.ts'
import { placeOf, type Source } from '../text/source.ts'
import { checkBytes } from './check-bytes.ts'
import type { FileBytes } from './read-files.ts'

/** One pattern file, worked through to its booklet. */
export interface Collected {
  readonly source: Source
  readonly slug: string
  readonly diagnostics: readonly Diagnostic[]
  /** Left out when there is nothing to put in print: the file could not be read as a pattern. */
  readonly booklet?: Booklet
  /** The booklet of one size, by its place among the sizes. */
  readonly inSize: (size: number) => Booklet
  /** The same in the other terms; left out when the pattern does not come out yet, or not in those terms. */
  readonly other?: TermsBooklets
  readonly listing: Listing
  /** Every row as it was worked, made when it is asked for. */
  readonly ledger: () => readonly LedgerPiece[]
  /** Warnings that the designer lets stand. */
  readonly accepted: readonly Accepted[]
  readonly sold: boolean
}

/** Works one pattern file. */
export function collectPattern(file: FileBytes): Collected {
  const checked = checkBytes(file)
  const { source, pattern, diagnostics } = checked
  const what = { source, diagnostics, slug: slugOf(file.path), sold: pattern?.access === 'sold', listing: listingOf(pattern), ledger: () => ledgerOf(checked), accepted: acceptedIn(checked) }
  if (pattern && hindrances(diagnostics).length === 0) {
    const { own, other } = bookletsInBothTerms(checked)
    return { ...what, booklet: own.booklet, inSize: own.inSize, ...(other ? { other } : {}) }
  }
  const booklet = pattern && unfinishedBooklet(checked)
  return { ...what, inSize: (size) => bookletInSize(checked, size), ...(booklet ? { booklet } : {}) }
}

function acceptedIn({ source, accepted = [] }: CheckedPattern): readonly Accepted[] {
  return accepted.map(({ diagnostic: { code, message, primary }, why }) => ({ code, message, why, line: placeOf(source, primary.span.start).line }))
}

/** What keeps a pattern out of the published site: every error, and every key that a published pattern needs and this one lacks. */
export function hindrances(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  return diagnostics.filter(({ code }) => severityOf(code) === 'error' || code === 'key-missing-to-publish')
}

function listingOf(pattern: Pattern | undefined): Listing {
  const { level, madeFor, materials, changes = [] } = pattern ?? {}
  return {
    ...(level === undefined ? {} : { level }), ...(madeFor === undefined ? {} : { madeFor }),
    weights: [...new Set(materials?.yarns.flatMap(({ weight }) => weight ?? []) ?? [])], changes,
  }
}

/** A pattern that does not come out may have gaps that no booklet expects. While it is being written, show what there is. */
function unfinishedBooklet(checked: CheckedPattern): Booklet | undefined {
  try {
    return makeBooklet(checked)
  } catch {
    return undefined
  }
}
