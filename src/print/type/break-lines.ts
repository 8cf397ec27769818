import { mmPerPoint } from '../sheet/measures.ts'
import { cleanText } from './clean-text.ts'
import type { FontRole } from './fonts.ts'
import { gluedAfter } from './glue.ts'
import { setPieces } from './set-pieces.ts'
import { widthOf } from './shape.ts'

/** Text to be set, in one font. */
export interface Span {
  readonly text: string
  readonly font: FontRole
  /** Underlined: the part of a row that is repeated. */
  readonly repeat?: boolean
  readonly href?: string
}

/** A stretch of a set line in one font. `x` is from the start of the line; widths in mm. */
export interface LineRun {
  readonly text: string
  readonly font: FontRole
  readonly x: number
  readonly width: number
  readonly missing: boolean
  readonly repeat: boolean
  /** The line is broken after it, at a space. The space is not in the width, but copied text needs it. */
  readonly spaceAfter: boolean
  readonly href?: string
}

/** A set line. Its width in mm counts from its start, the indent included. */
export interface Line {
  readonly runs: readonly LineRun[]
  readonly width: number
}

/** How wide a column is, in mm; `hang` is the indent of every line but the first; `tracking` is extra space after each character, in em. */
export interface Setting {
  readonly size: number
  readonly width: number
  readonly hang?: number
  readonly tracking?: number
}

/** A character that no font has is drawn as a box this wide, in thousandths of an em. */
const missingWidth = 620

interface Part {
  text: string
  readonly font: FontRole
  readonly missing: boolean
  readonly repeat: boolean
  readonly href: string | undefined
}

/** What may not be parted: one word, or several that are glued, with the space that follows. */
interface Word {
  readonly parts: readonly Part[]
  readonly width: number
  readonly space: Part | undefined
}

/** Sets spans in lines of a width: ragged right, never hyphenated, with the glue of row texts; a word wider than the column is broken as a last resort. */
export function breakLines(spans: readonly Span[], setting: Setting): readonly Line[] {
  const scale = (setting.size * mmPerPoint) / 1000
  const hang = setting.hang ?? 0
  const lines: Line[] = []
  let words: Word[] = []
  let width = 0
  const close = () => {
    if (words.length > 0) lines.push(setLine(words, { scale, indent: lines.length > 0 ? hang : 0, tracking: setting.tracking ?? 0 }))
    words = []
    width = 0
  }
  for (const word of wordsOf(spans, setting)) {
    const space = words.at(-1)?.space
    const gap = space ? widthOfPart(space, setting.tracking) : 0
    const room = (setting.width - (lines.length > 0 ? hang : 0)) / scale
    // A thousandth of an em forgives what adding widths in another order loses.
    if (words.length > 0 && width + gap + word.width > room + 1) close()
    else width += gap
    words.push(word)
    width += word.width
  }
  close()
  return lines
}

function widthOfPart({ missing, font, text }: Part, tracking = 0): number {
  return (missing ? missingWidth : widthOf(font, text)) + tracking * 1000 * text.length
}

function wordsOf(spans: readonly Span[], setting: Setting): readonly Word[] {
  const cleaned = spans.map((span) => ({ ...span, text: cleanText(span.text) }))
  const whole = cleaned.map(({ text }) => text).join('')
  const texts = whole.split(/[ \u00a0]/)
  const glued = gluedAfter(texts)
  const narrowest = ((setting.width - (setting.hang ?? 0)) * 1000) / (setting.size * mmPerPoint)
  const cut = cutter(cleaned)
  const words: Word[] = []
  let parts: Part[] = []
  let end = -1
  for (const [at, text] of texts.entries()) {
    parts.push(...cut(text.length))
    end += text.length + 1
    const space = at < texts.length - 1 ? cut(1)[0] : undefined
    if (space && (glued.has(at) || whole[end] === '\u00a0')) {
      parts.push(space)
      continue
    }
    if (parts.length > 0) words.push(...fitting({ parts, space, width: sum(parts, setting.tracking) }, narrowest, setting.tracking))
    parts = []
  }
  return words
}

const sum = (parts: readonly Part[], tracking = 0) => parts.reduce((width, part) => width + widthOfPart(part, tracking), 0)

/** Takes so many characters at a time off the spans, cut into what one font can set. */
function cutter(spans: readonly Span[]): (length: number) => readonly Part[] {
  let index = 0
  let from = 0
  return (length) => {
    const parts: Part[] = []
    while (length > 0) {
      const span = spans[index]
      if (!span) break
      const text = span.text.slice(from, from + length)
      length -= text.length
      from += text.length
      if (from >= span.text.length) {
        index++
        from = 0
      }
      // Glue has done its work by now; in the file a space is a space.
      const spaced = text.replaceAll('\u00a0', ' ')
      if (spaced === '') continue
      for (const piece of setPieces(spaced, span.font)) parts.push({ ...piece, repeat: span.repeat ?? false, href: span.href })
    }
    return parts
  }
}

/** The word itself, or, when it is wider than the column, what it is broken into: at its glued spaces first, then anywhere. */
function fitting(word: Word, room: number, tracking: number | undefined): readonly Word[] {
  if (word.width <= room) return [word]
  const pieces: Word[] = []
  const end = (parts: readonly Part[], space: Part | undefined) => {
    if (parts.length > 0) pieces.push({ parts, space, width: sum(parts, tracking) })
  }
  let parts: Part[] = []
  for (const part of word.parts.flatMap(perCharacter)) {
    if (part.text === ' ') {
      end(parts, part)
      parts = []
      continue
    }
    if (sum(parts, tracking) + widthOfPart(part, tracking) > room) {
      end(parts, undefined)
      parts = []
    }
    parts.push(part)
  }
  end(parts, word.space)
  return pieces
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' })

function perCharacter(part: Part): readonly Part[] {
  return part.missing ? [part] : Array.from(graphemes.segment(part.text), ({ segment }) => ({ ...part, text: segment }))
}

function setLine(words: readonly Word[], { scale, indent, tracking }: { scale: number; indent: number; tracking: number }): Line {
  const parts: Part[] = []
  for (const [at, word] of words.entries()) {
    for (const part of word.parts) join(parts, part)
    if (at < words.length - 1 && word.space) join(parts, word.space)
  }
  const runs: LineRun[] = []
  const broken = words.at(-1)?.space !== undefined
  let x = indent
  for (const [at, part] of parts.entries()) {
    const width = widthOfPart(part, tracking) * scale
    const { text, font, missing, repeat, href } = part
    runs.push({ text, font, missing, repeat, x, width, spaceAfter: broken && at === parts.length - 1, ...(href === undefined ? {} : { href }) })
    x += width
  }
  return { runs, width: x }
}

function join(parts: Part[], part: Part): void {
  const last = parts.at(-1)
  if (last && !last.missing && !part.missing && last.font === part.font && last.repeat === part.repeat && last.href === part.href) last.text += part.text
  else parts.push({ ...part })
}
