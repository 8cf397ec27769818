import { gaps, live, liveWidth } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line } from '../type/break-lines.ts'
import { cleanText } from '../type/clean-text.ts'
import { coversAll } from '../type/set-pieces.ts'
import type { FontRole } from '../type/fonts.ts'
import { lineHeight, styles, type TypeStyle } from '../type/styles.ts'

/** Baseline of a head under the top of its line, in mm. */
export const headBaseline = 4.7

/** Besley if it has every character of a head; else the whole head in Source Serif, so that one head is one face. */
export function headFont(text: string, role: 'title' | 'head'): FontRole {
  return coversAll(role, cleanText(text).replaceAll('\u00a0', ' ')) ? role : 'textStrong'
}

/** The lines of a head of the first order. */
export function headLines(text: string, width = liveWidth): readonly Line[] {
  return breakLines([{ text, font: headFont(text, 'head') }], { size: styles.head.size, width })
}

/** Sets a section's head, bookmarks it, and leaves the sheet at the head's foot. `follows`: mm that must fit under it on the same page. */
export function placeHead(sheet: Sheet, title: string, { follows, gap = gaps.section, width }: { follows: number; gap?: number; width?: number }): Tag {
  const lines = headLines(title, width)
  const height = lines.length * lineHeight(styles.head)
  sheet.makeRoom(height + follows, gap)
  sheet.bookmark(title)
  const tag = sheet.tag(sheet.root, 'H2')
  for (const [at, line] of lines.entries()) sheet.text(tag, line, styles.head, live.left, sheet.y + headBaseline + at * lineHeight(styles.head))
  sheet.y += height
  return tag
}

/** One line in one style, never broken. */
export function oneLine(text: string, style: TypeStyle): Line {
  const [line] = breakLines([{ text, font: style.font }], {
    size: style.size, width: Number.POSITIVE_INFINITY, ...(style.tracking === undefined ? {} : { tracking: style.tracking }),
  })
  return line ?? { runs: [], width: 0 }
}

/** A text in one style, broken to a width in mm. */
export function textLines(text: string, style: TypeStyle, width: number, hang = 0): readonly Line[] {
  return breakLines([{ text, font: style.font }], { size: style.size, width, hang })
}
