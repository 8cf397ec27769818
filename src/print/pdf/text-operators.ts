import type PDFDocument from 'pdfkit'
import type { EmbeddedFont } from 'pdfkit'
import { mmPerPoint } from '../sheet/measures.ts'
import type { PlacedText } from '../sheet/placed.ts'
import { fontOf, heightsOf, type FontRole } from '../type/fonts.ts'
import { shapedWords, widthOf } from '../type/shape.ts'
import { acrossPage, digits, points, upPage } from './numbers.ts'

/** What is set in text on a page: the font and size in force, so that they are said once. */
interface PageState {
  inForce: string
  readonly fonts: Set<FontRole>
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

  /** The state at the start of a page. */
  startPage(): PageState {
    return { inForce: '', fonts: new Set() }
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

  /** Operators for text, between BT and ET. */
  show(text: PlacedText, state: PageState): string {
    state.fonts.add(text.font)
    const inForce = `/${this.font(text.font).id} ${digits(text.size)} Tf`
    const change = inForce === state.inForce ? '' : `${inForce}\n`
    state.inForce = inForce
    const place = `1 0 0 1 ${acrossPage(text.x)} ${upPage(text.y)} Tm`
    const shown = `[${this.#encode(text)}] TJ`
    if (text.tracking === undefined) return `${change}${place}\n${shown}`
    return `${change}${digits(text.tracking * text.size)} Tc\n${place}\n${shown}\n0 Tc`
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
