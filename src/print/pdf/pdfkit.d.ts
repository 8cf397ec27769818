/**
 * The part of PDFKit that print uses. Types from elsewhere lag behind: they refuse `subset: 'PDF/UA'`. What begins with an
 * underscore is not public; accessible print cannot do without it, and the version is pinned for that reason.
 */
declare module 'pdfkit' {
  import type { Font } from 'fontkit'

  /** A value of PDF: a string is a name, a `String` object is text, a reference points to an object. */
  export type PdfValue =
    | string | String | number | boolean | null | Date | Uint8Array | Reference | readonly PdfValue[] | { readonly [key: string]: PdfValue | undefined }

  export interface Reference {
    readonly id: number
    readonly data: Record<string, PdfValue>
    /** Writes the last of a stream, which is then packed, or ends an object without one. */
    end(stream?: Uint8Array | string): void
    write(stream: Uint8Array | string): void
  }

  export interface EmbeddedFont {
    readonly id: string
    layoutCache: Record<string, unknown>
    /** Glyphs as four hexadecimal digits each, and how far each goes on, in thousandths of an em. */
    encode(text: string): readonly [readonly string[], readonly { xAdvance: number; xOffset: number; yOffset: number; advanceWidth: number }[]]
    ref(): Reference
    /** Writes the font into the document, once. */
    finalize(): void
  }

  export interface Page {
    readonly dictionary: Reference
    readonly fonts: Record<string, Reference>
    readonly annotations: Reference[]
    readonly height: number
  }

  export interface OutlineItem {
    addItem(title: string, options: { pageNumber: number; top: number; left: number }): OutlineItem
  }

  export interface Options {
    readonly pdfVersion: '1.7'
    readonly subset: 'PDF/UA'
    readonly tagged: true
    readonly lang: string
    readonly displayTitle: true
    readonly bufferPages: true
    readonly autoFirstPage: false
    readonly font: null
    readonly size: readonly [number, number]
    readonly margin: number
    readonly info: Readonly<Record<string, string | Date>>
  }

  export default class PDFDocument {
    constructor(options: Options)
    page: Page
    readonly outline: OutlineItem
    readonly info: Record<string, string | Date>
    addPage(): this
    switchToPage(index: number): Page
    addContent(operators: string): this
    registerFont(name: string, font: Font): this
    font(name: string): this
    initForm(): this
    ref(data: Record<string, PdfValue>): Reference
    appendXML(xml: string): void
    getStructTreeRoot(): Reference
    createStructParentTreeNextKey(): number
    end(): void
    readonly _root: Reference
    readonly _font: EmbeddedFont
    readonly _id: Uint8Array
    _info: Reference
    /** The part of the standard that is kept to: 1 for PDF/UA-1. */
    subset: number
    _ended: boolean
    readonly _offsets: readonly (number | null)[]
    _addInfo: () => void
    _write: (data: string | Uint8Array) => void
    _refEnd: (reference: Reference) => void
    _finalize: () => void
  }
}
