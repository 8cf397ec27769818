import type PDFDocument from 'pdfkit'
import type { EmbeddedFont } from 'pdfkit'
import { mmPerPoint } from '../sheet/measures.ts'
import type { PlacedText } from '../sheet/placed.ts'
import { fontOf, heightsOf, type FontRole } from '../type/fonts.ts'
import { shapedWords, widthOf } from '../type/shape.ts'
import { acrossPage, digits, fromBottom, points, upPage } from './numbers.ts'

/** The operators of a page as far as they are written, with what is in force, so that nothing is said twice. */
export interface PageText {
  readonly operators: string[]
  readonly fonts: Set<FontRole>
  /** Font and size in force. */
  font: string
  /** The start of the last line shown, in hundredths of a point, while a text object (BT to ET) is open: pieces of marked content may lie inside one. */
  at: { readonly x: number; readonly y: number } | undefined
}

/** The operators of a page without any text yet. */
export const startPage = (): PageText => ({ operators: [], fonts: new Set(), font: '', at: undefined })

/** Begins a text object, if none is open. */
export function beginText(page: PageText): void {
  if (page.at) return
  page.operators.push('BT')
  page.at = { x: 0, y: 0 }
}

/** Ends the text object, because nothing may be drawn inside one. */
export function endText(page: PageText): void {
  if (page.at) page.operators.push('ET')
  page.at = undefined
}

/**
 * Writes placed text as PDF operators. PDFKit's own `text()` shapes each line three times and wraps it in a state of its own, which
 * costs more than all the rest of a page; shaping and embedding are still PDFKit's and fontkit's.
 */
export class TextWriter {
  readonly #document: PDFDocument
  readonly #fonts = new Map<FontRole, EmbeddedFont>()
  readonly #words = new Map<FontRole, Map<string, string>>()

  constructor(document: PDFDocument) {
    this.#document = document
  }

  /** The embedded font of a role; opened for this document at its first use. */
  font(role: FontRole): EmbeddedFont {
    let font = this.#fonts.get(role)
    if (!font) {
      this.#document.registerFont(role, fontOf(role)).font(role)
      font = this.#document._font
      font.layoutCache = shapedWords(role)
      this.#fonts.set(role, font)
    }
    return font
  }

  /**
   * Writes the fonts. PDFKit lists the glyphs of each, which no part of the standard asks for, and leaves out those that are only parts
   * of an accented letter, which the standard forbids (ISO 14289-1, 7.21.4.2); it lists none when it takes the file for an ordinary one.
   */
  end(): void {
    const { subset } = this.#document
    this.#document.subset = 0
    for (const font of this.#fonts.values()) font.finalize()
    this.#document.subset = subset
  }

  /** Shows text. Where it stands is said from where the last text stood: the columns of a table then repeat, and pack well. */
  show(text: PlacedText, page: PageText): void {
    if (text.turned) return this.#showTurned(text, page)
    const { operators } = page
    page.fonts.add(text.font)
    beginText(page)
    const from = page.at ?? { x: 0, y: 0 }
    page.at = { x: Math.round(points(text.x) * 100), y: Math.round(fromBottom(text.y) * 100) }
    const font = `/${this.font(text.font).id} ${digits(text.size)} Tf`
    if (font !== page.font) operators.push(font)
    page.font = font
    operators.push(`${digits((page.at.x - from.x) / 100)} ${digits((page.at.y - from.y) / 100)} Td`)
    if (text.tracking !== undefined) operators.push(`${digits(text.tracking * text.size)} Tc`)
    operators.push(`[${this.#encode(text)}] TJ`)
    if (text.tracking !== undefined) operators.push('0 Tc')
  }

  /** Shows text that reads upwards, in a text object of its own. */
  #showTurned(text: PlacedText, page: PageText): void {
    endText(page)
    page.fonts.add(text.font)
    page.font = `/${this.font(text.font).id} ${digits(text.size)} Tf`
    const matrix = `0 1 -1 0 ${digits(points(text.x))} ${digits(fromBottom(text.y))} Tm`
    page.operators.push('BT', page.font, matrix, `[${this.#encode(text)}] TJ`, 'ET')
  }

  #encode({ font: role, text, size }: PlacedText): string {
    let words = this.#words.get(role)
    if (!words) this.#words.set(role, (words = new Map()))
    widthOf(role, text)
    let shown = ''
    for (let start = 0; start < text.length;) {
      const space = text.indexOf(' ', start)
      const end = space === -1 ? text.length : space + 1
      const word = text.slice(start, end)
      let encoded = words.get(word)
      if (encoded === undefined) {
        encoded = encodeWord(this.font(role), word, size)
        // A raised mark is raised by points, which are of one size only.
        if (!encoded.includes('Ts')) words.set(word, encoded)
      }
      shown += encoded
      start = end
    }
    return shown.replaceAll('><', '')
  }
}

/** The glyphs of a word as the inside of a TJ array: hexadecimal, with what is to be taken back between them in thousandths of an em. */
function encodeWord(font: EmbeddedFont, word: string, size: number): string {
  const [glyphs, positions] = font.encode(word)
  let shown = ''
  let run = ''
  const flush = () => {
    if (run !== '') shown += `<${run}>`
    run = ''
  }
  for (const [at, glyph] of glyphs.entries()) {
    const { xAdvance, xOffset, yOffset, advanceWidth } = positions[at] ?? { xAdvance: 0, xOffset: 0, yOffset: 0, advanceWidth: 0 }
    if (xOffset !== 0 || yOffset !== 0) {
      flush()
      const raise = yOffset === 0 ? ['', ''] : [`] TJ ${digits((yOffset * size) / 1000)} Ts [`, '] TJ 0 Ts [']
      shown += `${digits(-xOffset)} ${raise[0]}<${glyph}>${raise[1]} ${digits(xOffset + advanceWidth - xAdvance)} `
      continue
    }
    run += glyph
    const back = advanceWidth - xAdvance
    if (Math.abs(back) < 0.0005) continue
    flush()
    shown += digits(back)
  }
  flush()
  return shown
}

/** Operators for the box that stands in for a character that no font has. Between BT and ET nothing may be drawn: this stands outside. */
export function missingBox({ x, y, width, size, font }: PlacedText): string {
  const height = heightsOf(font).capital * size
  const side = points(width) - 0.16 * size
  return `${digits(size / 24)} w\n${acrossPage(x + 0.08 * size * mmPerPoint)} ${upPage(y)} ${digits(side)} ${digits(height)} re S`
}
