import { collectPattern, type Collected } from './collect-patterns.ts'
import type { ToPrint } from './print-paper.ts'
import type { WorkedPattern } from './work-pattern.ts'
import { writePapers, type Paper } from './write-papers.ts'
import { writePictures } from './write-pictures.ts'

/** Prints the papers of patterns and draws their pictures for links: of free ones into the site, of those that are sold into the folder of what is sold. */
export async function makePapers({ free, sold }: { readonly free: readonly WorkedPattern[]; readonly sold: readonly WorkedPattern[] }, site: string, release: string): Promise<readonly Paper[]> {
  const papers = await writePapers(free.flatMap(toPrint), site)
  await writePictures([...free, ...sold].flatMap(({ full }) => full.card ?? []), site)
  await writePapers(sold.flatMap(toPrint), release)
  return papers
}

/** A pattern with sizes is worked again for papers of one size, so that their booklets need not be kept for all patterns until then. */
function toPrint({ file, full: { booklet, other } }: WorkedPattern): readonly ToPrint[] {
  let again: Collected | undefined
  const collected = () => (again ??= collectPattern(file))
  const inSize = (of: (collected: Collected) => Pick<ToPrint, 'inSize'> | undefined) => (size: number) => {
    const made = of(collected())
    if (!made) throw new Error(`${file.path} came out otherwise when it was worked again: this is our mistake`)
    return made.inSize(size)
  }
  return booklet ? [{ booklet, inSize: inSize((one) => one), ...(other ? { other: { terms: other.terms, booklet: other, inSize: inSize((one) => one.other) } } : {}) }] : []
}
