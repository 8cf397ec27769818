import { getDocument, OPS, VerbosityLevel, type PDFDocumentProxy, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { pageObjects, readPdfObjects } from './pdf-objects.ts'

/** Opens a PDF with a reader that has nothing to do with the writer. */
export function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  return getDocument({ data: new Uint8Array(bytes), verbosity: VerbosityLevel.ERRORS, useSystemFonts: false, disableFontFace: true }).promise
}

/** Each page of a document. */
export async function pagesOf(pdf: PDFDocumentProxy): Promise<readonly PDFPageProxy[]> {
  return Promise.all(Array.from({ length: pdf.numPages }, (_, index) => pdf.getPage(index + 1)))
}

/** The words of a page in the order in which they stand in the file. */
export async function textOf(page: PDFPageProxy): Promise<string> {
  const { items } = await page.getTextContent()
  return items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : '')).join('').replace(/\s+/g, ' ')
}

/** An operator of a content stream with what it is given. */
export interface Operator {
  readonly name: string
  readonly given: readonly unknown[]
}

const names = Object.fromEntries(Object.entries(OPS).map(([name, code]) => [code, name]))

/** The operators of a page's content, annotations left out. */
export async function operatorsOf(page: PDFPageProxy): Promise<readonly Operator[]> {
  const { fnArray, argsArray } = await page.getOperatorList({ annotationMode: 0 })
  return fnArray.map((code, at) => ({ name: names[code] ?? String(code), given: (argsArray[at] as unknown[] | null) ?? [] }))
}

/** A node of the structure tree as the reader gives it. */
export interface StructureNode {
  readonly role?: string
  readonly type?: string
  readonly id?: string
  readonly alt?: string
  readonly children?: readonly StructureNode[]
}

/** The content streams of the pages as they are written, in page order: everything in them is one token or another. */
export function contentStreams(bytes: Uint8Array): readonly string[] {
  const file = readPdfObjects(bytes)
  return pageObjects(file).map(({ dict }) => Buffer.from(file.dictAt(dict.dict.get('Contents'))?.stream ?? []).toString('latin1'))
}

/** The operators of a content stream, with names, numbers, strings and dictionaries before each left out. */
export function operatorNames(content: string): readonly string[] {
  const bare = content.replace(/<<[^]*?>>/g, ' ').replace(/<[0-9A-Fa-f]*>/g, ' ').replace(/\[[^\]]*\]/g, ' ').replace(/\/\S+/g, ' ')
  return bare.split(/\s+/).filter((token) => token !== '' && !/^[+-]?[\d.]+$/.test(token))
}
