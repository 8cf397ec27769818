import { isStitch, type Place } from '../fabric/place.ts'
import { placeWidth, rowHeight, rowWidth, type InkedRow, type StitchSize } from './gauge.ts'
import { widened } from './outline.ts'
import { closed, pens } from './pens.ts'
import type { LineStroke, Point } from './piece-drawing.ts'

/** A round around an edge: a closed line. */
export interface BorderLine {
  readonly points: readonly Point[]
  readonly strokes: readonly LineStroke[]
}

/** Rounds around an edge, each half a round outside what is there. Shells in the last one stand out from it. */
export function borderLines(border: readonly InkedRow[], size: StitchSize, edge: readonly Point[]): readonly BorderLine[] {
  let reach = 0
  return border.map(({ row, yarn }, at) => {
    const height = rowHeight(row, size)
    reach += height
    const line = widened(edge, reach - height / 2)
    const shells = at === border.length - 1 ? shellsIn(row.fabric.made) : []
    const points = shells.length < fewestShells ? line : scalloped(widened(edge, reach - height), shells, { height, whole: rowWidth(row) })
    return { points, strokes: closed(points, yarn === 1 ? pens.heavyRow : pens.row) }
  })
}

/** So many stitches in one place spread to a shell. */
const leastShell = 4
const fewestShells = 3

/** Where each shell of a round begins and ends, in stitches from the round's beginning. */
function shellsIn(made: readonly Place[]): readonly (readonly [number, number])[] {
  const found: [number, number][] = []
  let so = 0
  for (let at = 0; at < made.length;) {
    const { into, group } = made[at] as Place
    let count = 1
    while (at + count < made.length && isTogether(made[at + count], { into, group })) count += 1
    const width = made.slice(at, at + count).reduce((sum, place) => sum + placeWidth(place), 0)
    if (count >= leastShell) found.push([so, so + width])
    so += width
    at += count
  }
  return found
}

function isTogether(place: Place | undefined, { into, group }: Pick<Place, 'into'> & { readonly group: number | undefined }): boolean {
  if (place === undefined || !isStitch(place) || place.into === undefined || place.into !== into) return false
  // The chain that begins a round stands in the place of the first group.
  return group === undefined || place.group === group || place.group === undefined
}

interface Scallops {
  /** How far the shells stand out, in mm. */
  readonly height: number
  /** Stitches of the whole round. */
  readonly whole: number
}

/** A closed line with a bow over each shell, its shells spread along it as they are in the round. The line begins and ends at its first shell. */
function scalloped(line: readonly Point[], shells: readonly (readonly [number, number])[], { height, whole }: Scallops): readonly Point[] {
  const along = walk(line)
  const begin = startOf(line)
  const at = (stitches: number, out: number): Point => {
    const { point: [x, y], normal: [nx, ny] } = along(begin + (stitches / whole))
    return [x + nx * out, y + ny * out]
  }
  return shells.flatMap(([from, to], index) => {
    const next = shells[index + 1]?.[0] ?? whole + (shells[0]?.[0] ?? 0)
    // The stitches between two shells belong half to each.
    const before = index === 0 ? (from + (shells.at(-1)?.[1] ?? 0) - whole) / 2 : (from + (shells[index - 1]?.[1] ?? 0)) / 2
    const [start, end] = [before, (to + next) / 2]
    return bow.map(([share, out]) => at(start + share * (end - start), out * height))
  })
}

/** A bow from its foot over its top: shares of its width, and of its height. */
const bow: readonly Point[] = Array.from({ length: 7 }, (_, at) => {
  const turn = (Math.PI * at) / 7
  return [(1 - Math.cos(turn)) / 2, 0.15 + 0.85 * Math.sin(turn)]
})

/** The corner at which rounds begin: the last one of the edge, where its last row ends. */
const startOf = (_line: readonly Point[]): number => 0

/** A way along a closed line by shares of its length: the point there, and which way is out. */
function walk(line: readonly Point[]): (share: number) => { readonly point: Point; readonly normal: Point } {
  const sides = line.map((from, at) => {
    const to = line[(at + 1) % line.length] ?? from
    return { from, to, length: Math.hypot(to[0] - from[0], to[1] - from[1]) }
  })
  const whole = sides.reduce((sum, { length }) => sum + length, 0)
  return (share) => {
    let left = (share - Math.floor(share)) * whole
    for (const { from, to, length } of sides) {
      if (left <= length && length > 0) {
        const part = left / length
        return { point: [from[0] + (to[0] - from[0]) * part, from[1] + (to[1] - from[1]) * part], normal: [(to[1] - from[1]) / length, (from[0] - to[0]) / length] }
      }
      left -= length
    }
    return { point: line[0] ?? [0, 0], normal: [0, 0] }
  }
}
