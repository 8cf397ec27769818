import { rowWidth, tallness, type InkedRow, type StitchSize } from './gauge.ts'
import { ellipse, line, markWeight, pens, roundedPoints, rowWeight } from './pens.ts'
import type { Form, Legend, Point, RowStrokes, Stroke } from './piece-drawing.ts'
import { stitchMarks, type StitchMark } from './stitch-marks.ts'

const radians = (degrees: number): number => (degrees * Math.PI) / 180
/** Stitches this far round, in degrees, are seen edge-on and left out. */
const edgeOn = 86

/** One round of a ball: how high it lies and how wide it is, in mm from the middle. */
interface Latitude {
  /** Degrees over the ball's equator. */
  readonly phi: number
  readonly y: number
  readonly radius: number
}

/** The rounds of a ball, spread evenly from top to bottom. */
export function latitudes(rounds: number, radius: number): readonly Latitude[] {
  return Array.from({ length: rounds }, (_, index) => {
    const phi = 90 - ((index + 0.5) * 180) / rounds
    return { phi, y: -radius * Math.sin(radians(phi)), radius: radius * Math.cos(radians(phi)) }
  })
}

/** A ball seen from the front: every stitch of its front half where the row has it. `across` is its width in mm, when the pattern says it. */
export function ballForm(rows: readonly InkedRow[], { size, across }: { readonly size: StitchSize; readonly across?: number }): Form {
  const widest = Math.max(...rows.map(({ row }) => rowWidth(row)))
  const radius = across === undefined ? (widest * size.width) / (2 * Math.PI) : across / 2
  const rounds = latitudes(rows.length, radius)
  const pitch = (Math.PI * radius) / rows.length
  const marked = rows.map(({ row }) => stitchMarks(row.fabric.made))
  const marks = rows.map((inked, index) => roundMarks({ ...inked, marks: marked[index] ?? [] }, { index, pitch, latitude: rounds[index], radius }))
  return {
    view: 'ball', width: 2 * radius, height: 2 * radius,
    outlines: [roundedPoints(Array.from({ length: 48 }, (_, at): Point => [radius + radius * Math.cos(radians(at * 7.5)), radius + radius * Math.sin(radians(at * 7.5))]))],
    dimensions: [
      { side: 'left', from: 0, to: 2 * radius, says: 'rounds', value: rows.length },
      { side: 'below', from: 0, to: 2 * radius, says: 'length', value: 2 * radius },
    ],
    legend: legendOf(rows, marked.flat()),
    rows: () => marks.map((strokes): RowStrokes => ({ strokes, marks: [] })),
    plainRows: (scale) => rows.map(({ yarn }, index): RowStrokes => {
      const { y = 0, radius: half = 0 } = rounds[index] ?? {}
      return { strokes: [line([radius - half, radius + y], [radius + half, radius + y], rowWeight(yarn, pitch / scale))], marks: [] }
    }),
  }
}

interface RoundToMark {
  readonly row: InkedRow['row']
  readonly yarn: number
  readonly marks: readonly StitchMark[]
}

interface OnBall {
  readonly index: number
  readonly pitch: number
  readonly latitude: Latitude | undefined
  readonly radius: number
}

/** The marks of a round. Each round begins half a stitch further on, as a spiral does. */
function roundMarks({ row, yarn, marks }: RoundToMark, { index, pitch, latitude, radius }: OnBall): readonly Stroke[] {
  const count = rowWidth(row)
  if (!latitude || count === 0) return []
  const width = (2 * Math.PI * latitude.radius) / count
  const halfHeight = 0.36 * pitch * Math.min(1, Math.max(0.5, Math.cos(radians(latitude.phi)) + 0.22))
  return marks.flatMap(({ mark, at }): readonly Stroke[] => {
    const theta = ((((at + 0.5 * index) * 360) / count + 180) % 360) - 180
    if (Math.abs(theta) >= edgeOn) return []
    const narrow = Math.cos(radians(theta))
    const x = radius + latitude.radius * Math.sin(radians(theta))
    const y = radius + latitude.y
    const weight = markWeight(yarn)
    if (yarn > 1) return [ellipse([x, y], 0.3 * width * narrow, 0.3 * width, pens.mark)]
    if (mark === 'stitch') {
      const half = 0.34 * Math.min(width, 1.25 * pitch) * narrow
      return [line([x - half, y], [x + half, y], weight), line([x, y - halfHeight], [x, y + halfHeight], weight)]
    }
    const up = mark === 'increase' ? -1 : 1
    const half = (mark === 'increase' ? 0.46 * Math.min(width, 1.3 * pitch) : 0.42 * Math.min(width, 1.1 * pitch)) * narrow
    return [
      line([x - half, y + up * halfHeight], [x, y - up * halfHeight], weight),
      line([x, y - up * halfHeight], [x + half, y + up * halfHeight], weight),
    ]
  })
}

function legendOf(rows: readonly InkedRow[], marks: readonly StitchMark[]): Legend {
  const plain = new Set(marks.filter(({ mark }) => mark === 'stitch').map(({ kind }) => kind))
  const [only] = plain
  return {
    cross: plain.size === 1 && only !== undefined ? only : 'stitch',
    increases: marks.some(({ mark }) => mark === 'increase'),
    decreases: marks.some(({ mark }) => mark === 'decrease'),
    tall: [], chains: false, ...yarnLegend(rows),
  }
}

/** Which yarns are told apart by their marks. */
export function yarnLegend(rows: readonly InkedRow[]): Pick<Legend, 'heavy' | 'circles'> {
  const yarns = rows.flatMap(({ yarn, yarns: own = [] }) => [yarn, ...own])
  return { ...(yarns.includes(1) ? { heavy: 1 } : {}), ...(yarns.includes(2) ? { circles: 2 } : {}) }
}

/** Whether a kind is drawn as a T: taller than half double, or raised by being worked round a post. */
export const isTall = (kind: string): boolean => tallness(kind) >= 3 || /^[FB]P/.test(kind)
