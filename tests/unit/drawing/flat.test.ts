import { describe, expect, test } from 'vitest'
import { flatForm } from '../../../src/drawing/flat.ts'
import { layRows } from '../../../src/drawing/lay-rows.ts'
import { edgeOf, stretches, widened } from '../../../src/drawing/outline.ts'
import type { LineStroke } from '../../../src/drawing/piece-drawing.ts'
import { round2, worked } from './worked-piece.ts'

const size = { width: 5, height: 4 }
const places = (rows: readonly string[]) => layRows(worked(rows), size).map(({ left, right, base, top }) => [left, right, base, top])

// A stepped half, worked by hand: ten stitches, then two left at the end of each row, so that the rows step in on one side, then on the other.
const steppedHalf = [
  'Foundation: Ch 11.',
  'Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)',
  'Row 2: Ch 1, turn, sc in next 8 sts, leave rem 2 sts unworked. (8)',
  'Row 3: Ch 1, turn, sc in next 6 sts, leave rem 2 sts unworked. (6)',
]

describe('rows of a flat piece', () => {
  // Row 1 runs from right to left over 0 to 10. Row 2 comes back from the left and stops at 8. Row 3 goes left from 8 and stops at 2.
  test('stand on the stitches that they were worked into: a stepped half looks stepped', () => {
    expect(places(steppedHalf)).toEqual([[0, 10, 0, 4], [0, 8, 4, 8], [2, 8, 8, 12]])
  })

  test('an increase in the first stitch sticks out on its own side; one at each end on both', () => {
    expect(places([
      'Foundation: Ch 5.', 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (4)', 'Row 2: Ch 1, turn, 2 sc in first st, sc in each st across. (5)',
      'Row 3: Ch 1, turn, 2 sc in first st, sc in next 3 sts, 2 sc in last st. (7)',
    ]).map(([left, right]) => [left, right])).toEqual([[0, 4], [-1, 4], [-2, 5]])
  })

  // 17 + 18 + 17 = 52: the second shoulder stands on the last 17 stitches of Row 2, at the height of the first.
  test('a neck leaves two shoulders, both on the row before it', () => {
    const laid = layRows(worked([
      'Foundation: Ch 53.', 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (52)', 'Row 2: Ch 1, turn, sc in each st across. (52)',
      'Row 3: Ch 1, turn, sc in next 17 sts, leave rem 35 sts unworked. (17)',
      'Row 4: Return to unworked sts of Row 2, skip next 18 sts, join yarn in next st, sc in next 17 sts. (17)',
    ]), size)
    expect(laid.slice(2).map(({ left, right, base, top }) => [left, right, base, top])).toEqual([[35, 52, 8, 12], [0, 17, 8, 12]])
    // The body goes on as the first shoulder; the second is a stretch of its own.
    expect(stretches(laid).map((stretch) => stretch.length)).toEqual([3, 1])
  })
})

describe('the edge of a flat piece', () => {
  test('of a stepped half has its steps: up the left side, and down the right', () => {
    expect(edgeOf(layRows(worked(steppedHalf), size))).toEqual([
      [0, 0], [0, 8], [2, 8], [2, 12],
      [8, 12], [8, 4], [10, 4], [10, 0],
    ])
  })

  test('runs straight where each row is a stitch narrower on a side', () => {
    const rows = ['Foundation: Ch 6.', 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (5)', 'Row 2: Ch 1, turn, sc2tog, sc in each st across. (4)', 'Row 3: Ch 1, turn, sc in next 2 sts, sc2tog. (3)']
    // One stitch in each row of 4 mm: the slope passes the middle of each row, and goes on for half a row at both ends.
    const edge = edgeOf(layRows(worked(rows), size))
    expect(edge).toEqual([[-0.5, 0], [1, 6], [2.5, 12], [5, 12], [5, 0]])
  })

  test('is moved outwards by so much on every side', () => {
    expect(widened([[0, 0], [10, 0], [10, 5], [0, 5]], 2).map(([x, y]) => [round2(x), round2(y)])).toEqual([[-2, -2], [12, -2], [12, 7], [-2, 7]])
  })
})

describe('a flat drawing', () => {
  const form = flatForm(worked(steppedHalf), { size, border: [] })

  test('is as large as its rows: 10 stitches of 5 mm, 3 rows of 4 mm', () => {
    expect([form?.width, form?.height]).toEqual([50, 12])
    expect(form?.dimensions).toEqual([{ side: 'right', from: 0, to: 12, says: 'length', value: 12 }, { side: 'below', from: 0, to: 50, says: 'length', value: 50 }])
  })

  test('has one line a row, as long as its stitches, the first row at the foot', () => {
    const lines = form?.rows(1).map(({ strokes }) => strokes[0] as LineStroke) ?? []
    expect(lines.map(({ x1, x2, y1, y2 }) => [x1, x2, y1, y2])).toEqual([[0, 50, 10, 10], [0, 40, 6, 6], [10, 40, 2, 2]])
  })

  test('marks tall stitches among lower ones with a T, 1.5 mm wide on paper at the most', () => {
    const cloth = flatForm(worked(['Foundation: Ch 6.', 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (5)', 'Row 2: Ch 1, turn, sc in first st, *dc in next st, sc in next st; rep from * across. (5)']), { size, border: [] })
    expect(cloth?.rows(1).map(({ marks }) => marks.length)).toEqual([0, 4])
    expect(cloth?.legend.tall).toEqual(['dc'])
    const bar = (scale: number) => cloth?.rows(scale)[1]?.marks[0] as LineStroke
    expect(round2(bar(1).x2 - bar(1).x1)).toBe(1.5)
    // At one quarter 1.5 mm would be more than a stitch: 0.85 of its 5 mm.
    expect(round2(bar(4).x2 - bar(4).x1)).toBe(4.25)
    // Dc 2 and 4 of a row that goes from left to right over five stitches: 1.5 and 3.5 stitches in.
    expect(cloth?.rows(1)[1]?.marks.filter((_, at) => at % 2 === 1).map((stem) => (stem as LineStroke).x1)).toEqual([7.5, 17.5])
  })

  test('a round worked around it is a line around it, half a row outside', () => {
    const border = worked(['Rnd 1: Make an adjustable ring; 6 sc in ring. (6)'], [1])
    const edged = flatForm(worked(['Foundation: Ch 11.', 'Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)']), { size, border })
    expect([edged?.width, edged?.height]).toEqual([58, 12])
    expect(edged?.outlines).toEqual([[[2, 10], [2, 2], [56, 2], [56, 10]]])
    expect(edged?.legend.heavy).toBe(1)
  })
})
