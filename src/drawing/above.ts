import { yarnLegend } from './ball.ts'
import { rowHeight, tallness, type InkedRow, type StitchSize } from './gauge.ts'
import { closed, ellipse, line, markWeight, pens, roundedPoints, rowWeight } from './pens.ts'
import type { Place } from '../fabric/place.ts'
import type { Form, Legend, Point, RowStrokes, Stroke } from './piece-drawing.ts'
import { mostStrokes } from './scale.ts'
import { isDrawn, layRings, type Ring, type RingPlace } from './rings.ts'

/**
 * A flat piece of rounds seen from above, each stitch standing on what it was worked into. `across` is its width in mm, when the
 * pattern says it; rounds are then drawn a little closer or wider, so that the drawing is as large as the piece.
 */
export function aboveForm(rows: readonly InkedRow[], { size, across }: { readonly size: StitchSize; readonly across?: number }): Form {
  const loose = layRings(rows, size)
  const reach = loose.at(-1)?.outer ?? 0
  const fit = across === undefined ? 1 : across / (2 * reach)
  const fitted = fit > 0.7 && fit < 1.4 ? { ...size, width: size.width * fit, height: size.height * fit } : size
  const rings = layRings(rows, fitted)
  const edge = rings.at(-1)?.path.points ?? []
  const [left, top] = [Math.min(...edge.map(([x]) => x)), Math.min(...edge.map(([, y]) => y))]
  const [width, height] = [Math.max(...edge.map(([x]) => x)) - left, Math.max(...edge.map(([, y]) => y)) - top]
  const moved = ([x, y]: Point): Point => [x - left, y - top]
  const tops = new Map<Place, Point>()
  const marks = rings.map((ring) => ringMarks(ring, { size: fitted, tops, moved }))
  return {
    view: 'above', width, height,
    outlines: [roundedPoints(edge.map(moved))],
    dimensions: [
      ...(Math.abs(width - height) > 0.02 * width ? [{ side: 'right', from: 0, to: height, says: 'length', value: height } as const] : []),
      { side: 'below', from: 0, to: width, says: 'length', value: width },
    ],
    legend: legendOf(rows, rings),
    rows: () => marks.map((strokes): RowStrokes => ({ strokes, marks: [] })),
    plainRows: (scale) => rings.map(({ path, yarn, row }): RowStrokes => ({
      strokes: ringLine(path.points.map(moved), rowWeight(yarn, rowHeight(row, fitted) / scale), rings.length), marks: [],
    })),
  }
}

/** A round as one line. A circle is one stroke; a polygon has one for each side, an oval as many as `rounds` of them leave room for. */
function ringLine(points: readonly Point[], weight: number, rounds: number): readonly Stroke[] {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  const isCircle = points.length > 8 && Math.abs(right - left - (bottom - top)) < 0.01 * (right - left)
  if (!isCircle) return closed(points.length > 8 && points.length * rounds > mostStrokes ? points.filter((_, at) => at % 2 === 0) : points, weight)
  return [ellipse([(left + right) / 2, (top + bottom) / 2], (right - left) / 2, (bottom - top) / 2, weight)]
}

interface Placing {
  readonly size: StitchSize
  /** Where the top of each place is that the rounds so far have made. */
  readonly tops: Map<Place, Point>
  readonly moved: (point: Point) => Point
}

function ringMarks(ring: Ring, placing: Placing): readonly Stroke[] {
  const weight = markWeight(ring.yarn)
  return ring.places.flatMap((one) => {
    const { point, onward } = topOf(ring, (one.from + one.to) / 2)
    placing.tops.set(one.place, point)
    if (one.place.kind === 'space') return chains(ring, one, placing, weight)
    if (!isDrawn(one)) return []
    const foot = footOf(one.place, point, ring, placing)
    return tallness(one.place.kind) >= 2
      ? upright(foot, point, onward, { half: 0.3 * Math.min(one.to - one.from, placing.size.width), weight, moved: placing.moved })
      : cross(foot, point, onward, { half: 0.34 * Math.min(one.to - one.from, 1.25 * (ring.outer - ring.inner)), weight, moved: placing.moved })
  })
}

/** Tops stay inside the edge of their round by so much of its height: what is worked on them stands clear of their bars. */
const inset = 0.1

function topOf({ path, core, inner, outer }: Ring, along: number): { readonly point: Point; readonly onward: number } {
  const { point: [x, y], onward } = path.at(along)
  const share = 1 - (inset * (outer - inner)) / outer
  const middle = Math.min(core, Math.max(-core, x))
  return { point: [middle + (x - middle) * share, y * share], onward }
}

/** Where a stitch begins: at the top of what it was worked into; else straight under its own top, at the inner edge of its round. */
function footOf(place: Place, [x, y]: Point, ring: Ring, { tops }: Placing): Point {
  const under = place.into && tops.get(place.into)
  if (under) return under
  // An oval grows from a line, everything else from a point.
  const middle = Math.min(ring.core, Math.max(-ring.core, x))
  const share = ring.inner / ring.outer
  return [middle + (x - middle) * share, y * share]
}

interface MarkOnRing {
  readonly half: number
  readonly weight: number
  readonly moved: (point: Point) => Point
}

/** A stem from where the stitch was worked to its top, and a bar along the round. */
function upright(foot: Point, top: Point, onward: number, { half, weight, moved }: MarkOnRing): readonly Stroke[] {
  // The stem begins a little over the bar of the stitch below, so that the two are told apart.
  const from: Point = [foot[0] + (top[0] - foot[0]) * 0.14, foot[1] + (top[1] - foot[1]) * 0.14]
  const [dx, dy] = [half * Math.cos(onward), half * Math.sin(onward)]
  return [line(moved(from), moved(top), weight), line(moved([top[0] - dx, top[1] - dy]), moved([top[0] + dx, top[1] + dy]), weight)]
}

function cross(foot: Point, top: Point, onward: number, { half, weight, moved }: MarkOnRing): readonly Stroke[] {
  const at = (share: number): Point => [foot[0] + (top[0] - foot[0]) * share, foot[1] + (top[1] - foot[1]) * share]
  const [dx, dy] = [half * Math.cos(onward), half * Math.sin(onward)]
  const [x, y] = at(0.55)
  return [line(moved(at(0.2)), moved(at(0.9)), weight), line(moved([x - dx, y - dy]), moved([x + dx, y + dy]), weight)]
}

/** The chains of a space, one after the other along the round. */
function chains(ring: Ring, { place, from, to }: RingPlace, { size, moved }: Placing, weight: number): readonly Stroke[] {
  const count = place.chains ?? 1
  const each = (to - from) / count
  return Array.from({ length: count }, (_, at) => {
    const { point, onward: along } = topOf(ring, from + (at + 0.5) * each)
    // A single chain in a corner lies across it, along neither side.
    const onward = count === 1 && place.corner === true ? Math.atan2(point[1], point[0]) + Math.PI / 2 : along
    const rx = 0.46 * Math.min(each, size.width)
    return ellipse(moved(point), rx, 0.4 * rx, weight === pens.mark ? pens.chain : weight, (onward * 180) / Math.PI)
  })
}

function legendOf(rows: readonly InkedRow[], rings: readonly Ring[]): Legend {
  const kinds = [...new Set(rings.flatMap(({ places }) => places.filter(isDrawn).map(({ place }) => place.kind)))]
  const low = kinds.filter((kind) => tallness(kind) < 2)
  const [only] = low
  return {
    ...(only === undefined ? {} : { cross: low.length === 1 ? only : 'stitch' }),
    increases: false, decreases: false, tall: kinds.filter((kind) => tallness(kind) >= 2),
    chains: rings.some(({ places }) => places.some(({ place }) => place.kind === 'space')), ...yarnLegend(rows),
  }
}
