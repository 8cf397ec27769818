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

/** A pattern's booklets in its own terms and, where there are such, in the other terms; each says that it is printed in both. */
export function bookletsInBothTerms(checked: CheckedPattern): { readonly own: TermsBooklets; readonly other?: TermsBooklets } {
  const terms = checked.pattern?.terms ?? 'US'
  const own: TermsBooklets = { terms, booklet: makeBooklet(checked), inSize: (size) => bookletInSize(checked, size) }
  const other = bookletsInTerms(checked, terms === 'US' ? 'UK' : 'US')
  return other ? { own: alsoIn(own, other.terms), other: alsoIn(other, terms) } : { own }
}

function alsoIn({ terms, booklet, inSize }: TermsBooklets, other: Terms): TermsBooklets {
  return { terms, booklet: { ...booklet, alsoIn: other }, inSize: (size) => ({ ...inSize(size), alsoIn: other }) }
}
