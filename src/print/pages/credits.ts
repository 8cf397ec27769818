import { gaps, live, liveWidth } from '../sheet/measures.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'

const { note, noteStrong } = styles

/** Sets where the published tables come from that the materials are named by, under them. */
export function placeCredits(sheet: Sheet, credits: readonly string[]): void {
  const lines = linesOf(credits)
  if (lines.length === 0) return
  sheet.makeRoom(lines.length * lineHeight(note), gaps.medium)
  place(sheet, lines)
}

function linesOf(credits: readonly string[]): readonly Line[] {
  if (credits.length === 0) return []
  return breakLines([{ text: 'Sources. ', font: noteStrong.font }, { text: credits.join(' '), font: note.font }], { size: note.size, width: liveWidth })
}

function place(sheet: Sheet, lines: readonly Line[]): void {
  const tag = sheet.tag(sheet.root, 'P')
  for (const line of lines) {
    if (lineHeight(note) > sheet.room && !sheet.isFresh) sheet.newPage()
    sheet.text(tag, line, note, live.left, sheet.y + baselineIn(note))
    sheet.y += lineHeight(note)
  }
}
