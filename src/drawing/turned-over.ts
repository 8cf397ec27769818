import type { Form, Point, RowStrokes, Stroke } from './piece-drawing.ts'

/** A form turned by half a turn, so that its first row is at the top. Nothing is mirrored. */
export function turnedOver(form: Form): Form {
  const { width, height } = form
  const turned = ([x, y]: Point): Point => [width - x, height - y]
  const strokeOf = (stroke: Stroke): Stroke => (stroke.kind === 'ellipse'
    ? { ...stroke, x: width - stroke.x, y: height - stroke.y }
    : { ...stroke, x1: width - stroke.x1, y1: height - stroke.y1, x2: width - stroke.x2, y2: height - stroke.y2 })
  const rows = (all: readonly RowStrokes[]): readonly RowStrokes[] => all.map(({ strokes, marks }) => ({ strokes: strokes.map(strokeOf), marks: marks.map(strokeOf) }))
  return { ...form, outlines: form.outlines.map((points) => points.map(turned)), rows: (scale) => rows(form.rows(scale)), plainRows: (scale) => rows(form.plainRows(scale)) }
}
