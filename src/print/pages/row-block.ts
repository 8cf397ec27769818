import type { Part, RowLine } from '../../booklet/booklet.ts'
import { stitchesShown } from '../../booklet/stitches-shown.ts'
import { gaps, live, pencilBox, weights } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { breakLines, type Line } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles, type TypeStyle } from '../type/styles.ts'
import { oneLine, textLines } from './heads.ts'
import { linkedSpans } from './linked-words.ts'
import type { PartColumns } from './part-columns.ts'
import { placeBoxLine, rangeBoxes, type BoxLine } from './range-boxes.ts'

/** A row of the table as it is set: strips under one another in the work column, figures beside them. Height in mm. */
export interface RowBlock {
  readonly kind: 'row'
  readonly row: RowLine
  readonly strips: readonly Strip[]
  readonly repeats: readonly Line[]
  readonly change: readonly Line[]
  readonly stitches: readonly Line[]
  readonly spaces: readonly Line[]
  readonly height: number
  /** Whether it begins the row; false for what a row too tall for a page goes on with. */
  readonly begins: boolean
}

type Strip =
  | { readonly kind: 'text'; readonly line: Line; readonly style: TypeStyle; readonly height: number }
  | { readonly kind: 'boxes'; readonly line: BoxLine; readonly above: number; readonly height: number }

const padding = { above: 1, below: 1.05 }
/** Baseline under the rule on top of a row; the box stands 1 mm under it. */
const rowBaseline = 4.75
const hang = 4
/** A corrected row has a bar so far outside the margin, in mm. */
const changeBar = 3

/** Words that have a meaning to be linked to, and those that were linked before. */
export interface RowLinks {
  readonly words: ReadonlySet<string>
  readonly linked: Set<string>
}

/** Sets a row in its columns, without a place yet. */
export function rowBlock(row: RowLine, columns: PartColumns, links?: RowLinks): RowBlock {
  const { work, repeats, change, stitchesWidth } = columns
  const width = work.end - work.start
  const tall = lineHeight(styles.text)
  const text = breakLines(linkedSpans(row.text, styles.text.font, links?.words ?? new Set(), links?.linked ?? new Set()), { size: styles.text.size, width, hang })
  const counts = columns.stitches.length > 0 ? [] : textLines(countsInOneLine(row), styles.countsLine, width)
  const boxLines = rangeBoxes(row.boxes, width)
  const strips: Strip[] = [
    // A label too wide for its column stands over the text instead.
    ...(isWide(row, columns) ? [{ kind: 'text', line: { runs: [], width: 0 }, style: styles.text, height: tall } as const] : []),
    ...text.map((line): Strip => ({ kind: 'text', line, style: styles.text, height: tall })),
    ...counts.map((line): Strip => ({ kind: 'text', line, style: styles.countsLine, height: tall })),
    ...[row.checkpoint, row.corrected].flatMap((note = '') => textLines(note, styles.note, width)).map((line): Strip => ({ kind: 'text', line, style: styles.note, height: lineHeight(styles.note) })),
    ...boxLines.map((line, at): Strip => {
      const above = at === 0 ? 1.2 : 0
      const last = at === boxLines.length - 1 ? (line.items[0]?.box?.side ?? line.height) : line.height
      return { kind: 'boxes', line, above, height: above + last }
    }),
  ]
  const figures = {
    repeats: textLines(row.repeats, styles.figure, repeats.width),
    change: textLines(row.change, styles.figure, change.width),
    stitches: columns.stitches.map((_, at) => oneLine(row.stitches[at] ?? '', styles.rowNumber)),
    spaces: columns.stitches.length > 0 ? textLines(row.spaces, styles.note, Math.max(38, stitchesWidth)) : [],
  }
  const beside = Math.max(
    figures.repeats.length * tall, figures.change.length * tall, tall + figures.spaces.length * lineHeight(styles.note), pencilBox.side,
  )
  const own = Math.max(strips.reduce((sum, { height }) => sum + height, 0), beside)
  return { kind: 'row', row, strips, ...figures, height: padding.above + own + padding.below, begins: true }
}

/** `48 (56, 64, 72)`, `8` where all sizes have the same, and the spaces after it. */
export function countsInOneLine({ stitches, spaces }: Pick<RowLine, 'stitches' | 'spaces'>): string {
  const [first = '', ...others] = stitchesShown(stitches)
  return `${first}${others.length > 0 ? ` (${others.join(', ')})` : ''}${spaces === '' ? '' : `, ${spaces}`}`
}

const labelLine = (row: RowLine) => oneLine(row.label, styles.rowNumber)
const isWide = (row: RowLine, columns: PartColumns) => labelLine(row).width > labelEnd(row, columns) - labelStart(row)

const isRange = (row: RowLine) => row.boxes.length > 1
const labelStart = (row: RowLine) => live.left + (isRange(row) ? 0 : pencilBox.side + gaps.tiny)
/** A label that is too wide for the number column may run on over an empty side column. */
function labelEnd(row: RowLine, { number, range }: PartColumns): number {
  return row.side === undefined && labelLine(row).width > number - labelStart(row) ? range : number
}

/** Parts a row that is taller than a page: strips that fit in `room` mm, then the rest. All other rows stay whole. */
export function partRow(block: RowBlock, room: number): readonly RowBlock[] {
  if (block.height <= room) return [block]
  const blocks: RowBlock[] = []
  let strips: Strip[] = []
  let height = padding.above + padding.below
  const close = () => {
    const begins = blocks.length === 0
    const bare = { repeats: [], change: [], stitches: block.stitches.map(() => oneLine('', styles.rowNumber)), spaces: [] }
    blocks.push({ ...block, ...(begins ? {} : bare), strips, height, begins })
    strips = []
    height = padding.above + padding.below
  }
  for (const strip of block.strips) {
    if (strips.length > 0 && height + strip.height > room) close()
    strips.push(strip)
    height += strip.height
  }
  close()
  return blocks
}

/** Sets a row at the top of what is free, as a row of the table. */
export function placeRowBlock(sheet: Sheet, body: Tag, block: RowBlock, { columns, part }: { columns: PartColumns; part: Pick<Part, 'name' | 'counting'> }): void {
  const { row } = block
  const { y: top } = sheet
  const tr = sheet.tag(body, 'TR')
  const baseline = top + rowBaseline
  const nameOf = (box: string) => `${part.name}, ${/^\d/.test(box) ? `${part.counting} ${box}` : box}`
  const boxCell = sheet.tag(tr, 'TD')
  if (!isRange(row) && block.begins) sheet.box(boxCell, live.left, top + padding.above, pencilBox, nameOf(row.boxes[0] ?? row.label))
  const down = (cell: Tag, lines: readonly Line[], style: TypeStyle, right: number, from = baseline) => {
    for (const [at, line] of lines.entries()) sheet.textTo(cell, line, style, right, from + at * lineHeight(style))
  }
  if (row.corrected !== undefined) placeChangeBar(sheet, top, block.height)
  const head = sheet.tag(tr, 'TH', { scope: 'Row' })
  if (isWide(row, columns)) sheet.text(head, labelLine(row), styles.rowNumber, columns.work.start, baseline)
  else sheet.textTo(head, labelLine(row), styles.rowNumber, labelEnd(row, columns), baseline)
  if (columns.side !== undefined) {
    const cell = sheet.tag(tr, 'TD')
    if (row.side !== undefined && block.begins) sheet.text(cell, oneLine(row.side, styles.side), styles.side, columns.side, baseline)
  }
  placeStrips(sheet, sheet.tag(tr, 'TD'), block, { x: columns.work.start, top, nameOf })
  down(sheet.tag(tr, 'TD'), block.repeats, styles.figure, columns.repeats.right)
  down(sheet.tag(tr, 'TD'), block.change, styles.figure, columns.change.right)
  const last = columns.stitches.length - 1
  for (const [at, right] of columns.stitches.entries()) {
    const cell = sheet.tag(tr, 'TD')
    down(cell, block.stitches.slice(at, at + 1), styles.rowNumber, right)
    if (at === last) down(cell, block.spaces, styles.note, right, baseline + lineHeight(styles.text) - 0.75)
  }
  sheet.y += block.height
}

/** Beside the margin, the height of the row less a little at both ends. */
function placeChangeBar(sheet: Sheet, top: number, height: number): void {
  const x = live.left - changeBar
  sheet.line({ x1: x, y1: top + 0.6, x2: x, y2: top + height - 0.6 }, weights.heavy, 'change')
}

function placeStrips(
  sheet: Sheet, cell: Tag, block: RowBlock, { x, top, nameOf }: { x: number; top: number; nameOf: (box: string) => string },
): void {
  // Words and boxes in one cell are paragraphs of it; words alone are the cell.
  const words = block.strips.some(({ kind }) => kind === 'boxes') ? sheet.tag(cell, 'P') : cell
  let y = top + padding.above
  for (const strip of block.strips) {
    const baseline = strip.kind === 'text' && strip.style === styles.note ? baselineIn(styles.note) : rowBaseline - padding.above
    if (strip.kind === 'text') sheet.text(words, strip.line, strip.style, x, y + baseline)
    else placeBoxLine(sheet, cell, strip.line, { x, y: y + strip.above, nameOf })
    y += strip.height
  }
}

