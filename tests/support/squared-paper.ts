/**
 * A flat piece drawn on squared paper: every stitch is one square, every row a stretch of squares on its own line. The outline is
 * what a pencil draws round the squares: a square's free upper edge is a stitch that waits, a free side is a row-end, a free lower
 * edge is the underside of a chain. It knows nothing of rows, hooks or turning beyond that, and shares nothing with the engine.
 */

/** Squares `from` to `to - 1` of a line, from the left; worked to the right or to the left. */
export interface Line {
  readonly from: number
  readonly to: number
  readonly toRight: boolean
  /** How high it lies; left out where every row lies on the one before it. */
  readonly level?: number
}

/** A free edge of a square: of which row (from 0), and which square it is in the order of its row's working (from 1). */
export interface FreeEdge {
  readonly side: 'top' | 'row-end' | 'underside'
  readonly row: number
  readonly stitch: number
}

/** Free edges of one sort that follow one another. */
export interface Section {
  readonly side: FreeEdge['side']
  readonly count: number
}

interface Step {
  readonly edge: FreeEdge
  readonly from: string
  readonly to: string
}

/** The outline from the end of the last row, clockwise or the other way, every free edge by itself. */
export function pencilLine(lines: readonly Line[], turned: boolean): readonly FreeEdge[] {
  const last = lines.at(-1)
  if (!last) return []
  const steps = lines.flatMap((line, row) => stepsRound(lines, line, row))
  const from = new Map(steps.map((step) => [step.from, step]))
  // The hook stands at the upper corner where the last row ended. The pencil goes clockwise: with a row worked to the right the first
  // stroke goes down its right side.
  const corner = point(last.toRight ? last.to : last.from, levelOf(last, lines.length - 1) + 1)
  const clockwise: FreeEdge[] = []
  for (let at = corner; clockwise.length < steps.length; ) {
    const step = from.get(at)
    if (!step) throw new Error(`the pencil finds no edge at ${at}`)
    clockwise.push(step.edge)
    at = step.to
  }
  return last.toRight === turned ? clockwise.toReversed() : clockwise
}

/** Free edges of the same sort together, as a border is written. */
export function sectionsOf(edges: readonly FreeEdge[]): readonly Section[] {
  const sections: { side: FreeEdge['side']; count: number }[] = []
  for (const { side } of edges) {
    const before = sections.at(-1)
    if (before?.side === side) before.count += 1
    else sections.push({ side, count: 1 })
  }
  return sections
}

/** The piece seen from behind, each row still worked the way it was: what began a row now ends it. */
export function mirrored(lines: readonly Line[]): readonly Line[] {
  return lines.map((line) => ({ ...line, from: -line.to, to: -line.from }))
}

const levelOf = (line: Line, row: number): number => line.level ?? row

const point = (x: number, y: number): string => `${x},${y}`

/** Strokes round the squares of one line that have no neighbour, the square always on the right hand of the pencil. */
function stepsRound(lines: readonly Line[], line: Line, row: number): readonly Step[] {
  const level = levelOf(line, row)
  const filled = (x: number, y: number): boolean => lines.some((other, index) => levelOf(other, index) === y && x >= other.from && x < other.to)
  const steps: Step[] = []
  for (let x = line.from; x < line.to; x += 1) {
    const stitch = line.toRight ? x - line.from + 1 : line.to - x
    const edge = (side: FreeEdge['side'], from: string, to: string): void => { steps.push({ edge: { side, row, stitch }, from, to }) }
    if (!filled(x, level + 1)) edge('top', point(x, level + 1), point(x + 1, level + 1))
    if (!filled(x + 1, level)) edge('row-end', point(x + 1, level + 1), point(x + 1, level))
    if (!filled(x, level - 1)) edge('underside', point(x + 1, level), point(x, level))
    if (!filled(x - 1, level)) edge('row-end', point(x, level), point(x, level + 1))
  }
  return steps
}
