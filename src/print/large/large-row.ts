import type { Part, RowLine } from '../../booklet/booklet.ts'
import { oneLine } from '../pages/heads.ts'
import { live, liveWidth, mmPerPoint } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import type { Line } from '../type/break-lines.ts'
import { lineHeight } from '../type/styles.ts'
import { changeInWords, inWords, repeatsInWords, stitchesInWords } from './in-words.ts'
import { large, largeBox, largeCell, wordsIndent } from './large-styles.ts'
import { largeLines, linesOf } from './large-text.ts'

/** A row of large print as it is set, or one page's worth of a range that no page holds. Height in mm. */
export interface LargeRow {
  readonly kind: 'row'
  readonly row: RowLine
  /** Whether it begins the row: then it has the number. */
  readonly begins: boolean
  readonly strips: readonly Strip[]
  readonly height: number
}

type Strip =
  | { readonly kind: 'text'; readonly line: Line; readonly height: number }
  | { readonly kind: 'boxes'; readonly boxes: readonly LargeBoxItem[]; readonly height: number }
  | { readonly kind: 'figures'; readonly left: Line | undefined; readonly right: Line; readonly height: number }

interface LargeBoxItem {
  readonly x: number
  readonly label?: Line
  /** Where the label starts; a label after the box ends a line of a tally. */
  readonly labelAt: number
  readonly row?: string
  readonly side: typeof largeBox | typeof largeCell
}

const width = liveWidth - wordsIndent
const body = lineHeight(large.body)
/** The baseline of the first line under the top of its row, and the air under the last. */
const firstBaseline = 11.7
const below = 6.4
/** The box under the number, from the top of the row. */
const boxTop = 16.6
const beforeFigures = 1.6
/** How far the top of boxes stands over the baseline that a line of text would have in their place. */
const boxRise = 4.74
const hang = 8

/** Sets a row: its words, its boxes, then one line with what was reckoned. `isFirst`: the part's first row, which changes nothing. */
export function largeRow(row: RowLine, { sides, isFirst }: Pick<Part, 'sides'> & { readonly isFirst: boolean }): LargeRow {
  const side = sides && row.side !== undefined ? `${row.side === 'RS' ? 'Right' : 'Wrong'} side. ` : ''
  const spans = [...(side === '' ? [] : [{ text: side, font: large.strong.font }]), ...row.text.map((run) => ({ text: inWords(run.text), repeat: run.repeat, font: large.body.font }))]
  const strips: Strip[] = [
    ...(isWide(row) ? [{ kind: 'text', line: { runs: [], width: 0 }, height: body } as const] : []),
    ...largeLines(spans, width, { hang }).map((line): Strip => ({ kind: 'text', line, height: body })),
    ...[row.checkpoint, row.corrected].flatMap((note = '') => linesOf(inWords(note), width)).map((line): Strip => ({ kind: 'text', line, height: body })),
    ...boxStrips(row.boxes),
    ...figureStrips(row, isFirst),
  ]
  return { kind: 'row', row, begins: true, strips, height: heightOf(strips, row) }
}

/** The number stands in the room beside the words; a longer label stands over them. */
const isWide = (row: RowLine) => oneLine(row.label, large.number).width > wordsIndent - 2

function heightOf(strips: readonly Strip[], { boxes }: RowLine): number {
  const own = firstBaseline + strips.slice(1).reduce((sum, { height }) => sum + height, 0) + below
  return Math.max(own, boxes.length === 1 ? boxTop + largeBox.side + 4 : 0)
}

/** Parts a row that is taller than a page. */
export function partLargeRow(row: LargeRow, room: number): readonly LargeRow[] {
  if (row.height <= room) return [row]
  const parts: LargeRow[] = []
  let strips: Strip[] = []
  const close = () => {
    parts.push({ ...row, begins: parts.length === 0, strips, height: heightOf(strips, row.row) })
    strips = []
  }
  for (const strip of row.strips) {
    if (strips.length > 0 && heightOf([...strips, strip], row.row) > room) close()
    strips.push(strip)
  }
  close()
  return parts
}

/** One line, left what happens to the count, right the count; two where both are long. Spaces that are counted stand under it. */
function figureStrips(row: RowLine, isFirst: boolean): readonly Strip[] {
  const right = oneLine(stitchesInWords(row.stitches.join(', ')), large.strong)
  const room = width - right.width - 6
  const reckoned = [repeatsInWords(row.repeats), isFirst && row.change === '' ? '' : changeInWords(row.change)]
  const left = linesOf(reckoned.filter((text) => text !== '').map((text) => `${text.replace(/^n/, 'N')}.`).join(' '), width)
  const last = left.at(-1)
  const together = last !== undefined && last.width <= room
  const lines = together ? left.slice(0, -1) : left
  const spaces = linesOf(row.spaces === '' ? '' : `${inWords(row.spaces)}.`, width)
  return [
    ...lines.map((line, at): Strip => ({ kind: 'text', line, height: body + (at === 0 ? beforeFigures : 0) })),
    { kind: 'figures', left: together ? last : undefined, right, height: body + (lines.length === 0 ? beforeFigures : 0) },
    ...spaces.map((line): Strip => ({ kind: 'text', line, height: body })),
  ]
}

const mostBoxes = 12
const tallyLine = 10

/** Boxes of a range, with their numbers beside them; more than twelve are a grid of tens. */
function boxStrips(rows: readonly string[]): readonly Strip[] {
  if (rows.length < 2) return []
  return rows.length > mostBoxes ? tallyStrips(rows) : spreadBoxes(rows)
}

function spreadBoxes(rows: readonly string[]): readonly Strip[] {
  const lines: LargeBoxItem[][] = []
  let x = 0
  for (const row of rows) {
    const label = oneLine(row, large.body)
    const pitch = label.width + 3 + largeBox.side
    if (lines.length === 0 || x + pitch > width) {
      lines.push([])
      x = 0
    }
    lines.at(-1)?.push({ label, labelAt: x, x: x + label.width + 3, row, side: largeBox })
    x += pitch + 4
  }
  return lines.map((boxes) => ({ kind: 'boxes', boxes, height: largeBox.side + 4 }))
}

function tallyStrips(rows: readonly string[]): readonly Strip[] {
  const labels = rows.map((row) => oneLine(row, large.small))
  const start = Math.max(...labels.map((label) => label.width)) + 3
  const edge = (at: number) => start + at * largeCell.side + (at >= 5 ? 2 : 0)
  const strips: Strip[] = []
  for (let from = 0; from < rows.length; from += tallyLine) {
    const own = rows.slice(from, from + tallyLine)
    const boxes = own.map((row, at): LargeBoxItem => {
      const label = at === 0 ? labels[from] : undefined
      return { x: edge(at), row, side: largeCell, labelAt: start - 3 - (label?.width ?? 0), ...(label ? { label } : {}) }
    })
    const last = labels[from + own.length - 1]
    if (last && own.length > 1) boxes.push({ x: 0, labelAt: edge(own.length - 1) + largeCell.side + 3, label: last, side: largeCell })
    strips.push({ kind: 'boxes', boxes, height: largeCell.side + (from + tallyLine >= rows.length ? 4 : 0) })
  }
  return strips
}

/** Sets a row at the top of what is free, as a row of the table. */
export function placeLargeRow(sheet: Sheet, tbody: Tag, { row, begins, strips, height }: LargeRow, part: Pick<Part, 'name' | 'counting'>): void {
  const nameOf = (box: string) => `${part.name}, ${/^\d/.test(box) ? `${part.counting} ${box}` : box}`
  const tr = sheet.tag(tbody, 'TR')
  const top = sheet.y
  const head = sheet.tag(tr, begins ? 'TH' : 'TD', begins ? { scope: 'Row' } : {})
  if (begins) sheet.text(head, oneLine(row.label, large.number), large.number, live.left, top + firstBaseline)
  const boxCell = sheet.tag(tr, 'TD')
  if (begins && row.boxes.length === 1) {
    sheet.box(boxCell, live.left, top + boxTop + (isWide(row) ? body : 0), largeBox, nameOf(row.boxes[0] ?? row.label))
  }
  const cell = sheet.tag(tr, 'TD')
  const x = live.left + wordsIndent
  let baseline = top + firstBaseline
  let words: Tag | undefined
  for (const strip of strips) {
    if (strip.kind === 'boxes') {
      words = undefined
      placeBoxes(sheet, sheet.tag(cell, 'P'), strip.boxes, { x, y: baseline - boxRise, nameOf })
    } else if (strip.kind === 'text') {
      // Words of the row, and words that were reckoned, are paragraphs of their own.
      if (strip.height > body) words = undefined
      words ??= sheet.tag(cell, 'P')
      sheet.text(words, strip.line, large.body, x, baseline + strip.height - body)
    } else {
      words = undefined
      const figures = sheet.tag(cell, 'P')
      const y = baseline + strip.height - body
      if (strip.left) sheet.text(figures, strip.left, large.body, x, y)
      sheet.textTo(figures, strip.right, large.strong, live.right, y)
    }
    baseline += strip.height
  }
  sheet.y = top + height
}

function placeBoxes(sheet: Sheet, paragraph: Tag, boxes: readonly LargeBoxItem[], { x, y, nameOf }: { readonly x: number; readonly y: number; readonly nameOf: (row: string) => string }): void {
  for (const { x: left, label, labelAt, row, side } of boxes) {
    const style = side === largeCell ? large.small : large.body
    const baseline = y + side.side / 2 + (0.66 * style.size * mmPerPoint) / 2
    if (label) sheet.text(paragraph, label, style, x + labelAt, baseline)
    if (row !== undefined) sheet.box(paragraph, x + left, y, side, nameOf(row))
  }
}
