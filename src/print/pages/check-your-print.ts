import { weights } from '../sheet/measures.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'
import type { CoverDrawing } from './cover.ts'
import { oneLine, textLines } from './heads.ts'

/** Top of the band at the foot of the cover, in mm. */
export const bandTop = 237.5

const columns = { caption: { x: 18, width: 76 }, check: { x: 99, width: 41 }, bar: { x: 145.5, length: 50 } }

/** Sets the band at the foot of the cover: what the drawing shows, and a bar of 50 mm to lay a ruler on. */
export function placeCheckYourPrint(sheet: Sheet, drawing: Pick<CoverDrawing, 'scale' | 'caption'> | undefined): void {
  if (drawing) placeNote(sheet, drawing.scale, drawing.caption, columns.caption)
  placeNote(sheet, 'Check your print', 'Lay a ruler here. If it does not read 50 mm, print again at 100%.', columns.check)
  placeBar(sheet)
}

function placeNote(sheet: Sheet, head: string, text: string, { x, width }: { x: number; width: number }): void {
  const { label, band } = styles
  sheet.text(sheet.tag(sheet.root, 'P'), oneLine(head, label), label, x, bandTop + baselineIn(label))
  const tag = sheet.tag(sheet.root, 'P')
  for (const [at, line] of textLines(text, band, width).entries()) {
    sheet.text(tag, line, band, x, bandTop + lineHeight(label) + at * lineHeight(band) + baselineIn(band))
  }
}

/** The bar: 50 mm between the outer ticks, a tick each 5 mm, a longer one each 10 mm. */
function placeBar(sheet: Sheet): void {
  const { x, length } = columns.bar
  const { barLabel } = styles
  const base = bandTop + 8.7
  const figure = sheet.tag(sheet.root, 'Figure', { alt: 'A bar that is 50 mm long when the print is full size.' })
  sheet.text(figure, oneLine('0', barLabel), barLabel, x, bandTop + 3.4)
  sheet.textTo(figure, oneLine('50 mm', barLabel), barLabel, x + length, bandTop + 3.4)
  const draw = (x1: number, y1: number, x2: number, y2: number) => sheet.line({ x1, y1, x2, y2 }, weights.bar, 'measure', figure)
  draw(x, base, x + length, base)
  for (let at = 0; at <= length; at += 5) draw(x + at, base, x + at, base - (at % 10 === 0 ? 2.6 : 1.4))
}

