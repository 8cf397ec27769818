import type { DrawingText } from '../booklet/booklet.ts'

type Drawing = DrawingText['drawing']
type Stroke = Drawing['strokes'][number]

/** Strokes of one weight as the path of an SVG. */
export interface DrawnPath {
  /** In mm on paper. */
  readonly weight: number
  readonly d: string
}

/** A tenth of a mm is less than a pixel of any screen. */
const short = (value: number) => String(Math.round(value * 10) / 10 + 0)

/** A drawing as paths, those of one weight together. Lengths in mm of the piece. */
export function drawnPaths(strokes: readonly Stroke[]): readonly DrawnPath[] {
  const byWeight = Map.groupBy(strokes, ({ weight }) => weight)
  return [...byWeight].map(([weight, own]) => ({ weight, d: own.map((stroke) => (stroke.kind === 'line' ? lineOf(stroke) : ellipseOf(stroke))).join('') }))
}

function lineOf({ x1, y1, x2, y2 }: Extract<Stroke, { kind: 'line' }>): string {
  const from = `M${short(x1)} ${short(y1)}`
  if (y1 === y2) return `${from}H${short(x2)}`
  return x1 === x2 ? `${from}V${short(y2)}` : `${from}L${short(x2)} ${short(y2)}`
}

function ellipseOf({ x, y, rx, ry, turn }: Extract<Stroke, { kind: 'ellipse' }>): string {
  const [dx, dy] = [rx * Math.cos((turn * Math.PI) / 180), rx * Math.sin((turn * Math.PI) / 180)]
  const arc = `A${short(rx)} ${short(ry)} ${short(turn)} 1 0 `
  return `M${short(x - dx)} ${short(y - dy)}${arc}${short(x + dx)} ${short(y + dy)}${arc}${short(x - dx)} ${short(y - dy)}`
}

/** The box that holds a drawing and its loop, with so many mm of the piece around them: left, top, width, height. */
export function viewBoxOf({ width, height, loop }: Drawing, around: number): string {
  const above = loop?.height ?? 0
  return [-around, -above - around, width + 2 * around, height + above + 2 * around].map(short).join(' ')
}
