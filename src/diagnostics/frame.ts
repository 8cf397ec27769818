import stringWidth from 'string-width'
import { lineStarts, lineText, placeOf, type Source } from '../text/source.ts'
import { cutLine } from './cut-line.ts'
import type { Label } from './diagnostic.ts'
import { plain, type Paint, type Style } from './paint.ts'
import { cellsOf, shownText, widthOf, type Cell } from './shown-line.ts'
import { wrapped } from './wrap.ts'

/** How a frame is drawn. */
export interface FrameOptions {
  readonly paint?: Paint
  /** Source lines wider than this lose unlabelled stretches. In columns; 100 when left out. */
  readonly width?: number
  /** Words beside a mark that would go beyond this column of the terminal stand below it. */
  readonly wrap?: number
  /** The style of the primary mark. */
  readonly severity?: 'error' | 'warning'
}

/** The drawn lines, and how many columns the line numbers take. */
export interface Frame {
  readonly gutter: number
  readonly lines: readonly string[]
}

/**
 * The writer's own lines with the labels under them: `^^^` is the place, `---` what it has to do with.
 *
 *     |
 *   5 |   1: ch 34, sc in 2nd ch from hook, sc in next 32 ch. (33 sc)
 *     |                                                       ------- row 1 makes 33
 */
export function frame(
  labels: { readonly primary: Label; readonly secondary: readonly Label[] },
  source: Source,
  options: FrameOptions = {},
): Frame {
  const { paint = plain, width = 100, wrap = Infinity, severity = 'error' } = options
  const marks = marksOf(labels, source, severity)
  const numbers = linesToShow(marks.map((mark) => mark.line))
  const gutter = String(Math.max(...marks.map((mark) => mark.line))).length
  const indentation = width < narrow ? commonIndentation(numbers.flatMap((number) => (number === undefined ? [] : [lineText(source, number)]))) : 0
  const bar = paint('gutter', `${' '.repeat(gutter)} |`)
  const lines = numbers.flatMap((number) => {
    if (number === undefined) return [paint('gutter', `${'…'.padStart(gutter)} |`)]
    const here = marks.filter((mark) => mark.line === number)
    const { text, under } = drawLine(lineText(source, number), here, { width, room: wrap - gutter - ' | '.length, indentation, paint })
    const first = `${paint('gutter', `${String(number).padStart(gutter)} |`)} ${text}`.trimEnd()
    return [first, ...under.map((row) => `${bar} ${row}`)]
  })
  return { gutter, lines: [bar, ...lines] }
}

/** A label on the line where it begins; offsets are in that line. */
interface Mark {
  readonly line: number
  readonly start: number
  readonly end: number
  readonly text: string
  readonly sign: '^' | '-'
  readonly style: Style
}

function marksOf(
  { primary, secondary }: { readonly primary: Label; readonly secondary: readonly Label[] },
  source: Source,
  severity: 'error' | 'warning',
): readonly Mark[] {
  const others = secondary.filter(({ span, text }) =>
    span.start !== primary.span.start || span.end !== primary.span.end || text !== primary.text)
  return [
    markOf(primary, source, '^', severity),
    ...others.map((label) => markOf(label, source, '-', 'context')),
  ]
}

function markOf({ span, text }: Label, source: Source, sign: '^' | '-', style: Style): Mark {
  const start = clamp(span.start, source.text.length)
  const end = Math.max(start, clamp(span.end, source.text.length))
  const { line, column } = placeOf(source, start)
  const lineStart = lineStarts(source)[line - 1] ?? 0
  const lineLength = lineText(source, line).length
  const lastLine = end > start ? placeOf(source, end - 1).line : line
  const goesOn = lastLine > line ? `(on to line ${lastLine})` : ''
  return {
    line,
    start: Math.min(column - 1, lineLength),
    end: Math.min(end - lineStart, lineLength),
    text: [shownText(text), goesOn].filter((words) => words !== '').join(' '),
    sign,
    style,
  }
}

function clamp(offset: number, length: number): number {
  return Math.min(Math.max(0, offset), length)
}

/** Line numbers in order; undefined stands for more than one line left out. */
function linesToShow(labelled: readonly number[]): readonly (number | undefined)[] {
  const shown: (number | undefined)[] = []
  for (const line of [...new Set(labelled)].sort((a, b) => a - b)) {
    const before = shown.at(-1)
    if (before !== undefined && line === before + 2) shown.push(line - 1)
    else if (before !== undefined && line > before + 2) shown.push(undefined)
    shown.push(line)
  }
  return shown
}

/** A mark with its columns on the screen. */
interface PlacedMark extends Mark {
  readonly column: number
  readonly width: number
}

function drawLine(line: string, marks: readonly Mark[], { width, room, indentation, paint }: { readonly width: number; readonly room: number; readonly indentation: number; readonly paint: Paint }) {
  const cells = cellsOf(line).slice(indentation)
  const runs = marks.map(({ start, end }) => runOf(cells, start, end))
  const shown = cutLine(cells, runs, width)
  const placed = marks.map((mark, index): PlacedMark => {
    const { from, to } = runs[index] ?? { from: 0, to: 0 }
    const column = columnOf(shown, cells[from])
    // The first and the last cell of a run are never cut away.
    const last = to > from ? cells[to - 1] : undefined
    const end = last ? columnOf(shown, last) + last.width : column
    return { ...mark, column, width: Math.max(1, end - column) }
  })
  return {
    text: shown.map((cell) => cell.text).join(''),
    under: bandsOf(placed).flatMap((band) => drawBand(band, paint, room)),
  }
}

/** The column at which a cell is shown; without a cell, the one behind the last. */
function columnOf(shown: readonly Cell[], cell: Cell | undefined): number {
  return widthOf(cell ? shown.slice(0, shown.indexOf(cell)) : shown)
}

/** The cells that a stretch of the line touches. */
function runOf(cells: readonly Cell[], start: number, end: number) {
  const from = cells.findIndex((cell) => cell.end > start)
  if (from === -1) return { from: cells.length, to: cells.length }
  const to = cells.findIndex((cell) => cell.start >= end)
  return { from, to: Math.max(from, to === -1 ? cells.length : to) }
}

/** Marks that would touch or overlap go into rows of their own, so that each keeps its width. The place comes first. */
function bandsOf(marks: readonly PlacedMark[]): readonly (readonly PlacedMark[])[] {
  const bands: PlacedMark[][] = []
  for (const mark of marks) {
    const apart = (other: PlacedMark) =>
      mark.column > other.column + other.width || other.column > mark.column + mark.width
    const band = bands.find((candidate) => candidate.every(apart))
    if (band) band.push(mark)
    else bands.push([mark])
  }
  return bands.map((band) => band.sort((a, b) => a.column - b.column))
}

/**
 * The underlines, the words of the rightmost beside it, those of the others below, rightmost first:
 *
 *       --------------   ^^^^^^^^^^^^^^^^^^^^^^^^^                    ---------- keeps 1 back
 *       |                works over 5 each time: 3 + 2
 *       works over 1
 */
function drawBand(band: readonly PlacedMark[], paint: Paint, room: number): readonly string[] {
  const last = band.at(-1)
  const underlines = band.map(({ column, width, sign, style }) => ({ column, text: sign.repeat(width), style }))
  const fits = last !== undefined && last.column + last.width + 1 + stringWidth(last.text) <= room
  const beside = last && last.text !== '' && fits ? [{ column: last.column + last.width + 1, text: last.text, style: last.style }] : []
  const hanging = (fits ? band.slice(0, -1) : band).filter((mark) => mark.text !== '')
  const below = hanging.map((mark, index) => {
    const lines = wrapped(mark.text, Math.max(narrowest, room))
    const column = Math.min(mark.column, Math.max(0, room - Math.max(...lines.map((line) => stringWidth(line)))))
    const bars = hanging.slice(0, index).filter((other) => other.column < column).map((other) => ({ column: other.column, text: '|', style: other.style }))
    return lines.map((text) => [...bars, { column, text, style: mark.style }])
  }).reverse().flat()
  return [[...underlines, ...beside], ...below].map((pieces) => drawRow(pieces, paint))
}

/** On a narrow screen the indentation that all shown lines have is room for words. */
function commonIndentation(lines: readonly string[]): number {
  return Math.min(...lines.filter((line) => line.trim() !== '').map((line) => line.length - line.trimStart().length))
}

const narrow = 80

// Words narrower than this are no sentence any more.
const narrowest = 24

function drawRow(pieces: readonly { column: number; text: string; style: Style }[], paint: Paint): string {
  let row = ''
  let reached = 0
  for (const { column, text, style } of pieces) {
    row += ' '.repeat(Math.max(0, column - reached)) + paint(style, text)
    reached = column + text.length
  }
  return row
}
