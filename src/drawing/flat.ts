import { isSpace, type Place } from '../fabric/place.ts'
import { isTall, yarnLegend } from './ball.ts'
import { placeWidth, rowHeight, tallness, yarnRuns, workedStitches, type InkedRow, type StitchSize } from './gauge.ts'
import { layRows, middlesOf, type LaidRow } from './lay-rows.ts'
import { borderLines } from './border-lines.ts'
import { edgeOf, stretches } from './outline.ts'
import { line, pens, roundedPoints, rowWeight } from './pens.ts'
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
  const lines = (scale: number, gaps: boolean) => laid.map((own): readonly LineStroke[] => {
    const level = y((own.base + own.top) / 2)
    const parts = gaps ? solid(own) : [[own.left, own.right] as const]
    const whole = parts.map(([from, to]) => line([x(from), level], [x(to), level], rowWeight(own.yarns ? 0 : own.yarn, (own.top - own.base) / scale)))
    return [...whole, ...otherYarns(own).map(([from, to]) => line([x(from), level], [x(to), level], pens.heavyRun))]
  })
  // A piece with shoulders is bordered by its box.
  const box: readonly Point[] = [[edge, edge], [edge + width, edge], [edge + width, edge + height], [edge, edge + height]]
  const around = borderLines(border, size, outlines.length === 1 ? (outlines[0] ?? box) : box)
  const drawn = (scale: number, gaps: boolean): readonly RowStrokes[] => [...lines(scale, gaps), ...around.map(({ strokes }) => strokes)].map((strokes) => ({ strokes, marks: [] }))
  return {
    view: 'flat', width: width + 2 * edge, height: height + 2 * edge,
    outlines: (border.length > 0 ? [around.at(-1)?.points ?? []] : outlines).map(roundedPoints),
    dimensions: [
      { side: 'right', from: edge, to: edge + height, says: 'length', value: height },
      { side: 'below', from: edge, to: edge + width, says: 'length', value: width },
    ],
    legend: { increases: false, decreases: false, tall: [...new Set(told.flat())], chains: false, ...yarnLegend([...rows, ...border]) },
    rows: (scale) => drawn(scale, true).map((row, at) => {
      const own = laid[at]
      return own ? { ...row, marks: talls(own, told[at] ?? [], { scale, size, x, y }) } : row
    }),
    plainRows: (scale) => drawn(scale, false),
  }
}

/** The stretches of a row that are stitches, across: where chains stand over a gap the row is open. */
function solid({ row, direction, start, left, right }: LaidRow): readonly (readonly [number, number])[] {
  const { made } = row.fabric
  if (!made.some(isSpace)) return [[left, right]]
  const middles = middlesOf(made)
  const found: [number, number][] = []
  let open = false
  for (const [at, place] of made.entries()) {
    const width = placeWidth(place)
    if (width === 0) continue
    const middle = start + direction * (middles[at] ?? 0)
    const last = found.at(-1)
    if (isSpace(place)) open = false
    else if (open && last) last[1] = middle + (direction * width) / 2
    else {
      found.push([middle - (direction * width) / 2, middle + (direction * width) / 2])
      open = true
    }
  }
  return found
}

/** The stretches of a row in several colours that are in another than the first, across. */
function otherYarns({ row, yarns, direction, start }: LaidRow): readonly (readonly [number, number])[] {
  if (!yarns) return []
  const middles = middlesOf(row.fabric.made)
  const across = (at: number) => start + direction * (middles[at] ?? 0)
  return yarnRuns(yarns).filter(({ yarn }) => yarn > 0).map(({ from, to }) => [across(from) - direction / 2, across(to - 1) + direction / 2])
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
