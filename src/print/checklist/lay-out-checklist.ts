import type { Booklet, Part } from '../../booklet/booklet.ts'
import { unparted } from '../../booklet/figures.ts'
import { headFont, oneLine, textLines } from '../pages/heads.ts'
import { placeFooters } from '../pages/footer.ts'
import { gaps, live, liveWidth, weights } from '../sheet/measures.ts'
import type { LaidOut } from '../sheet/placed.ts'
import { Sheet } from '../sheet/sheet.ts'
import { breakLines } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'
import { checkLines, finishingSteps } from './check-rows.ts'
import { boxLeft, checklistColumns, copiesOf } from './checklist-columns.ts'
import { placeCheckTable } from './check-table.ts'

const title = { font: 'head', size: 17, leading: 20 } as const

/** Lays out a checklist: one line for each real row, and a box in it for each copy. */
export function layOutChecklist(booklet: Booklet): LaidOut {
  const sheet = new Sheet()
  const copies = Math.max(2, ...booklet.parts.map(copiesOf))
  sheet.bookmark(booklet.title)
  placeTitle(sheet, booklet)
  placeFor(sheet, copies)
  for (const part of booklet.parts) {
    const lines = checkLines(part)
    if (lines.length === 0) continue
    const rows = lines.filter((line) => line.kind === 'row')
    // Rows that all have one side need no column for it.
    const sides = part.sides && rows.some(({ side }) => side !== '')
    placeCheckTable(sheet, {
      heading: booklet.parts.length > 1 ? headingOf(part) : '', name: part.name, counting: part.counting, columns: checklistColumns({ sides, copies: copiesOf(part), rows }), lines,
    })
  }
  for (const { heading, steps } of finishingSteps(booklet)) {
    placeCheckTable(sheet, { heading: '', name: heading, counting: '', columns: checklistColumns({ sides: false, copies, rows: [] }), lines: steps })
  }
  placeFooters(sheet, booklet, 'Checklist')
  return sheet
}

const headingOf = ({ number, name, make = 1 }: Part): string => `${number} ${name}${make > 1 ? `, make ${make}` : ''}`

/** The title, and beside it what the sheet is for. */
function placeTitle(sheet: Sheet, { title: text, sizes, size, terms, parts }: Booklet): void {
  const style = { ...title, font: headFont(text, 'head') }
  const lines = breakLines([{ text, font: style.font }], { size: style.size, width: liveWidth })
  const tag = sheet.tag(sheet.root, 'H1')
  for (const line of lines) {
    sheet.text(tag, line, style, live.left, sheet.y + baselineIn(style))
    sheet.y += lineHeight(style)
  }
  const most = Math.max(1, ...parts.map(({ make = 1 }) => make))
  const use = ['Checklist, with a column for each copy and one to spare. Tick across when you make them in turn.', ...(most >= 4 ? ['Print it again for more copies.'] : [])].join(' ')
  const edition = [
    ...(sizes.length > 1 ? [`Sizes: ${unparted(sizes[0] ?? '')} (${sizes.slice(1).map(unparted).join(', ')}).`] : []),
    ...(size === undefined ? [] : [unparted(`Size ${size}.`)]),
    unparted(`${terms} terms.`),
  ].join(' ')
  const { partLine } = styles
  const paragraph = sheet.tag(sheet.root, 'P')
  const start = (lines.at(-1)?.width ?? 0) + 4.4
  const beside = oneLine(`${use} ${edition}`, partLine)
  if (start + beside.width <= liveWidth) {
    sheet.text(paragraph, beside, partLine, live.left + start, sheet.y - lineHeight(style) + baselineIn(style))
    return
  }
  sheet.y += 0.8
  for (const [at, words] of [use, edition].entries()) {
    const own = at === 0 ? paragraph : sheet.tag(sheet.root, 'P')
    for (const line of textLines(words, partLine, liveWidth)) {
      sheet.text(own, line, partLine, live.left, sheet.y + baselineIn(partLine))
      sheet.y += lineHeight(partLine)
    }
  }
}

/** Lines to write on whom each copy is for, over the columns of boxes. */
function placeFor(sheet: Sheet, copies: number): void {
  const { copies: rights, stitches } = checklistColumns({ sides: false, copies, rows: [] })
  const y = sheet.y + 1.6 + baselineIn(styles.partLine)
  sheet.textTo(sheet.tag(sheet.root, 'P'), oneLine('For', styles.partLine), styles.partLine, stitches, y)
  for (const right of rights) sheet.rule(y + 0.6, weights.hair, boxLeft(right) - 8, right)
  sheet.y = y + 0.6 + gaps.small
}
