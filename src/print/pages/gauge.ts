import type { Booklet, GaugeText } from '../../booklet/booklet.ts'
import { gaps, live, mmPerPoint, weights } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { baselineIn, lineHeight, styles, type TypeStyle } from '../type/styles.ts'
import { oneLine, placeHead, textLines } from './heads.ts'

const textWidth = 112
const window = { side: 50, tick: 1.6, middleTick: 2.6 }
/** Side of the gauge window in mm. */
export const windowSide = window.side
const blank = { length: 32, gap: 2, between: 6 }

/** Sets the gauge in words, two lines to write on, and a window of 5 cm to lay the swatch on. */
export function placeGauge(sheet: Sheet, gauge: GaugeText, terms: Booklet['terms']): void {
  const { text } = styles
  const paragraphs = gauge.paragraphs.map((paragraph) => textLines(paragraph, text, textWidth))
  const linesHeight = paragraphs.reduce((sum, lines) => sum + lines.length * lineHeight(text), 0)
  const textHeight = gaps.small + linesHeight + (paragraphs.length - 1) * gaps.under + gaps.section + lineHeight(styles.partLine)
  // The UK's word for it is tension.
  placeHead(sheet, terms === 'UK' ? 'Tension' : 'Gauge', { follows: Math.min(Math.max(textHeight, window.side - lineHeight(styles.head)), 200), width: textWidth })
  const headTop = sheet.y - lineHeight(styles.head)
  const { page } = sheet
  sheet.y += gaps.small
  for (const [at, lines] of paragraphs.entries()) {
    const tag = sheet.tag(sheet.root, 'P')
    for (const line of lines) {
      if (lineHeight(text) > sheet.room && !sheet.isFresh) sheet.newPage()
      sheet.text(tag, line, text, live.left, sheet.y + baselineIn(text))
      sheet.y += lineHeight(text)
    }
    if (at < paragraphs.length - 1) sheet.y += gaps.under
  }
  placeBlanks(sheet)
  if (gauge.window && sheet.page === page) {
    // The outer half of the line stays on the margin.
    placeWindow(sheet, gauge.window, { top: headTop + 0.6, right: live.right - (weights.window * mmPerPoint) / 2, style: styles.note })
    sheet.y = Math.max(sheet.y, headTop + 0.6 + window.side)
  }
}

/** Where the maker writes down the hook and the swatch that gave the gauge. */
function placeBlanks(sheet: Sheet): void {
  const { partLine } = styles
  if (gaps.section + lineHeight(partLine) > sheet.room) sheet.newPage()
  sheet.y += gaps.section
  const y = sheet.y + baselineIn(partLine)
  const tag = sheet.tag(sheet.root, 'P')
  let x: number = live.left
  for (const label of ['My hook', 'My swatch']) {
    const line = oneLine(label, partLine)
    sheet.text(tag, line, partLine, x, y)
    x += line.width + blank.gap
    sheet.rule(y + 0.6, weights.hair, x, x + blank.length)
    x += blank.length + blank.between
  }
  sheet.y += lineHeight(partLine)
}

/** Draws the window with its right side at `right`: 50 mm from the middle of one line to the middle of the other. */
export function placeWindow(
  sheet: Sheet, { stitches, rows, label }: NonNullable<GaugeText['window']>, { top, right, style }: { readonly top: number; readonly right: number; readonly style: TypeStyle },
): void {
  const left = right - window.side
  const bottom = top + window.side
  const alt = `A square that is 5 cm wide when the print is full size, with ${stitches} stitches marked along its width and ${rows} rows along its height.`
  const figure = sheet.tag(sheet.root, 'Figure', { alt })
  const draw = line(sheet, figure)
  draw(left, top, right, top)
  draw(right, top, right, bottom)
  draw(right, bottom, left, bottom)
  draw(left, bottom, left, top)
  for (const { at, tick } of ticks(stitches)) {
    draw(left + at, top, left + at, top + tick)
    draw(left + at, bottom, left + at, bottom - tick)
  }
  for (const { at, tick } of ticks(rows)) {
    draw(left, top + at, left + tick, top + at)
    draw(right, top + at, right - tick, top + at)
  }
  const lines = textLines(label, style, window.side - 2 * window.middleTick - style.size * 0.6)
  const middle = top + window.side / 2 - (lines.length * lineHeight(style)) / 2 + baselineIn(style)
  for (const [at, text] of lines.entries()) {
    sheet.text(figure, text, style, left + (window.side - text.width) / 2, middle + at * lineHeight(style))
  }
}

const line = (sheet: Sheet, figure: Tag) => (x1: number, y1: number, x2: number, y2: number) =>
  sheet.line({ x1, y1, x2, y2 }, weights.window, 'measure', figure)

/** A tick for each whole stitch or row inside the window; the one in the middle is longer. */
function ticks(count: number): readonly { readonly at: number; readonly tick: number }[] {
  const pitch = window.side / count
  const marks = []
  for (let number = 1; number * pitch < window.side - 0.01; number++) {
    const at = number * pitch
    marks.push({ at, tick: Math.abs(at - window.side / 2) < 0.01 ? window.middleTick : window.tick })
  }
  return marks
}
