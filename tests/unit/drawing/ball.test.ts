import { describe, expect, test } from 'vitest'
import { ballForm, latitudes } from '../../../src/drawing/ball.ts'
import type { LineStroke, Stroke } from '../../../src/drawing/piece-drawing.ts'
import { round2, worked } from './worked-piece.ts'

const size = { width: 6.25, height: 6.25 }
const lines = (strokes: readonly Stroke[] | undefined) => (strokes ?? []).filter((stroke): stroke is LineStroke => stroke.kind === 'line')

describe('rounds of a ball', () => {
  // Spread evenly over the half circle: with three they lie 60, 0 and −60 degrees over the middle; cos 60° = ½, sin 60° = 0.866.
  test('three of radius 30 mm lie 26 mm over and under the middle one, and are half as wide', () => {
    expect(latitudes(3, 30).map(({ phi, y, radius }) => [phi, y, radius].map(round2))).toEqual([[60, -25.98, 15], [0, 0, 30], [-60, 25.98, 15]])
  })

  test('are a circle: the squares of height and radius add up to that of the ball (Pythagoras)', () => {
    for (const { y, radius } of latitudes(24, 47.5)) expect(y ** 2 + radius ** 2).toBeCloseTo(47.5 ** 2, 6)
  })

  test('as wide as the pattern says, else as wide as the widest round at the gauge: 48 stitches of 6.25 mm are 300 mm around, 95.5 mm across', () => {
    const rows = worked(['Rnd 1: Make an adjustable ring; 48 sc in ring. (48)', 'Rnds 2-3: Sc in each st around. (48)'])
    expect(ballForm(rows, { size, across: 95 }).width).toBe(95)
    expect(ballForm(rows, { size }).width).toBeCloseTo(300 / Math.PI, 6)
  })
})

describe('marks of a ball', () => {
  const rows = worked([
    'Rnd 1: Make an adjustable ring; 6 sc in ring. (6)',
    'Rnd 2: Sc in each st around. (6)',
    'Rnd 3: 2 sc in each st around. (12)',
    'Rnd 4: *Sc2tog; rep from * around. (6)',
    'Rnd 5: Sc in each st around. (6)',
  ], [0, 0, 0, 0, 1])
  const form = ballForm(rows, { size, across: 60 })
  const rounds = form.rows(1).map(({ strokes }) => lines(strokes))
  /** Radius of the third round of five, the widest: the ball's own. */
  const middle = 30

  // Stitch s of 6 in round i stands at ((s + ½) + i/2) · 60°. Round 2 (i = 1): 60, 120 … 360: in front are 60, 0 and −60 degrees.
  test('stand at even angles, each round half a stitch on; those behind the edge are left out', () => {
    const stems = rounds[1]?.filter(({ x1, x2 }) => x1 === x2).map(({ x1 }) => x1) ?? []
    // φ = 90 − 1.5 · 36 = 36°: r = 30 cos 36° = 24.27; 24.27 · sin 60° = 21.02.
    expect(stems.map((x) => round2(x - 30)).sort((a, b) => a - b)).toEqual([-21.02, 0, 21.02])
  })

  test('an increase is a V in the middle of its two stitches: 60 degrees apart, the first at (1 + 1) · 30', () => {
    const feet = rounds[2]?.filter((_, at) => at % 2 === 0).map(({ x2 }) => x2) ?? []
    expect(feet.map((x) => round2(x - 30)).sort((a, b) => a - b)).toEqual([-1, 0, 1].map((side) => round2(side * middle * Math.sin(Math.PI / 3))))
    for (const { y1, y2 } of rounds[2]?.filter((_, at) => at % 2 === 0) ?? []) expect(y2).toBeGreaterThan(y1)
  })

  test('a decrease is the same upside down', () => {
    const strokes = rounds[3] ?? []
    expect(strokes.length).toBeGreaterThan(1)
    for (const { y1, y2 } of strokes.filter((_, at) => at % 2 === 0)) expect(y2).toBeLessThan(y1)
  })

  test('of the second yarn are heavy, 0.40 mm against 0.19', () => {
    expect(new Set(rounds[0]?.map(({ weight }) => weight))).toEqual(new Set([0.19]))
    expect(new Set(rounds[4]?.map(({ weight }) => weight))).toEqual(new Set([0.4]))
    expect(form.legend).toEqual({ cross: 'sc', increases: true, decreases: true, tall: [], chains: false, heavy: 1 })
  })

  test('of a third yarn are circles, those beside them seen narrower', () => {
    const [circles] = ballForm(worked(['Rnd 1: Make an adjustable ring; 12 sc in ring. (12)']), { size, across: 60 }).rows(1)
    expect(circles?.strokes.every(({ kind }) => kind === 'line')).toBe(true)
    const [third] = ballForm(worked(['Rnd 1: Make an adjustable ring; 12 sc in ring. (12)'], [2]), { size, across: 60 }).rows(1)
    const [first] = third?.strokes ?? []
    // One round lies round the middle: a stitch is 2π · 30 / 12 wide; at 15° it is seen cos 15° of that.
    expect(first).toMatchObject({ kind: 'ellipse', ry: round2(0.3 * ((2 * Math.PI * 30) / 12)), rx: round2(0.3 * ((2 * Math.PI * 30) / 12) * Math.cos(Math.PI / 12)) })
  })
})
