import type { Booklet } from '../../booklet/booklet.ts'
import { gaps, live, liveWidth, mmPerPoint, weights } from '../sheet/measures.ts'
import type { Placed } from '../sheet/placed.ts'
import type { Sheet } from '../sheet/sheet.ts'
import { balancedLines } from '../type/balance.ts'
import { depthOf } from '../type/shape.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'
import { bandTop, placeCheckYourPrint } from './check-your-print.ts'
import { placeFacts, placeFactsBeside } from './facts.ts'
import { headFont, oneLine } from './heads.ts'
import { titleSetting } from './title-setting.ts'

/** A drawing of the finished piece, placed by its own top left corner, in mm. */
export interface CoverDrawing {
  readonly width: number
  readonly height: number
  readonly boxes: readonly Placed[]
  /** What it shows, for somebody who cannot see it. */
  readonly alt: string
  /** `Drawn full size` */
  readonly scale: string
  /** `Each mark is one stitch, each line one round.` */
  readonly caption: string
}

/** The room that a drawing may fill at the left of the cover, in mm. */
export const drawingZone = { width: 118, height: 152 }
/** Width of the facts in mm: wide beside a narrow drawing or none. */
const factsWidth = { narrow: 54, wide: 74 }

/** A drawing, once the room under the title is known, in mm. */
export type DrawingFor = (room: number) => CoverDrawing | undefined

/** Sets the cover: who publishes, the title, the facts, and the bar that shows whether the print is full size. Gives the facts it had no room for. */
export function placeCover(sheet: Sheet, booklet: Booklet, drawingFor?: DrawingFor): Booklet['facts'] {
  placeTopLine(sheet, booklet)
  sheet.bookmark(booklet.title)
  placeTitle(sheet, booklet.title)
  if (booklet.summary !== undefined) placeSubtitle(sheet, booklet.summary)
  placeChainRule(sheet)
  const top = sheet.y + gaps.large - 1
  const drawing = drawingFor?.(Math.min(drawingZone.height, bandTop - gaps.small - top))
  if (drawing) placeDrawing(sheet, drawing, top)
  const leftForFacts = liveWidth - (drawing?.width ?? 0) - gaps.large
  const width = leftForFacts < factsWidth.wide ? factsWidth.narrow : factsWidth.wide
  const { left, end } = placeFacts(sheet, booklet.facts, { x: live.right - width, top, width, bottom: bandTop - gaps.section })
  // A small drawing leaves room under it for facts that the block beside it has not.
  const beside = { x: live.left, top: top + (drawing?.height ?? 0) + gaps.section, width: liveWidth - width - gaps.large, bottom: end }
  const further = placeFactsBeside(sheet, left, beside)
  placeCheckYourPrint(sheet, drawing)
  return further
}

function placeTopLine(sheet: Sheet, booklet: Booklet): void {
  const { capitals } = styles
  sheet.rule(live.top + 0.25, weights.heavy)
  const y = live.top + 0.5 + 2 + baselineIn(capitals)
  if (booklet.publisher !== '') sheet.text(sheet.tag(sheet.root, 'P'), oneLine(booklet.publisher.toUpperCase(), capitals), capitals, live.left, y)
  if (booklet.number !== undefined) {
    sheet.textTo(sheet.tag(sheet.root, 'P'), oneLine(`Pattern ${booklet.number}`.toUpperCase(), capitals), capitals, live.right, y)
  }
  sheet.y = live.top + 0.5 + 2 + lineHeight(capitals) + 7
}

/** Large letters carry their white with them: hung so far to the left, their stems stand on the margin. */
const titleHang = 1

function placeTitle(sheet: Sheet, title: string): void {
  const font = headFont(title, 'title')
  const setting = titleSetting(title, font)
  const style = { font, tracking: -0.02, ...setting }
  const tag = sheet.tag(sheet.root, 'H1')
  for (const [at, line] of setting.lines.entries()) {
    sheet.text(tag, line, style, live.left - titleHang, sheet.y + baselineIn(style) + at * lineHeight(style))
  }
  const bottom = sheet.y + setting.lines.length * lineHeight(style)
  const last = setting.lines.at(-1)?.runs ?? []
  const depth = Math.max(0, ...last.map((run) => (run.missing ? 0 : depthOf(run.font, run.text)))) * setting.size * mmPerPoint
  // Set tight, a large g or y hangs under its own line, and would touch the letters of the next.
  const ink = bottom - lineHeight(style) + baselineIn(style) + depth
  sheet.y = Math.max(bottom + 3.2, ink + gaps.tiny)
}

function placeSubtitle(sheet: Sheet, summary: string): void {
  const { subtitle } = styles
  const tag = sheet.tag(sheet.root, 'P')
  for (const line of balancedLines([{ text: summary, font: subtitle.font }], { size: subtitle.size, width: 158 })) {
    sheet.text(tag, line, subtitle, live.left, sheet.y + baselineIn(subtitle))
    sheet.y += lineHeight(subtitle)
  }
}

/** A chain across the page: the ornament of the house. */
function placeChainRule(sheet: Sheet): void {
  const count = Math.floor(liveWidth / 3.96)
  const [rx, ry] = [2.05, 0.8]
  // The first and the last chain end on the margins, so the pitch is shared out between their middles.
  const first = live.left + rx + (weights.chain * mmPerPoint) / 2
  const pitch = (liveWidth - 2 * (first - live.left)) / (count - 1)
  sheet.y += 5
  for (let at = 0; at < count; at++) sheet.ellipse({ x: first + at * pitch, y: sheet.y + ry, rx, ry, weight: weights.chain })
  sheet.y += 1.6
}

function placeDrawing(sheet: Sheet, drawing: CoverDrawing, top: number): void {
  const figure = sheet.tag(sheet.root, 'Figure', { alt: drawing.alt })
  for (const box of drawing.boxes) sheet.put(figure, box, live.left, top)
}
