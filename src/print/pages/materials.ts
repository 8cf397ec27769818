import type { Booklet, MaterialLine } from '../../booklet/booklet.ts'
import { gaps, live, pencilBox, weights } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import type { Line } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles, type TypeStyle } from '../type/styles.ts'
import { placeColumnHeads } from './column-heads.ts'
import { oneLine, placeHead, textLines } from './heads.ts'
import { placeParagraph } from './prose.ts'

/** Columns in mm from the left edge of the page; figures end at `right`. */
interface Columns {
  readonly item: { readonly x: number; readonly width: number }
  readonly for: { readonly x: number; readonly width: number }
  readonly amount: { readonly right: number; readonly width: number }
  readonly weight: { readonly right: number; readonly width: number }
}

/** Figures for many sizes are wide: their columns grow as the lines need, and what a thing is for gets what is left. */
function columnsFor(materials: readonly MaterialLine[]): Columns {
  const widest = (texts: readonly string[]) => Math.max(0, ...texts.map((text) => oneLine(text, styles.amountTotal).width))
  const weight = Math.min(Math.max(20, widest(materials.flatMap((line) => weightLines(line))) + gaps.medium), 45)
  const right = live.right - weight
  const amount = Math.min(Math.max(20, widest(materials.flatMap((line) => line.amount)) + gaps.medium), 60)
  return {
    item: { x: 25, width: 40 }, for: { x: 67, width: Math.min(69, right - amount - 67) }, amount: { right, width: amount }, weight: { right: live.right, width: weight - 1 },
  }
}

const weightLines = ({ weight, ounces }: MaterialLine): readonly string[] => [weight, ounces ?? ''].filter((text) => text !== '')

const padding = { above: 1, below: 1.05 }
const notesWidth = 158

interface Measured {
  readonly line: MaterialLine
  readonly item: readonly Line[]
  readonly make: readonly Line[]
  readonly for: readonly Line[]
  readonly amount: readonly Line[]
  readonly weight: readonly Line[]
  readonly height: number
}

/** Sets the materials as a shopping list: a box on each line, and the yarn summed up over a double rule. Cautions stand under it. */
export function placeMaterials(sheet: Sheet, { materials, buying = [], cautions }: Pick<Booklet, 'materials' | 'buying' | 'cautions'>): void {
  if (materials.length === 0 && cautions.length === 0) return
  const columns = columnsFor(materials)
  const rows = materials.map((line) => measure(line, columns))
  placeHead(sheet, 'Materials', { follows: gaps.under + 6 + rows.slice(0, 2).reduce((sum, { height }) => sum + height, 0) })
  sheet.y += gaps.under
  if (rows.length > 0) placeTable(sheet, rows, columns)
  placeNotes(sheet, 'Buying', buying)
  placeNotes(sheet, 'Safety', cautions)
}

function placeTable(sheet: Sheet, rows: readonly Measured[], columns: Columns): void {
  const table = sheet.tag(sheet.root, 'Table')
  const heads = (place: Tag | 'pagination') => placeColumnHeads(sheet, place, [
    { lines: [], at: live.left },
    { lines: textLines('Item', styles.columnHead, columns.item.width), at: columns.item.x },
    { lines: textLines('For', styles.columnHead, columns.for.width), at: columns.for.x },
    { lines: textLines('Amount', styles.columnHead, columns.amount.width), to: columns.amount.right },
    { lines: textLines('Weight', styles.columnHead, columns.weight.width), to: columns.weight.right },
  ])
  heads(sheet.tag(table, 'THead'))
  const body = sheet.tag(table, 'TBody')
  let ruled = true
  for (const row of rows) {
    if (row.height > sheet.room && !sheet.isFresh) {
      sheet.rule(sheet.y, weights.heavy)
      sheet.newPage()
      heads('pagination')
      ruled = true
    }
    if (!ruled || row.line.kind === 'total') sheet.rule(sheet.y, row.line.kind === 'total' ? weights.middle : weights.hair)
    placeRow(sheet, body, row, columns)
    sheet.y += row.height
    ruled = row.line.kind === 'total'
    if (ruled) sheet.y = sheet.doubleRule(sheet.y)
  }
  sheet.rule(sheet.y, weights.heavy)
}

function measure(line: MaterialLine, columns: Columns): Measured {
  const item = textLines(line.item, styles.item, columns.item.width)
  const make = line.make === undefined ? [] : textLines(line.make, styles.note, columns.item.width)
  const figures = line.kind === 'total' ? styles.amountTotal : styles.amount
  const purpose = textLines(line.for, styles.text, columns.for.width)
  const amount = line.amount.flatMap((text) => textLines(text, figures, columns.amount.width))
  const weight = weightLines(line).flatMap((text) => textLines(text, figures, columns.weight.width))
  const tall = lineHeight(styles.text)
  const height = padding.above + padding.below + Math.max(
    item.length * tall + make.length * lineHeight(styles.note), purpose.length * tall, amount.length * tall, weight.length * tall,
  )
  return { line, item, make, for: purpose, amount, weight, height }
}

function placeRow(sheet: Sheet, body: Tag, row: Measured, columns: Columns): void {
  const tr = sheet.tag(body, 'TR')
  const top = sheet.y + padding.above
  const baseline = top + baselineIn(styles.text)
  const each = (lines: readonly Line[], style: TypeStyle, put: (line: Line, y: number) => void) => {
    for (const [at, line] of lines.entries()) put(line, baseline + at * lineHeight(style))
  }
  const boxCell = sheet.tag(tr, 'TD')
  if (row.line.kind !== 'total') sheet.box(boxCell, live.left, top, pencilBox, `Materials, ${row.line.item}`)
  const item = sheet.tag(tr, 'TH', { scope: 'Row' })
  each(row.item, styles.item, (line, y) => sheet.text(item, line, styles.item, columns.item.x, y))
  const makeTop = top + row.item.length * lineHeight(styles.item)
  for (const [at, line] of row.make.entries()) {
    sheet.text(item, line, styles.note, columns.item.x, makeTop + at * lineHeight(styles.note) + baselineIn(styles.note))
  }
  const purpose = sheet.tag(tr, 'TD')
  each(row.for, styles.text, (line, y) => sheet.text(purpose, line, styles.text, columns.for.x, y))
  const figures = row.line.kind === 'total' ? styles.amountTotal : styles.amount
  const amount = sheet.tag(tr, 'TD')
  each(row.amount, figures, (line, y) => sheet.textTo(amount, line, figures, columns.amount.right, y))
  const weight = sheet.tag(tr, 'TD')
  each(row.weight, figures, (line, y) => sheet.textTo(weight, line, figures, columns.weight.right, y))
}

function placeNotes(sheet: Sheet, head: string, notes: readonly string[]): void {
  if (notes.length === 0) return
  sheet.makeRoom(lineHeight(styles.label) + 2 * lineHeight(styles.text), gaps.medium)
  sheet.text(sheet.tag(sheet.root, 'P'), oneLine(head, styles.label), styles.label, live.left, sheet.y + baselineIn(styles.label))
  sheet.y += lineHeight(styles.label) + 0.4
  for (const [at, note] of notes.entries()) {
    if (at > 0 && !sheet.isFresh) sheet.y += gaps.tiny
    placeParagraph(sheet, sheet.tag(sheet.root, 'P'), [{ text: note, font: 'text' }], { width: notesWidth })
  }
}
