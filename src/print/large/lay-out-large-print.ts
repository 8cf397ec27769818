import type { Booklet, Part } from '../../booklet/booklet.ts'
import { paginateRows, shareRows, type PageRange } from '../pages/paginate-rows.ts'
import { leadHeight, placeBlocks } from '../pages/prose.ts'
import { live, liveWidth } from '../sheet/measures.ts'
import type { LaidOut, Tag } from '../sheet/placed.ts'
import { Sheet } from '../sheet/sheet.ts'
import type { Line } from '../type/break-lines.ts'
import { lineHeight } from '../type/styles.ts'
import { inWords } from './in-words.ts'
import { placeLargeCover } from './large-cover.ts'
import { placeLargeFooters } from './large-footer.ts'
import { placeLargeAbbreviations, placeLargeGauge, placeLargeMaterials, placeLargeSpecialStitches } from './large-needs.ts'
import { largeRow, partLargeRow, placeLargeRow, type LargeRow } from './large-row.ts'
import { large, largeGaps, largePage, largeProse, largeRules } from './large-styles.ts'
import { headHeight, largeHeadHeight, largeLines, linesOf, placeContinued, placeLargeHead, placeLines } from './large-text.ts'

const body = lineHeight(large.body)

/** Lays out a pattern in large print: one column, words instead of signs. A pattern with sizes has one size in it. */
export function layOutLargePrint(booklet: Booklet): LaidOut {
  const sheet = new Sheet(largePage.textBottom)
  placeLargeCover(sheet, booklet)
  sheet.newPage()
  placeLargeMaterials(sheet, booklet)
  placeLargeGauge(sheet, booklet)
  placeLargeAbbreviations(sheet, booklet)
  placeLargeSpecialStitches(sheet, booklet)
  placeSections(sheet, booklet.before)
  for (const part of booklet.parts) placePart(sheet, part)
  placeSections(sheet, [...booklet.after, ...(booklet.closing ?? []), ...(booklet.versions ? [booklet.versions] : [])])
  placeLargeFooters(sheet, booklet)
  return sheet
}

function placeSections(sheet: Sheet, sections: Booklet['before']): void {
  for (const { heading, blocks } of sections) {
    placeLargeHead(sheet, heading, Math.max(2 * body, Math.min(leadHeight(blocks, largeProse), 6 * body)))
    placeBlocks(sheet, sheet.root, blocks, largeProse)
  }
}

interface LargeInstruction {
  readonly kind: 'instruction'
  readonly lines: readonly Line[]
  readonly height: number
}

/** Sets a part. Each row stands between rules; what is to be done between two rows has the whole width. */
function placePart(sheet: Sheet, part: Part): void {
  const heading = `${part.number} ${part.name}`
  const words = linesOf(inWords(part.line), liveWidth)
  const head = largeHeadHeight(heading) + (words.length === 0 ? 0 : words.length * body + largeGaps.under)
  const page = sheet.textBottom - live.top
  // A name of many lines may fill a page: its rows then begin on the next.
  const isTall = head > page / 2
  const underHead = page - (isTall ? headHeight : Math.max(head, headHeight))
  const firstRow = part.lines.findIndex(({ kind }) => kind === 'row')
  const blocks = part.lines.flatMap((line, at): readonly (LargeRow | LargeInstruction)[] =>
    line.kind === 'row' ? partLargeRow(largeRow(line, { sides: part.sides, isFirst: at === firstRow }), underHead) : [instruction(line.text.map(({ text }) => text).join(''))])
  const rooms = (room: number) => ({ first: room - head, whole: page - headHeight, note: 0 })
  // Where there is no room for three rows under the head, the part begins on a new page.
  const here = sheet.isFresh ? undefined : paginateRows(blocks, rooms(sheet.room - largeGaps.section))
  const begins = here !== undefined && here[0]?.onNewPage === false
  if (!sheet.isFresh && !begins) sheet.newPage()
  placeLargeHead(sheet, heading, 0)
  if (words.length > 0) {
    placeLines(sheet, sheet.tag(sheet.root, 'P'), words)
    sheet.y += largeGaps.under
    if (part.lines.length > 0) sheet.rule(sheet.y, largeRules.between)
  }
  const pages = begins ? here : paginateRows(blocks, rooms(page))
  // Rows so tall that a page has less than three of them begin under the head all the same.
  const crowded = !isTall && pages[0]?.onNewPage === true
  placePages(sheet, part, { blocks, pages: crowded ? shareRows(blocks, rooms(page)).map((own, at) => ({ ...own, onNewPage: at > 0 })) : pages })
}

interface PartPages {
  readonly blocks: readonly (LargeRow | LargeInstruction)[]
  readonly pages: readonly PageRange[]
}

function placePages(sheet: Sheet, part: Part, { blocks, pages }: PartPages): void {
  let tbody: Tag | undefined
  for (const { from, to, onNewPage } of pages) {
    if (onNewPage) {
      sheet.newPage()
      placeContinued(sheet, part.name)
    }
    for (const [index, block] of blocks.slice(from, to).entries()) {
      if (block.kind === 'row') placeLargeRow(sheet, (tbody ??= sheet.tag(sheet.tag(sheet.root, 'Table'), 'TBody')), block, part)
      else {
        tbody = undefined
        placeInstruction(sheet, block)
      }
      if (index < to - from - 1) sheet.rule(sheet.y, largeRules.between)
    }
    if (to > from) sheet.rule(sheet.y, largeRules.between)
  }
}

function instruction(text: string): LargeInstruction {
  const lines = largeLines([{ text: inWords(text), font: large.body.font }], liveWidth)
  return { kind: 'instruction', lines, height: lines.length * body + 2 * largeGaps.under }
}

function placeInstruction(sheet: Sheet, { lines, height }: LargeInstruction): void {
  const top = sheet.y
  sheet.y += largeGaps.under
  placeLines(sheet, sheet.tag(sheet.root, 'P'), lines)
  sheet.y = top + height
}
