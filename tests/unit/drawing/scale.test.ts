import { describe, expect, test } from 'vitest'
import { drawPiece } from '../../../src/drawing/draw-piece.ts'
import { loopStrokes } from '../../../src/drawing/loop.ts'
import { mostStrokes, scaleFor } from '../../../src/drawing/scale.ts'
import { worked } from './worked-piece.ts'

const size = { width: 6.25, height: 6.25, stitch: 'sc' }

describe('the scale of a drawing', () => {
  // The largest of full size, a half, a quarter, a sixth … at which a piece fits 96 by 120 mm.
  test.each([[95, 95, 1], [96, 120, 1], [96.1, 60, 2], [60, 120.1, 2], [250, 255, 4], [300, 500, 6], [300, 820, 8], [1000, 900, 12], [1300, 1800, 16]])('%f by %f mm is drawn 1 to %i', (width, height, scale) => {
    expect(scaleFor({ width, height })).toBe(scale)
  })

  test('is not told without a gauge: the piece fills its room, and its widest row is 96 mm', () => {
    const drawing = drawPiece({ parts: [{ shape: 'flat', rows: worked(['Foundation: Ch 9.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (8)', 'Rows 2-4: Ch 1, turn, sc in each st across. (8)']) }], worn: false })
    expect(drawing?.scale).toBeUndefined()
    expect([drawing?.width, drawing?.height]).toEqual([96, 48])
  })
})

describe('a drawing has 1,500 strokes at the most', () => {
  // 300 rows with 100 T marks each would be 60,300 strokes: the marks go, the 300 lines stay.
  test('a blanket loses its marks first', () => {
    const rows = worked(['Foundation: Ch 202.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (201)', 'Rows 2-301: Ch 1, turn, sc in first st, *dc in next st, sc in next st; rep from * across. (201)'])
    const drawing = drawPiece({ parts: [{ shape: 'flat', rows }], size, worn: false })
    expect(drawing?.strokes).toHaveLength(301)
    expect(drawing?.everyRow).toBe(1)
    expect(drawing?.legend.tall).toEqual([])
  })

  // 86° on both sides of 180° are seen: 76 to 77 of 160 stitches, two strokes each. All of 14 rounds are over 2,100 strokes, every second and the last, eight in all, are 1,230.
  test('a large ball has every second round, and its last', () => {
    const rows = worked(['Rnd 1: Make an adjustable ring; 160 sc in ring. (160)', 'Rnds 2-14: Sc in each st around. (160)'])
    const drawing = drawPiece({ parts: [{ shape: 'ball', rows }], size, across: 90, worn: false })
    expect([drawing?.everyRow, drawing?.rows]).toEqual([2, 14])
    expect(drawing?.strokes.length).toBeLessThanOrEqual(mostStrokes)
    expect(drawing?.strokes.length).toBeGreaterThan(8 * 150)
  })

  test('one of 40 such rounds has a line for each', () => {
    const rows = worked(['Rnd 1: Make an adjustable ring; 160 sc in ring. (160)', 'Rnds 2-40: Sc in each st around. (160)'])
    expect(drawPiece({ parts: [{ shape: 'ball', rows }], size, across: 240, worn: false })).toMatchObject({ everyRow: 1, strokes: { length: 40 }, legend: { increases: false } })
  })

  test('2,000 rows are thinned until they can be told apart', () => {
    const rows = worked(['Foundation: Ch 4.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (3)', 'Rows 2-2000: Ch 1, turn, sc in each st across. (3)'])
    const drawing = drawPiece({ parts: [{ shape: 'flat', rows }], size, worn: false })
    expect([drawing?.everyRow, drawing?.strokes.length]).toEqual([2, 1001])
  })
})

describe('a loop on a piece', () => {
  const loop = loopStrokes(24, { middle: 47.5, scale: 1 })

  test('has a chain for each stitch, all over the edge that it stands on but for its foot', () => {
    expect(loop.strokes).toHaveLength(24)
    const low = loop.strokes.filter((stroke) => stroke.kind === 'ellipse' && stroke.y > 1)
    expect(low).toEqual([])
  })

  test('is the same on both sides of its middle', () => {
    const xs = loop.strokes.map((stroke) => (stroke.kind === 'ellipse' ? Math.round((stroke.x - 47.5) * 10) : 0)).sort((a, b) => a - b)
    for (const [at, x] of xs.entries()) expect(Math.abs(x + (xs[xs.length - 1 - at] ?? NaN))).toBeLessThanOrEqual(1)
  })

  test('has its chains 3.16 mm apart on paper', () => {
    const steps = loop.strokes.slice(1).map((stroke, at) => {
      const before = loop.strokes[at]
      return stroke.kind === 'ellipse' && before?.kind === 'ellipse' ? Math.hypot(stroke.x - before.x, stroke.y - before.y) : 0
    })
    // Along the curve; straight across it is a little less.
    for (const step of steps) expect(step).toBeGreaterThan(2.9)
    for (const step of steps) expect(step).toBeLessThan(3.2)
  })
})

describe('what there is nothing true to draw of', () => {
  test('is not drawn: two rows, rows that could not be counted, no rows', () => {
    expect(drawPiece({ parts: [{ rows: worked(['Foundation: Ch 4.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (3)', 'Row 2: Ch 1, turn, sc in each st across. (3)']) }], size, worn: false })).toBeUndefined()
    expect(drawPiece({ parts: [], size, worn: false })).toBeUndefined()
    const three = worked(['Foundation: Ch 4.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (3)', 'Rows 2-3: Ch 1, turn, sc in each st across. (3)'])
    expect(drawPiece({ parts: [{ rows: three }], size, worn: false })).toBeDefined()
    expect(drawPiece({ parts: [{ rows: three.map((one, at) => (at === 1 ? { ...one, row: { ...one.row, verdict: 'cannot-tell' as const } } : one)) }], size, worn: false })).toBeUndefined()
  })
})
