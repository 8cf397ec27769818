import type { EllipseStroke, LineStroke, Point } from './piece-drawing.ts'

/** Weights of strokes in mm on paper. */
export const pens = { mark: 0.19, heavyMark: 0.4, tall: 0.2, row: 0.12, thinRow: 0.09, heavyRow: 0.26, heavyRun: 0.6, chain: 0.19 }

/** Marks of the second yarn are heavy, so that it is told from the first in black. */
export const markWeight = (yarn: number): number => (yarn === 1 ? pens.heavyMark : pens.mark)

/** A row's line is thinner where rows lie close: `pitch` is mm on paper from row to row. */
export function rowWeight(yarn: number, pitch: number): number {
  return yarn === 1 ? pens.heavyRow : pitch < 1.2 ? pens.thinRow : pens.row
}

/** A hundredth of a mm is finer than any printer: rounding keeps files small. */
const rounded = (value: number): number => Math.round(value * 100) / 100 + 0

export function line([x1, y1]: Point, [x2, y2]: Point, weight: number): LineStroke {
  return { kind: 'line', x1: rounded(x1), y1: rounded(y1), x2: rounded(x2), y2: rounded(y2), weight }
}

export function ellipse([x, y]: Point, rx: number, ry: number, weight: number, turn = 0): EllipseStroke {
  return { kind: 'ellipse', x: rounded(x), y: rounded(y), rx: rounded(rx), ry: rounded(ry), turn: rounded(turn), weight }
}

/** A closed line through points, as strokes. */
export function closed(points: readonly Point[], weight: number): readonly LineStroke[] {
  return points.map((point, at) => line(point, points[(at + 1) % points.length] ?? point, weight))
}

export function roundedPoints(points: readonly Point[]): readonly Point[] {
  return points.map(([x, y]) => [rounded(x), rounded(y)])
}
