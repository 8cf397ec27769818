import { describe, expect, test } from 'vitest'
import { aboveForm } from '../../../src/drawing/above.ts'
import { belts } from '../../../src/drawing/belts.ts'
import type { EllipseStroke, LineStroke } from '../../../src/drawing/piece-drawing.ts'
import { ovalPath, polygonPath } from '../../../src/drawing/ring-path.ts'
import { layRings } from '../../../src/drawing/rings.ts'
import { sideForm } from '../../../src/drawing/side.ts'
import { round2, worked } from './worked-piece.ts'

/** Stitches of 2π mm: a round of n stitches has a radius of n mm. */
const size = { width: 2 * Math.PI, height: 6 }

const disc = ['Rnd 1: Make an adjustable ring; 6 sc in ring. (6)', 'Rnd 2: 2 sc in each st around. (12)', 'Rnd 3: *Sc in next st, 2 sc in next st; rep from * around. (18)']

describe('a solid of rounds from its side', () => {
  test('a tube stands upright: each round as wide as its stitches ÷ π, one row higher', () => {
    const tube = worked(['Foundation: Ch 10, join with sl st in first ch to form a ring.', 'Rnd 1: Sc in each ch around. (10)', 'Rnds 2-3: Sc in each st around. (10)'])
    expect(belts(tube, { size, worn: false }).map(({ radius, from, to }) => [radius, from, to].map(round2))).toEqual([[10, 0, 6], [10, 6, 12], [10, 12, 18]])
  })

  // Rounds that grow by as much as they are high (6 stitches, 6 mm) lie in one plane; then the wall rises 6 mm a round.
  test('a flat base lies flat, and what is not seen of it is not drawn', () => {
    const basket = worked([...disc, 'Rnds 4-5: Sc in each st around. (18)'])
    expect(belts(basket, { size, worn: false }).map(({ to }) => round2(to))).toEqual([0, 0, 0, 6, 12])
    const form = sideForm(basket, { size, worn: false })
    expect(form.plainRows(1).map(({ strokes }) => strokes.some((stroke) => stroke.kind === 'line'))).toEqual([false, false, true, true, true])
    // The base is at the foot, 36 mm wide; the rim at the top.
    const [rim] = form.plainRows(1)[4]?.strokes as LineStroke[]
    const [base] = form.plainRows(1)[2]?.strokes as LineStroke[]
    expect([rim?.y1, base?.y1, base && base.x2 - base.x1]).toEqual([0, 12, 36])
  })

  // Half as steep: a round grows by 3 mm over 6 mm of fabric, and rises by √(36 − 9).
  test('a cone keeps the height of its fabric along its slope (Pythagoras)', () => {
    const cone = worked(['Foundation: Ch 6, join with sl st in first ch to form a ring.', 'Rnd 1: Sc in each ch around. (6)', 'Rnd 2: *Sc in next st, 2 sc in next st; rep from * around. (9)'])
    const [first, second] = belts(cone, { size, worn: false })
    expect((second?.to ?? 0) - (first?.to ?? 0)).toBeCloseTo(Math.sqrt(27), 9)
  })

  // A quarter circle of radius R is πR/2 long: 18 · 1.5708 = 28.27 mm, four rounds of 6 mm and two thirds of the fifth.
  test('a hat goes over the head as half a ball, and then straight down', () => {
    const hat = worked([...disc, 'Rnds 4-8: Sc in each st around. (18)'])
    const worn = belts(hat, { size, worn: true })
    expect(worn.slice(0, 4).map(({ radius }) => round2(radius))).toEqual([6, 12, 18, 24].map((along) => round2(18 * Math.sin(along / 18))))
    expect(worn[4]?.radius).toBe(18)
    // All fabric is there: half a ball of 18 mm, and 48 − 28.27 mm of tube.
    expect(worn.at(-1)?.to).toBeCloseTo(18 + (48 - (Math.PI * 18) / 2), 6)
    const form = sideForm(hat, { size, worn: true })
    const [brim] = form.plainRows(1)[7]?.strokes as LineStroke[]
    expect(brim?.y1).toBeCloseTo(form.height, 1)
  })

  test('says how far it is around, and how many rounds it has', () => {
    const { dimensions } = sideForm(worked(['Foundation: Ch 10, join with sl st in first ch to form a ring.', 'Rnd 1: Sc in each ch around. (10)']), { size, worn: false })
    expect(dimensions.map(({ side, says, value }) => [side, says, round2(value)])).toEqual([['left', 'rounds', 1], ['below', 'around', round2(10 * 2 * Math.PI)]])
  })
})

describe('paths around a middle', () => {
  test('of a square with sides of 20 mm begins at its lower left corner and runs along its foot', () => {
    const path = polygonPath(4, 10)
    expect(path.points.map((point) => point.map(round2))).toEqual([[-10, 10], [10, 10], [10, -10], [-10, -10]])
    expect(path.length).toBeCloseTo(80, 9)
    expect(path.at(5).point.map(round2)).toEqual([-5, 10])
    expect(path.at(30).point.map(round2)).toEqual([10, 0])
  })

  test('of an oval: two straight sides and two half circles', () => {
    const path = ovalPath(5, 8)
    expect(path.length).toBeCloseTo(16 + 10 * Math.PI, 9)
    expect(path.at(4).point.map(round2)).toEqual([0, 5])
    expect(path.at(path.farEnd).point.map(round2)).toEqual([9, 0])
  })
})

const square = [
  'Rnd 1: Make an adjustable ring; ch 3 (counts as dc), 2 dc in ring, ch 2, [3 dc in ring, ch 2] 3 times, join with sl st in top of beg ch-3. (12 dc, 4 ch-2 sps)',
  'Rnd 2: Sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, *dc in each of next 3 dc**, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * around, ending last rep at **, join with sl st in top of beg ch-3. (28 dc, 4 ch-2 sps)',
]

describe('rounds from above', () => {
  test('with four corners are a square: the middle of every corner space lies on a diagonal', () => {
    const rings = layRings(worked(square), size)
    for (const { places, path } of rings) {
      const corners = places.filter(({ place }) => place.kind === 'space').map(({ from, to }) => path.at((from + to) / 2).point)
      expect(corners).toHaveLength(4)
      for (const [x, y] of corners) expect(Math.abs(x)).toBeCloseTo(Math.abs(y), 6)
    }
    // A corner of Round 2 stands over the corner that it was worked into.
    const [first, second] = rings
    const corner = first?.places.find(({ place }) => place.kind === 'space')
    const over = second?.places.filter(({ place }) => place.into === corner?.place) ?? []
    expect(over.length).toBeGreaterThanOrEqual(4)
    const [x = 0, y = 0] = first && corner ? first.path.at((corner.from + corner.to) / 2).point : []
    for (const { from, to } of over) {
      const point = second?.path.at((from + to) / 2).point ?? [0, 0]
      expect([Math.sign(point[0]), Math.sign(point[1])]).toEqual([Math.sign(x), Math.sign(y)])
    }
  })

  test('show every stitch and every chain: 40 dc of two strokes, 8 spaces of 2 chains', () => {
    const strokes = aboveForm(worked(square), { size }).rows(1).flatMap((row) => row.strokes)
    expect(strokes.filter(({ kind }) => kind === 'line')).toHaveLength(80)
    expect(strokes.filter(({ kind }) => kind === 'ellipse')).toHaveLength(16)
  })

  test('are as wide as the pattern says the piece is', () => {
    const form = aboveForm(worked(square), { size, across: 30 })
    expect([form.width, form.height].map(round2)).toEqual([30, 30])
    expect(form.dimensions).toEqual([{ side: 'below', from: 0, to: form.width, says: 'length', value: form.width }])
  })

  test('of a disc are circles one row apart, each drawn as one when stitches are too many', () => {
    const form = aboveForm(worked(disc), { size })
    const circles = form.plainRows(1).map(({ strokes }) => strokes[0] as EllipseStroke)
    // A quarter of a row is the hole of the ring: 1.5, then 6 mm a round.
    expect(circles.map(({ rx }) => rx)).toEqual([7.5, 13.5, 19.5])
    expect(form.rows(1).map(({ strokes }) => strokes.length)).toEqual([12, 24, 36])
  })

  test('of an oval have the stitches of the last chain around its far end', () => {
    const [ring] = layRings(worked(['Foundation: Ch 6.', 'Rnd 1: Sc in 2nd ch from hook, sc in next 3 ch, 3 sc in last ch; working along other side of chain, sc in next 3 ch, 2 sc in same ch as first sc. (12)']), size)
    const last = ring?.places.filter(({ place }, _, all) => place.into === all[5]?.place.into) ?? []
    expect(last).toHaveLength(3)
    const middle = last[1]
    const [x = 0, y = 1] = ring && middle ? ring.path.at((middle.from + middle.to) / 2).point : []
    expect(Math.abs(y)).toBeLessThan(0.01)
    // Five chains are four stitches from the first to the last: half of that, and the round's own height.
    expect(x).toBeCloseTo(2 * size.width + 6, 1)
  })
})
