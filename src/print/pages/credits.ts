import { gaps, live, proseWidth } from '../sheet/measures.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'
import { oneLine, textLines } from './heads.ts'

/** Sets, at the very end, where the published tables that the pattern shows come from. */
export function placeCredits(sheet: Sheet, credits: readonly string[]): void {
  if (credits.length === 0) return
  const { note, noteStrong } = styles
  const entries = credits.map((credit) => textLines(credit, note, proseWidth))
  sheet.makeRoom(lineHeight(noteStrong) + (entries[0]?.length ?? 0) * lineHeight(note), gaps.section)
  sheet.text(sheet.tag(sheet.root, 'P'), oneLine('Sources', noteStrong), noteStrong, live.left, sheet.y + baselineIn(noteStrong))
  sheet.y += lineHeight(noteStrong)
  for (const lines of entries) {
    const tag = sheet.tag(sheet.root, 'P')
    for (const line of lines) {
      if (lineHeight(note) > sheet.room && !sheet.isFresh) sheet.newPage()
      sheet.text(tag, line, note, live.left, sheet.y + baselineIn(note))
      sheet.y += lineHeight(note)
    }
  }
}
