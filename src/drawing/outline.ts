import type { LaidRow } from './lay-rows.ts'
import type { Point } from './piece-drawing.ts'

/** Rows that stand on one another without a break: a body, a shoulder, a sleeve worked on. */
export function stretches(rows: readonly LaidRow[]): readonly (readonly LaidRow[])[] {
  const out: LaidRow[][] = []
  for (const row of rows) {
    const under = out.find((stretch) => standsOn(row, stretch.at(-1)))
    if (under) under.push(row)
    else out.push([row])
  }
  return out
}

function standsOn(row: LaidRow, below: LaidRow | undefined): boolean {
  return below !== undefined && Math.abs(row.base - below.top) < 1e-6 && row.left < below.right && row.right > below.left
}

/** A slope of so many stitches a row or less is drawn as a slope, a longer one as a step. */
const steepest = 1.5

/** The edge of a stretch of rows, clockwise from its upper left corner, when up is up: across in stitches, up in mm. */
export function edgeOf(rows: readonly LaidRow[]): readonly Point[] {
  const right = side(rows.map(({ right, base, top }) => ({ across: right, base, top })))
  const left = side(rows.map(({ left, base, top }) => ({ across: left, base, top })))
  return [...left, ...right.toReversed()]
}

/** One side from the foundation up. A step turns two corners; a slope runs through the middle of its rows, and out at both of its ends. */
function side(rows: readonly { readonly across: number; readonly base: number; readonly top: number }[]): readonly Point[] {
  const slopes = (from: number, to: number) => {
    const change = (rows[to]?.across ?? NaN) - (rows[from]?.across ?? NaN)
    return Math.abs(change) <= steepest ? change : undefined
  }
  return rows.flatMap(({ across, base, top }, at): readonly Point[] => {
    const [below, above] = [slopes(at - 1, at), slopes(at, at + 1)]
    return [
      ...(below === undefined ? [[across - (above ?? 0) / 2, base] as const] : []),
      ...(below !== undefined && above !== undefined && (below !== 0 || above !== 0) ? [[across, (base + top) / 2] as const] : []),
      ...(above === undefined ? [[across + (below ?? 0) / 2, top] as const] : []),
    ]
  })
}

/** A closed line moved outwards by so much on every side. The line goes clockwise on a page, where down is more. */
export function widened(points: readonly Point[], by: number): readonly Point[] {
  return points.map((point, at) => {
    const before = normal(points.at(at - 1) ?? point, point)
    const after = normal(point, points[(at + 1) % points.length] ?? point)
    const between = 1 + before[0] * after[0] + before[1] * after[1]
    // Nearly back on itself there is no corner to keep sharp.
    const reach = by / Math.max(0.5, between)
    return [point[0] + (before[0] + after[0]) * reach, point[1] + (before[1] + after[1]) * reach]
  })
}

/** The outward direction of an edge, one long. */
function normal([x1, y1]: Point, [x2, y2]: Point): Point {
  const length = Math.hypot(x2 - x1, y2 - y1)
  return length === 0 ? [0, 0] : [(y2 - y1) / length, (x1 - x2) / length]
}
