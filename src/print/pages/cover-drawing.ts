import type { DrawingText } from '../../booklet/booklet.ts'
import type { Stroke, View } from '../../drawing/piece-drawing.ts'
import { mmPerPoint } from '../sheet/measures.ts'
import type { Placed, PlacedText } from '../sheet/placed.ts'
import { lineHeight, styles } from '../type/styles.ts'
import type { CoverDrawing } from './cover.ts'
import { oneLine } from './heads.ts'

/** Lines of measures: weight in points, bars at their ends, distance from the piece and gaps, in mm. */
const measure = { weight: 0.34, bar: 2.8, away: 7.2, gap: 3.2, guide: [0.6, 0.9] as const }
/** Half the height of the figures of a label in mm. */
const halfFigure = (0.66 * styles.note.size * mmPerPoint) / 2

/** The drawing of a booklet as it stands on the cover: in mm on paper, with its measures beside it. The loop is left out where the cover has no room for it. */
export function coverDrawing({ drawing, dimensions, scale: said, caption, alt }: DrawingText, room: number): CoverDrawing | undefined {
  const scale = drawing.scale ?? 1
  const [width, height] = [drawing.width / scale, drawing.height / scale]
  const below = dimensions.some(({ side }) => side === 'below') ? measure.away + measure.bar : 0
  const loopHeight = (drawing.loop?.height ?? 0) / scale
  const loop = drawing.loop && loopHeight + height + below <= room ? drawing.loop : undefined
  if (height + below > room) return undefined
  const left = dimensions.some(({ side }) => side === 'left') ? measure.away + measure.bar : 0.2
  const right = dimensions.some(({ side }) => side === 'right') ? measure.away + measure.bar : 0.2
  const top = loop ? loopHeight : 0
  const frame: Frame = { left, top, width, height }
  const strokes = [...drawing.strokes, ...(loop?.strokes ?? [])].map((stroke) => placedStroke(stroke, scale, frame))
  const measures = dimensions.flatMap((one) => placedMeasure({ ...one, from: one.from / scale, to: one.to / scale }, { ...frame, view: drawing.view }))
  const words = drawing.captions.flatMap(({ x, y, lines }) => lines.flatMap((text, at) => placedWords(text, left + x / scale, top + y / scale + (at + 0.7) * lineHeight(styles.note))))
  return { width: left + width + right, height: top + height + below, boxes: [...strokes, ...measures, ...words], alt, scale: said, caption }
}

/** A line of words under a piece, about its middle. */
function placedWords(text: string, middle: number, y: number): readonly PlacedText[] {
  const label = oneLine(text, styles.note)
  return label.runs.map((run) => ({ kind: 'text', page: 0, text: run.text, font: run.font, size: styles.note.size, width: run.width, x: middle - label.width / 2 + run.x, y }))
}

interface Frame {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

interface ViewedFrame extends Frame {
  readonly view: View
}

function placedStroke(stroke: Stroke, scale: number, { left, top }: Frame): Placed {
  const weight = stroke.weight / mmPerPoint
  if (stroke.kind === 'ellipse') {
    return {
      kind: 'ellipse', page: 0, x: left + stroke.x / scale, y: top + stroke.y / scale, rx: stroke.rx / scale, ry: stroke.ry / scale, turn: stroke.turn, weight,
    }
  }
  return {
    kind: 'line', page: 0, x1: left + stroke.x1 / scale, y1: top + stroke.y1 / scale, x2: left + stroke.x2 / scale, y2: top + stroke.y2 / scale,
    weight, use: 'drawing',
  }
}

/** A line with bars at its ends and its words in a gap in the middle. Where the piece is narrower than its box, dashed guides lead to it. */
function placedMeasure({ side, from, to, text }: DrawingText['dimensions'][number], frame: ViewedFrame): readonly Placed[] {
  const label = oneLine(text, styles.note)
  const upright = side !== 'below'
  const middle = (from + to) / 2
  const half = label.width / 2 + measure.gap
  // Too short a stretch has its words after it instead of inside it.
  const inside = to - from > 2 * half + 2
  const across = side === 'left' ? frame.left - measure.away : side === 'right' ? frame.left + frame.width + measure.away : frame.top + frame.height + measure.away
  const start = (upright ? frame.top : frame.left) + from
  const end = (upright ? frame.top : frame.left) + to
  const centre = (upright ? frame.top : frame.left) + middle
  const stretch = (a: number, b: number): Placed => straight(upright ? [across, a, across, b] : [a, across, b, across])
  const bar = (at: number): Placed => {
    const [a, b] = [across - measure.bar / 2, across + measure.bar / 2]
    return straight(upright ? [a, at, b, at] : [at, a, at, b])
  }
  const runs = label.runs.map((run): PlacedText => ({
    kind: 'text', page: 0, text: run.text, font: run.font, size: styles.note.size, width: run.width,
    ...(upright
      ? { x: across + halfFigure, y: centre + label.width / 2 - run.x, turned: true as const }
      : { x: (inside ? centre - label.width / 2 : end + measure.gap) + run.x, y: across + halfFigure }),
  }))
  const guides = frame.view === 'flat' ? [] : guidesOf(side, { start, end, across, frame })
  const lines = inside || upright ? [stretch(start, centre - half), stretch(centre + half, end)] : [stretch(start, end)]
  return [...lines, bar(start), bar(end), ...guides, ...runs]
}

interface Guided {
  readonly start: number
  readonly end: number
  readonly across: number
  readonly frame: ViewedFrame
}

/** Guides from the ends of a measure to where the piece is: a ball is widest halfway up, and highest in the middle. */
function guidesOf(side: 'below' | 'left' | 'right', { start, end, across, frame }: Guided): readonly Placed[] {
  const dashed = (ends: Ends): Placed => ({ ...straight(ends), dash: measure.guide })
  if (side === 'below') {
    const from = frame.top + frame.height * (frame.view === 'ball' ? 0.58 : 1) + 0.6
    return [start, end].map((x) => dashed([x, from, x, across - measure.bar / 2 - 0.4]))
  }
  const to = frame.left + frame.width * 0.37
  return side === 'left' ? [start, end].map((y) => dashed([across + measure.bar / 2 + 0.4, y, to, y])) : []
}

type Ends = readonly [x1: number, y1: number, x2: number, y2: number]

function straight([x1, y1, x2, y2]: Ends): Extract<Placed, { kind: 'line' }> {
  return { kind: 'line', page: 0, x1, y1, x2, y2, weight: measure.weight, use: 'measure' }
}
