import { mkdir, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import type { Booklet } from '../booklet/booklet.ts'
import { papersOf, type Edition, type PaperPlace } from '../components/paper-path.ts'
import { printChecklist, printLargePrint, printPattern } from '../print/print-pattern.ts'

/** A printed pattern as it was written. */
export interface Paper {
  readonly slug: string
  readonly edition: Edition
  /** Below the folder that it was written to. */
  readonly path: string
  readonly bytes: number
  readonly pages: number
}

/** What papers are printed from: the pattern's booklet, and that of each of its sizes. */
export interface ToPrint {
  readonly booklet: Booklet
  readonly inSize: (size: number) => Booklet
}

/** Prints every edition of every pattern into a folder, each below the address of its page. */
export async function writePapers(patterns: readonly ToPrint[], folder: string): Promise<readonly Paper[]> {
  const papers: Paper[] = []
  for (const pattern of patterns) {
    for (const place of papersOf(pattern.booklet)) {
      const { edition, path } = place
      const pdf = await printPaper(pattern, place)
      await mkdir(dirname(join(folder, path)), { recursive: true })
      await writeFile(join(folder, path), pdf)
      papers.push({ slug: pattern.booklet.slug, edition, path, bytes: pdf.length, pages: pagesOf(pdf) })
    }
  }
  return papers
}

/** Prints one of a pattern's papers. */
export function printPaper({ booklet, inSize }: ToPrint, { edition, size }: PaperPlace): Promise<Uint8Array> {
  if (edition === 'checklist') return printChecklist(booklet)
  return edition === 'pattern' ? printPattern(booklet) : printLargePrint(size === undefined ? booklet : inSize(size))
}

/** Every page of a PDF is an object of the type Page (ISO 32000-1, 7.7.3.3); PDFKit writes these objects uncompressed. */
function pagesOf(pdf: Uint8Array): number {
  return Buffer.from(pdf).toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0
}
