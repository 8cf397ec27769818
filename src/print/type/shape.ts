import { fontOf, type FontRole } from './fonts.ts'

/** A word as its font sets it. Advances and offsets in thousandths of an em; it is also what PDFKit keeps for a word it has set. */
export interface ShapedWord {
  readonly glyphs: readonly { readonly id: number; readonly codePoints: readonly number[]; readonly advanceWidth: number }[]
  readonly positions: readonly { readonly xAdvance: number; readonly xOffset: number; readonly yOffset: number; readonly advanceWidth: number }[]
  readonly advanceWidth: number
}

const shapedByRole = new Map<FontRole, Record<string, ShapedWord>>()

/**
 * Every word set so far in a font, by its text, for all documents: shaping a word is most of the cost of setting it.
 * A word ends with the space that follows it, because that is how PDFKit cuts a line.
 */
export function shapedWords(role: FontRole): Record<string, ShapedWord> {
  let words = shapedByRole.get(role)
  if (!words) shapedByRole.set(role, (words = Object.create(null) as Record<string, ShapedWord>))
  return words
}

function shape(role: FontRole, word: string): ShapedWord {
  const font = fontOf(role)
  const scale = 1000 / font.unitsPerEm
  const run = font.layout(word)
  const codePoints = codePointsByGlyph(run.glyphs.map((glyph) => glyph.codePoints), word)
  const positions = run.positions.map((position, index) => ({
    xAdvance: position.xAdvance * scale,
    xOffset: position.xOffset * scale,
    yOffset: position.yOffset * scale,
    advanceWidth: (run.glyphs[index]?.advanceWidth ?? 0) * scale,
  }))
  return {
    glyphs: run.glyphs.map(({ id, advanceWidth }, index) => ({ id, advanceWidth, codePoints: codePoints[index] ?? [] })),
    positions,
    advanceWidth: positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0),
  }
}

/**
 * Which characters each glyph of a word stands for. Read off the word: a font's own glyph keeps the characters of whoever asked for
 * it first, which is nobody when it was only a part of an accented letter, and copied text would then depend on what was printed before.
 */
export function codePointsByGlyph(claimed: readonly (readonly number[])[], word: string): readonly (readonly number[])[] {
  const all = Array.from(word, (character) => character.codePointAt(0) ?? 0)
  const surplus = all.length - claimed.reduce((sum, codePoints) => sum + (codePoints.length > 1 ? codePoints.length : 1), 0)
  const unclaimed = claimed.findIndex((codePoints) => codePoints.length === 0)
  let next = 0
  return claimed.map((codePoints, index) => {
    const length = (codePoints.length > 1 ? codePoints.length : 1) + (index === unclaimed ? surplus : 0)
    const own = all.slice(next, next + length)
    next += length
    return index === claimed.length - 1 ? [...own, ...all.slice(next)] : own
  })
}

/** Width of a text in a font, in thousandths of an em. */
export function widthOf(role: FontRole, text: string): number {
  const words = shapedWords(role)
  let width = 0
  for (let start = 0; start < text.length;) {
    const space = text.indexOf(' ', start)
    const end = space === -1 ? text.length : space + 1
    const word = text.slice(start, end)
    width += (words[word] ??= shape(role, word)).advanceWidth
    start = end
  }
  return width
}

/** How far the ink of a text reaches under its baseline, in em. */
export function depthOf(role: FontRole, text: string): number {
  const font = fontOf(role)
  return text.trim() === '' ? 0 : Math.max(0, -font.layout(text).bbox.minY / font.unitsPerEm)
}
