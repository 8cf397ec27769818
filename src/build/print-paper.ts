import type { TermsBooklets } from '../booklet/booklet-in-terms.ts'
import type { Booklet } from '../booklet/booklet.ts'
import type { Edition, PaperPlace } from '../components/paper-path.ts'
import { printChecklist, printLargePrint, printPattern } from '../print/print-pattern.ts'

/** What papers are printed from: the pattern's booklet and that of each of its sizes, in its own terms and, where it has them, in the others. */
export interface ToPrint {
  readonly booklet: Booklet
  readonly inSize: (size: number) => Booklet
  readonly other?: TermsBooklets
}

/** The booklet that a paper is printed from. */
export function bookletFor({ booklet, inSize, other }: ToPrint, { terms, size }: PaperPlace): Booklet {
  const inTerms = other !== undefined && other.terms === terms ? other : { booklet, inSize }
  return size === undefined ? inTerms.booklet : inTerms.inSize(size)
}

/** Prints a booklet as one of its editions. */
export function printEdition(booklet: Booklet, edition: Edition): Promise<Uint8Array> {
  if (edition === 'checklist') return printChecklist(booklet)
  return edition === 'pattern' ? printPattern(booklet) : printLargePrint(booklet)
}
