import { covers, rolesFor, type FontRole } from './fonts.ts'

/** A stretch of one word in one font. A missing piece is a character that no font here has: it is drawn as a box and keeps its text for readers and copies. */
export interface Piece {
  readonly text: string
  readonly font: FontRole
  readonly missing: boolean
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

/** Cuts a word into stretches that one font can set, falling back between the families. */
export function setPieces(word: string, role: FontRole): readonly Piece[] {
  if (coversAll(role, word)) return [{ text: word, font: role, missing: false }]
  const pieces: Piece[] = []
  for (const { segment } of graphemes.segment(word)) {
    const font = rolesFor(role).find((candidate) => coversAll(candidate, segment))
    const last = pieces.at(-1)
    if (font !== undefined && last && !last.missing && last.font === font) pieces[pieces.length - 1] = { ...last, text: last.text + segment }
    else pieces.push({ text: segment, font: font ?? role, missing: font === undefined })
  }
  return pieces
}

/** Whether a font has every character of a text. */
export function coversAll(role: FontRole, text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const codePoint = text.codePointAt(at) ?? 0
    if (codePoint > 0xffff) at++
    if (!covers(role, codePoint)) return false
  }
  return true
}
