import { headFont } from '../pages/heads.ts'
import { live, liveWidth } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line, type Span } from '../type/break-lines.ts'
import { baselineIn, lineHeight, type TypeStyle } from '../type/styles.ts'
import { large, largeGaps, largeRules } from './large-styles.ts'

/** Lines of one style in mm of width, the second and following indented by `hang`. */
export function largeLines(spans: readonly Span[], width: number, { style = large.body, hang = 0 }: { readonly style?: TypeStyle; readonly hang?: number } = {}): readonly Line[] {
  return breakLines(spans, { size: style.size, width, hang })
}

/** The same, of one text. */
export const linesOf = (text: string, width: number, style: TypeStyle = large.body): readonly Line[] => largeLines([{ text, font: style.font }], width, { style })

/** Sets lines under one another from the top of what is free, on new pages if need be. */
export function placeLines(sheet: Sheet, tag: Tag, lines: readonly Line[], { style = large.body, x = live.left }: { readonly style?: TypeStyle; readonly x?: number } = {}): void {
  for (const line of lines) {
    if (lineHeight(style) > sheet.room && !sheet.isFresh) sheet.newPage()
    sheet.text(tag, line, style, x, sheet.y + baselineIn(style))
    sheet.y += lineHeight(style)
  }
}

/** Sets a head of large print with its rule, and bookmarks it. `follows`: mm that must fit under it. */
export function placeLargeHead(sheet: Sheet, text: string, follows: number): void {
  const style = { ...large.head, font: headFont(text, 'head') }
  const lines = linesOf(text, liveWidth, style)
  const height = lines.length * lineHeight(style) + 2 * largeGaps.under
  sheet.makeRoom(height + follows, largeGaps.section)
  sheet.bookmark(text)
  placeLines(sheet, sheet.tag(sheet.root, 'H2'), lines, { style })
  placeOpeningRule(sheet)
}

/** The head of a page on which a part goes on: repeated, and so not part of what is read out. */
export function placeContinued(sheet: Sheet, name: string): void {
  const text = `${name}, continued`
  const style = { ...large.head, font: headFont(text, 'head') }
  const [line] = linesOf(text, liveWidth, style)
  if (line) sheet.text('pagination', line, style, live.left, sheet.y + baselineIn(style))
  sheet.y += lineHeight(style)
  placeOpeningRule(sheet)
}

/** Height of a head of one line, its rule included, in mm. */
export const headHeight = lineHeight(large.head) + 2 * largeGaps.under

/** The same of a head that may take more lines. */
export function largeHeadHeight(text: string): number {
  const style = { ...large.head, font: headFont(text, 'head') }
  return linesOf(text, liveWidth, style).length * lineHeight(style) + 2 * largeGaps.under
}

function placeOpeningRule(sheet: Sheet): void {
  sheet.y += largeGaps.under - 1
  sheet.rule(sheet.y, largeRules.opening)
  sheet.y += largeGaps.under + 1
}
