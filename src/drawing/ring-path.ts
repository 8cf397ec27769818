import type { Point } from './piece-drawing.ts'

/** A closed way around the middle of a flat piece of rounds. Lengths in mm, from its beginning, the way that rounds are worked. */
export interface RingPath {
  readonly length: number
  /** How far it is to the middle of the far end of an oval. */
  readonly farEnd: number
  /** The place after so many mm, and which way is onward there, in radians from rightwards, clockwise on the page. */
  readonly at: (along: number) => { readonly point: Point; readonly onward: number }
  /** Its line as points, for an outline. */
  readonly points: readonly Point[]
}

/** A polygon around [0, 0] with its first corner at the lower left; `reach` is from the middle to the middle of a side. Right-handed rounds run anticlockwise. */
export function polygonPath(corners: number, reach: number): RingPath {
  const turn = (2 * Math.PI) / corners
  const radius = reach / Math.cos(turn / 2)
  const points = Array.from({ length: corners }, (_, at): Point => {
    const angle = Math.PI / 2 + turn / 2 - at * turn
    return [radius * Math.cos(angle), radius * Math.sin(angle)]
  })
  const side = 2 * reach * Math.tan(turn / 2)
  return {
    length: side * corners, farEnd: 0, points,
    at: (along) => {
      const whole = ((along / side) % corners + corners) % corners
      const index = Math.floor(whole)
      const [from, to] = [points[index] ?? [0, 0], points[(index + 1) % corners] ?? [0, 0]]
      const part = whole - index
      return { point: [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part], onward: Math.atan2(to[1] - from[1], to[0] - from[0]) }
    },
  }
}

/** Where the line of a half circle has its points, as shares of it; straight sides need none between their ends. */
const bends = Array.from({ length: 37 }, (_, at) => at / 36)

/** A circle, or with a `core` two half circles with straight sides of that length between them: a disc, an oval. It begins where the lower side does. */
export function ovalPath(radius: number, core: number): RingPath {
  const arc = Math.PI * radius
  const length = 2 * (arc + core)
  // Without straight sides the end of one half is the beginning of the other.
  const ends = core === 0 ? bends.slice(0, -1) : bends
  const at = (along: number): { readonly point: Point; readonly onward: number } => {
    const s = ((along % length) + length) % length
    if (s < core) return { point: [-core / 2 + s, radius], onward: 0 }
    if (s < core + arc) {
      const angle = Math.PI / 2 - (s - core) / radius
      return { point: [core / 2 + radius * Math.cos(angle), radius * Math.sin(angle)], onward: angle - Math.PI / 2 }
    }
    if (s < 2 * core + arc) return { point: [core / 2 - (s - core - arc), -radius], onward: Math.PI }
    const angle = -Math.PI / 2 - (s - 2 * core - arc) / radius
    return { point: [-core / 2 + radius * Math.cos(angle), radius * Math.sin(angle)], onward: angle - Math.PI / 2 }
  }
  return { length, farEnd: core + arc / 2, at, points: [core, 2 * core + arc].flatMap((start) => ends.map((share) => at(start + share * arc).point)) }
}
