import { ellipse, pens } from './pens.ts'
import type { Point, Stroke } from './piece-drawing.ts'

/** A chain of a cord, and how far it is to the next, in mm on paper. */
const link = { rx: 1.7, ry: 0.72, pitch: 3.16 }
/** The share of the way around that the loop is open at its foot. */
const open = 0.07
/** How much taller than wide a loop hangs. */
const slender = 1.75

/**
 * A loop of chains standing on the top of a piece: one chain a stitch, as large as can be read. `middle` is where it stands, in mm of
 * the piece; it goes up from 0 to negative heights.
 */
export function loopStrokes(stitches: number, { middle, scale }: { readonly middle: number; readonly scale: number }): { readonly height: number; readonly strokes: readonly Stroke[] } {
  const points = path(1)
  const whole = lengthOf(points)
  const half = (stitches * link.pitch * scale) / whole
  const height = 2 * slender * half
  const sunk = 0.02 * height
  const strokes = Array.from({ length: stitches }, (_, at) => {
    const { point: [x, y], turn } = along(points, ((at + 0.5) / stitches) * whole)
    return ellipse([middle + x * half, y * half - slender * half + sunk], link.rx * scale, link.ry * scale, pens.chain, turn)
  })
  return { height: height - sunk, strokes }
}

/** The way around an upright oval that is narrower at its foot, from lower left over the top to lower right; 1 is half its width. */
function path(halfWidth: number): readonly Point[] {
  const count = 180
  return Array.from({ length: count + 1 }, (_, at): Point => {
    const angle = Math.PI * (0.5 + open) + ((2 - 2 * open) * Math.PI * at) / count
    const down = Math.sin(angle)
    return [halfWidth * Math.cos(angle) * (down > 0 ? 1 - 0.3 * down * down : 1), halfWidth * slender * down]
  })
}

function lengthOf(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, point, at) => sum + distance(points[at] ?? point, point), 0)
}

const distance = ([x1, y1]: Point, [x2, y2]: Point): number => Math.hypot(x2 - x1, y2 - y1)

/** The place so far along, and which way the line runs there, in degrees clockwise. */
function along(points: readonly Point[], length: number): { readonly point: Point; readonly turn: number } {
  let left = length
  for (const [at, to] of points.entries()) {
    const from = points[at - 1]
    if (!from) continue
    const step = distance(from, to)
    if (left <= step || at === points.length - 1) {
      const part = left / step
      return {
        point: [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part],
        turn: (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI,
      }
    }
    left -= step
  }
  return { point: [0, 0], turn: 0 }
}
