import { laidFlat } from './belts.ts'
import type { InkedRow, StitchSize } from './gauge.ts'
import type { Limb } from './limbs.ts'
import { closed, line, pens, roundedPoints, rowWeight } from './pens.ts'
import type { Form, Point, RowStrokes } from './piece-drawing.ts'
import { moved } from './side-by-side.ts'

/** Limbs hang from their shoulders at such an angle, as on a garment that is laid out: a sixteenth of a turn. */
const lean = Math.PI / 8

/** A trunk of rounds, worked from its top, with the tubes that go off from it at either side. */
export function withLimbs(trunk: Form, rows: readonly InkedRow[], { size, limbs }: { readonly size: StitchSize; readonly limbs: readonly Limb[] }): Form {
  const solid = laidFlat(rows, size)
  const middle = trunk.width / 2
  const hung = limbs.map((limb, at) => hang(limb, { side: at === 0 ? -1 : 1, belt: solid[limb.after - 1], middle, size }))
  const points = hung.flatMap(({ outline }) => outline)
  const left = Math.min(0, ...points.map(([x]) => x))
  const right = Math.max(trunk.width, ...points.map(([x]) => x))
  const low = Math.max(trunk.height, ...points.map(([, y]) => y))
  const shifted = ([x, y]: Point): Point => [x - left, y]
  const shiftedRows = (all: readonly RowStrokes[]) => all.map(({ strokes, marks }) => ({ strokes: strokes.map((stroke) => moved(stroke, -left, 0)), marks: marks.map((stroke) => moved(stroke, -left, 0)) }))
  const plain = (scale: number): readonly RowStrokes[] => hung.flatMap((one) => shiftedRows(one.rows(scale)))
  return {
    ...trunk, width: right - left, height: low,
    outlines: [...trunk.outlines, ...hung.map(({ outline }) => outline)].map((outline) => roundedPoints(outline.map(shifted))),
    dimensions: trunk.dimensions.map((one) => (one.side === 'below' ? { ...one, from: one.from - left, to: one.to - left } : one)),
    rows: (scale) => [...plain(scale), ...shiftedRows(trunk.rows(scale))],
    plainRows: (scale) => [...plain(scale), ...shiftedRows(trunk.plainRows(scale))],
  }
}

interface Hanging {
  readonly side: 1 | -1
  /** The round of the trunk that it hangs from. */
  readonly belt: { readonly radius: number; readonly to: number } | undefined
  readonly middle: number
  readonly size: StitchSize
}

/** A tube that is turned about the outer end of the round it hangs from. Its first round runs inwards from there. */
function hang({ rows }: Limb, { side, belt, middle, size }: Hanging): { readonly outline: readonly Point[]; readonly rows: (scale: number) => readonly RowStrokes[] } {
  const solid = laidFlat(rows, size)
  const first = solid[0]?.radius ?? 0
  const [x0, y0] = [middle + side * (belt?.radius ?? 0), belt?.to ?? 0]
  const [sin, cos] = [Math.sin(lean), Math.cos(lean)]
  // Along: mm down the limb. Across: mm outwards from its middle, which lies one radius inside its shoulder.
  const at = (across: number, along: number): Point => {
    const out = across - first
    return [x0 + side * (out * cos + along * sin), y0 + along * cos - out * sin]
  }
  const edge = (sign: 1 | -1) => [at(sign * first, 0), ...solid.map(({ radius, to }) => at(sign * radius, to))]
  const outline = roundedPoints([...edge(1), ...edge(-1).toReversed()])
  return {
    outline,
    rows: (scale) => solid.map(({ radius, from, to }, index): RowStrokes => ({
      strokes: [line(at(-radius, to), at(radius, to), rowWeight(rows[index]?.yarn ?? 0, (to - from) / scale)), ...(index === solid.length - 1 ? closed(outline, pens.mark) : [])],
      marks: [],
    })),
  }
}
