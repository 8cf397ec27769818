import { mkdir, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import type { Booklet } from '../booklet/booklet.ts'
import { paperPath } from '../components/paper-path.ts'
import { printPattern } from '../print/print-pattern.ts'

/** A printed pattern as it was written. */
export interface Paper {
  readonly slug: string
  /** Below the folder that it was written to. */
  readonly path: string
  readonly bytes: number
  readonly pages: number
}

/** Prints every booklet into a folder, each below the address of its page. */
export async function writePapers(booklets: readonly Booklet[], folder: string): Promise<readonly Paper[]> {
  const papers: Paper[] = []
  for (const booklet of booklets) {
    const path = paperPath(booklet)
    const pdf = await printPattern(booklet)
    await mkdir(dirname(join(folder, path)), { recursive: true })
    await writeFile(join(folder, path), pdf)
    papers.push({ slug: booklet.slug, path, bytes: pdf.length, pages: pagesOf(pdf) })
  }
  return papers
}

/** Every page of a PDF is an object of the type Page (ISO 32000-1, 7.7.3.3); PDFKit writes these objects uncompressed. */
function pagesOf(pdf: Uint8Array): number {
  return Buffer.from(pdf).toString('latin1').match(/\/Type \/Page\b/g)?.length ?? 0
}
