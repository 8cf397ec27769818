import { yarnLegend } from './ball.ts'
import { toldApart } from './flat.ts'
import { belts, isStuffed, laidFlat, type Belt } from './belts.ts'
import { rowWidth, type InkedRow, type StitchSize } from './gauge.ts'
import { middlesOf } from './lay-rows.ts'
import { closed, line, pens, roundedPoints } from './pens.ts'
import { roundLine } from './round-line.ts'
import type { Limb } from './limbs.ts'
import { withLimbs } from './with-limbs.ts'
import type { Form, LineStroke, Point, RowStrokes } from './piece-drawing.ts'

/** A solid of rounds from its side: each round a line as wide as the round is. A piece that is `worn` has its first round at the top. */
export function sideForm(rows: readonly InkedRow[], { size, worn, limbs = [] }: { readonly size: StitchSize; readonly worn: boolean; readonly limbs?: readonly Limb[] }): Form {
  // What has limbs is laid out as it is worn, from its shoulders down.
  const alone = limbs.length === 0 ? trunkForm(rows, { size, worn, solid: belts(rows, { size, worn }) }) : trunkForm(rows, { size, worn: true, solid: laidFlat(rows, size), limbed: true })
  return limbs.length === 0 ? alone : withLimbs(alone, rows, { size, limbs })
}

interface Trunk {
  readonly size: StitchSize
  readonly worn: boolean
  readonly solid: readonly Belt[]
  /** Sleeves or legs go off from it. */
  readonly limbed?: boolean
}

function trunkForm(rows: readonly InkedRow[], { size, worn, solid, limbed = false }: Trunk): Form {
  const radius = Math.max(...solid.map((belt) => belt.radius))
  const height = solid.at(-1)?.to ?? 0
  const y = (along: number) => (worn || isStuffed(rows) ? along : height - along)
  const told = rows.map(toldApart)
  const lines = (scale: number) => solid.map((belt, at): readonly LineStroke[] => isHidden(solid, at, scale) ? [] :
    roundLine(rows[at], { middle: radius, reach: belt.radius, level: y(belt.to), foot: y(belt.from), scale }))
  // A tube begins as wide as its first round, a closed piece at a point.
  const edge = (side: 1 | -1) => [
    [radius + (solid[0] && solid[0].to > 0 && solid[0].radius < 0.4 * radius ? 0 : side * (solid[0]?.radius ?? 0)), y(0)] as const,
    ...solid.map((belt): Point => [radius + side * belt.radius, y(belt.to)]),
  ]
  const outline = roundedPoints([...edge(-1), ...edge(1).toReversed()])
  const [widest] = solid.filter((belt) => belt.radius === radius)
  const bottom = worn ? solid.at(-1) : solid[0]
  // Where limbs have gone off, what is left is the measure of the body.
  const measured = bottom && (limbed || bottom.radius > 0.9 * radius) ? bottom : widest
  // The outline goes with the last round, which is always seen.
  const plain = (scale: number) => lines(scale).map((strokes, at): RowStrokes => ({ strokes: at === solid.length - 1 ? [...strokes, ...closed(outline, pens.mark)] : strokes, marks: [] }))
  return {
    view: 'side', width: 2 * radius, height,
    outlines: [outline],
    dimensions: [
      { side: 'left', from: 0, to: height, says: 'rounds', value: solid.filter(({ from, to }) => to - from > 1e-6).length },
      { side: 'below', from: radius - (measured?.radius ?? radius), to: radius + (measured?.radius ?? radius), says: 'around', value: 2 * Math.PI * (measured?.radius ?? radius) },
    ],
    legend: { increases: false, decreases: false, tall: [...new Set(told.flat())], chains: false, ...yarnLegend(rows) },
    rows: (scale) => plain(scale).map((row, at) => ({ ...row, marks: talls(rows[at], told[at] ?? [], { scale, size, radius, y, belt: solid[at] }) })),
    plainRows: plain,
  }
}

/** Lines nearer than this, in mm on paper, would run together. */
const nearest = 0.4

/** Whether a round lies in the plane of the next: of a flat base only the edge is seen from the side. */
function isHidden(solid: readonly Belt[], at: number, scale: number): boolean {
  const [own, next] = [solid[at], solid[at + 1]]
  return own !== undefined && next !== undefined && next.to - own.to < nearest * scale
}

interface OnBelt {
  readonly scale: number
  readonly size: StitchSize
  readonly radius: number
  readonly y: (along: number) => number
  readonly belt: Belt | undefined
}

/** A T for each stitch that stands out on the front half; those near the edge are seen narrower. */
function talls(inked: InkedRow | undefined, kinds: readonly string[], { scale, size, radius, y, belt }: OnBelt): readonly LineStroke[] {
  if (!inked || !belt || kinds.length === 0) return []
  const { made } = inked.row.fabric
  const middles = middlesOf(made)
  const count = rowWidth(inked.row)
  const half = Math.min(1.5 * scale, 0.85 * size.width) / 2
  const [top, foot] = [y(belt.to), y(belt.from)]
  return made.flatMap((place, at) => {
    const turn = ((middles[at] ?? 0) / count - 0.5) * 2 * Math.PI
    if (!kinds.includes(place.kind) || Math.abs(turn) > (86 * Math.PI) / 180) return []
    const x = radius + belt.radius * Math.sin(turn)
    const bar = half * Math.cos(turn)
    return [line([x - bar, top], [x + bar, top], pens.tall), line([x, top], [x, foot], pens.tall)]
  })
}
