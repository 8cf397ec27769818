import { describe, expect, test } from 'vitest'
import { diameterOf, lengthOf, rowsFor, stitchesFor, widthOf } from '../../../src/measures/size.ts'

const gauge = { sts: 16, rows: 12, over: 10 }

describe('size from gauge', () => {
  // The trade's one formula: measurement × gauge = count. 72 stitches at 16 to 10 cm are 45 cm, the made-up error of an editor's list.
  test('72 stitches at 16 to 10 cm are 45 cm', () => {
    expect(widthOf(72, gauge)).toBe(45)
    expect(stitchesFor(45, gauge)).toBe(72)
  })

  test('30 rows at 12 to 10 cm are 25 cm', () => {
    expect(lengthOf(30, gauge)).toBe(25)
    expect(rowsFor(25, gauge)).toBe(30)
  })

  // A designer's sum: 92 cm ÷ 10 × 15 = 138.
  test('92 cm at 15 to 10 cm take 138 stitches', () => {
    expect(stitchesFor(92, { sts: 15, rows: 15, over: 10 })).toBe(138)
  })

  // Circumference ÷ π: 48 stitches at 16 to 10 cm are 30 cm around, 9.549 cm across.
  test('48 stitches around are 9.5 cm across', () => {
    expect(diameterOf(48, gauge)).toBeCloseTo(9.549, 3)
  })
})
