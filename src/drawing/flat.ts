import type { Place } from '../fabric/place.ts'
import { isTall, yarnLegend } from './ball.ts'
import { rowHeight, tallness, workedStitches, type InkedRow, type StitchSize } from './gauge.ts'
import { layRows, middlesOf, type LaidRow } from './lay-rows.ts'
import { edgeOf, stretches, widened } from './outline.ts'
import { closed, line, pens, roundedPoints, rowWeight } from './pens.ts'
import type { Form, LineStroke, Point, RowStrokes } from './piece-drawing.ts'

/** The widest bar of a T, in mm on paper. */
const widestBar = 1.5

/** A flat piece as it lies: one line a row, as long as the row has stitches. `border` are rounds worked around it. */
export function flatForm(rows: readonly InkedRow[], { size, border }: { readonly size: StitchSize; readonly border: readonly InkedRow[] }): Form | undefined {
  const laid = layRows(rows, size)
  if (laid.length === 0) return undefined
  const edge = border.reduce((sum, { row }) => sum + rowHeight(row, size), 0)
  const [first, last] = [Math.min(...laid.map(({ left }) => left)), Math.max(...laid.map(({ right }) => right))]
  const tallest = Math.max(...laid.map(({ top }) => top))
  const x = (across: number) => edge + (across - first) * size.width
  const y = (up: number) => edge + tallest - up
  const outlines = stretches(laid).map((stretch) => edgeOf(stretch).map(([across, up]): Point => [x(across), y(up)]))
  const [width, height] = [(last - first) * size.width, tallest]
  const told = laid.map(toldApart)
  const lines = (scale: number) => laid.map(({ left, right, base, top, yarn }): readonly LineStroke[] =>
    [line([x(left), y((base + top) / 2)], [x(right), y((base + top) / 2)], rowWeight(yarn, (top - base) / scale))])
  // A piece with shoulders is bordered by its box.
  const box: readonly Point[] = [[edge, edge], [edge + width, edge], [edge + width, edge + height], [edge, edge + height]]
  const around = borderLines(border, size, outlines.length === 1 ? (outlines[0] ?? box) : box)
  const plain = (scale: number): readonly RowStrokes[] => [...lines(scale), ...around].map((strokes) => ({ strokes, marks: [] }))
  return {
    view: 'flat', width: width + 2 * edge, height: height + 2 * edge,
    outlines: (border.length > 0 ? [around.at(-1)?.map(({ x1, y1 }): Point => [x1, y1]) ?? []] : outlines).map(roundedPoints),
    dimensions: [
      { side: 'right', from: edge, to: edge + height, says: 'length', value: height },
      { side: 'below', from: edge, to: edge + width, says: 'length', value: width },
    ],
    legend: { increases: false, decreases: false, tall: [...new Set(told.flat())], chains: false, ...yarnLegend([...rows, ...border]) },
    rows: (scale) => plain(scale).map((row, at) => {
      const own = laid[at]
      return own ? { ...row, marks: talls(own, told[at] ?? [], { scale, size, x, y }) } : row
    }),
    plainRows: plain,
  }
}

/** Kinds of a row that are told from the others by a T: tall and raised stitches where there are lower ones beside them. */
export function toldApart({ row }: Pick<LaidRow, 'row'>): readonly string[] {
  const kinds = [...new Set(workedStitches(row.fabric.made).map(({ kind }) => kind))]
  if (kinds.length < 2) return kinds.filter((kind) => kind.startsWith('FP'))
  const lowest = Math.min(...kinds.map(tallness))
  return kinds.filter((kind) => isTall(kind) && !kind.startsWith('BP') && (tallness(kind) > lowest || kind.startsWith('FP')))
}

interface OnPage {
  readonly scale: number
  readonly size: StitchSize
  readonly x: (across: number) => number
  readonly y: (up: number) => number
}

/** A T for each stitch that stands out: its bar on the row's line, its stem down to the row below. */
function talls({ row, base, top, direction, start }: LaidRow, kinds: readonly string[], { scale, size, x, y }: OnPage): readonly LineStroke[] {
  if (kinds.length === 0) return []
  const half = Math.min(widestBar * scale, 0.85 * size.width) / 2
  const [middle, foot] = [y((base + top) / 2), y(base - 0.3 * (top - base))]
  const middles = middlesOf(row.fabric.made)
  return row.fabric.made.flatMap((place: Place, at) => {
    if (!kinds.includes(place.kind)) return []
    const across = x(start + direction * (middles[at] ?? 0))
    return [line([across - half, middle], [across + half, middle], pens.tall), line([across, middle], [across, foot], pens.tall)]
  })
}

/** Rounds around an edge: each a closed line, half a round outside what is there. */
function borderLines(border: readonly InkedRow[], size: StitchSize, edge: readonly Point[]): readonly (readonly LineStroke[])[] {
  let reach = 0
  return border.map(({ row, yarn }) => {
    const height = rowHeight(row, size)
    reach += height
    return closed(widened(edge, reach - height / 2), yarn === 1 ? pens.heavyRow : pens.row)
  })
}
