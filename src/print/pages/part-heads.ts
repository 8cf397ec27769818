import type { Booklet, Part } from '../../booklet/booklet.ts'
import { live, weights } from '../sheet/measures.ts'
import type { Place, Sheet } from '../sheet/sheet.ts'
import type { Line } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'
import { columnHeadsHeight, placeColumnHeads, type ColumnHead } from './column-heads.ts'
import { oneLine, textLines } from './heads.ts'
import type { PartColumns } from './part-columns.ts'

interface PartTable {
  readonly columns: PartColumns
  readonly part: Pick<Part, 'counting'>
  readonly sizes: Booklet['sizes']
}

const { columnHead } = styles
/** Air between the last line of heads and the rule under it, in mm. */
const underHeads = 1.1
/** From the word `Stitches` to the sizes under it: a hair rule with air on both sides. */
const spanGap = 1.1

/** Height of the column heads of a part's table, in mm. */
export function partHeadsHeight(columns: PartColumns, part: Pick<Part, 'counting'>, sizes: Booklet['sizes']): number {
  if (columns.stitches.length > 1) return columnHeadsHeight(1 + sizeLines(columns, sizes)) + spanGap
  return columnHeadsHeight(Math.max(1, ...headsOf({ columns, part, sizes }).map(({ lines }) => lines.length)))
}

/** Sets the column heads of a part's table: one line, or two where `Stitches` spans a column for each size. */
export function placePartHeads(sheet: Sheet, place: Place, table: PartTable): void {
  if (table.columns.stitches.length > 1) placeSpanningHeads(sheet, place, table)
  else placeColumnHeads(sheet, place, headsOf(table))
  placePencilHead(sheet, table.columns)
}

/** Room to write in is no column of the table: nobody is to hear of an empty cell in every row. */
function placePencilHead(sheet: Sheet, { pencil }: PartColumns): void {
  if (pencil) sheet.text('pagination', oneLine('Pencil', columnHead), columnHead, pencil.label, sheet.y - underHeads - lineHeight(columnHead) + baselineIn(columnHead))
}

function headsOf({ columns, part, sizes }: PartTable): readonly ColumnHead[] {
  const head = (text: string) => [oneLine(text, columnHead)]
  const [first = '', ...others] = sizes
  const counts = columns.stitches.length > 0 ? [] : textLines(`Stitches: ${first} (${others.join(', ')})`, columnHead, columns.work.end - columns.work.start)
  return [
    { lines: [], at: live.left },
    { lines: head(part.counting), to: columns.number },
    ...(columns.side === undefined ? [] : [{ lines: head('Side'), at: columns.side }]),
    { lines: [...head('Work'), ...counts], at: columns.work.start },
    { lines: head('Repeats'), to: columns.repeats.right },
    { lines: head('Change'), to: columns.change.right },
    ...columns.stitches.map((to) => ({ lines: head('Stitches'), to })),
  ]
}

function sizeLines(columns: PartColumns, sizes: Booklet['sizes']): number {
  return Math.max(1, ...sizes.map((size) => sizeHead(size, columns).length))
}

const sizeHead = (size: string, columns: PartColumns): readonly Line[] => textLines(size, columnHead, columns.stitchesWidth)

function placeSpanningHeads(sheet: Sheet, place: Place, { columns, part, sizes }: PartTable): void {
  const height = partHeadsHeight(columns, part, sizes)
  const { y: top } = sheet
  const baseline = top + 1.3 + baselineIn(columnHead)
  const last = top + height - underHeads - lineHeight(columnHead) + baselineIn(columnHead)
  const rows = place === 'pagination' ? undefined : [sheet.tag(place, 'TR'), sheet.tag(place, 'TR')] as const
  const heads = headsOf({ columns: { ...columns, stitches: [] }, part, sizes: [] }).slice(0, columns.side === undefined ? 5 : 6)
  sheet.rule(top, weights.heavy)
  for (const [index, head] of heads.entries()) {
    const line = index === 0 ? undefined : head.lines[0]
    const cell = rows ? sheet.tag(rows[0], line ? 'TH' : 'TD', { ...(line ? { scope: 'Column' } : {}), rowSpan: 2 }) : 'pagination'
    if (line && 'to' in head) sheet.textTo(cell, line, columnHead, head.to, last)
    else if (line && 'at' in head) sheet.text(cell, line, columnHead, head.at, last)
  }
  const first = (columns.stitches[0] ?? 0) - columns.stitchesWidth
  const end = columns.stitches.at(-1) ?? first
  const spanning = rows ? sheet.tag(rows[0], 'TH', { scope: 'Column', colSpan: columns.stitches.length }) : 'pagination'
  const stitches = oneLine('Stitches', columnHead)
  sheet.text(spanning, stitches, columnHead, (first + end) / 2 - stitches.width / 2, baseline)
  sheet.rule(top + 1.3 + lineHeight(columnHead) + spanGap / 2, weights.hair, first, end)
  for (const [at, right] of columns.stitches.entries()) {
    const cell = rows ? sheet.tag(rows[1], 'TH', { scope: 'Column' }) : 'pagination'
    const lines = sizeHead(sizes[at] ?? '', columns)
    for (const [index, line] of lines.entries()) sheet.textTo(cell, line, columnHead, right, last - (lines.length - 1 - index) * lineHeight(columnHead))
  }
  sheet.y = top + height
  sheet.rule(sheet.y, weights.middle)
}
