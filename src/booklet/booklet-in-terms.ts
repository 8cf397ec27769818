import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import type { Terms } from '../pattern/pattern.ts'
import { patternInTerms } from '../pattern/terms/pattern-in-terms.ts'
import { bookletInSize } from './booklet-in-size.ts'
import type { Booklet } from './booklet.ts'
import { makeBooklet } from './make-booklet.ts'

/** A pattern's booklets in one kind of terms: of the whole pattern, and of each of its sizes (from 0). */
export interface TermsBooklets {
  readonly terms: Terms
  readonly booklet: Booklet
  readonly inSize: (size: number) => Booklet
}

/**
 * What a pattern says in print in the given terms. Parts, rows and their names (`RowLine.id`) are the same in both terms; words differ.
 * Undefined for terms in which the pattern's rows, read again, do not come to the same counts.
 */
export function bookletsInTerms(checked: CheckedPattern, terms: Terms): TermsBooklets | undefined {
  const turned = patternInTerms(checked, terms)
  return turned && { terms, booklet: makeBooklet(turned), inSize: (size) => bookletInSize(turned, size) }
}
