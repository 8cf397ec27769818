import { describe, expect, test } from 'vitest'
import {
  cmFromInches, inchesFromCm, metresFromYards, nearestHalfCm, nearestQuarterInch, ouncesFromGrams, quarterInchText, yardsFromMetres,
} from '../../../src/measures/units.ts'

// Printed pairs of inches and centimetres from the leaflets of a yarn company (codes CAC0129-028772M, CAK0429-008079M,
// BRC0129-030555M, CAC0129-029305M, CAC0129-010202M).
const printed = [
  [28, 71], [34, 86.5], [36, 91.5], [38, 96.5], [40, 101.5], [42, 106.5], [44, 112], [46, 117], [48, 122], [53, 134.5], [54, 137],
  [56, 142], [59, 150], [60, 152.5], [62, 157.5], [64, 162.5], [66, 167.5], [68, 172.5], [40.5, 103], [44.5, 113],
] as const

describe('inches and centimetres', () => {
  test.each(printed)('%s in is printed as %s cm', (inches, cm) => {
    expect(nearestHalfCm(cmFromInches(inches))).toBe(cm)
  })

  // The international inch, 1959: 1 in = 2.54 cm exactly.
  test('an inch is 2.54 cm', () => {
    expect(cmFromInches(1)).toBe(2.54)
    expect(inchesFromCm(2.54)).toBe(1)
  })

  // By hand: 9.5 ÷ 2.54 = 3.740, nearest quarter 3.75; 30 ÷ 2.54 = 11.811 → 11.75; 40 ÷ 2.54 = 15.748 → 15.75; 82 ÷ 2.54 = 32.283 → 32.25.
  test.each([[9.5, '3¾'], [30, '11¾'], [40, '15¾'], [82, '32¼'], [7.62, '3'], [1.27, '½'], [0.6, '¼'], [0, '0'], [2.5, '1']])(
    '%s cm is shown as %s in', (cm, shown) => {
      expect(quarterInchText(inchesFromCm(cm))).toBe(shown)
    })

  test('inches go to the nearest quarter', () => {
    expect(nearestQuarterInch(3.6)).toBe(3.5)
    expect(nearestQuarterInch(3.63)).toBe(3.75)
  })
})

describe('metres, yards, grams, ounces', () => {
  // The international yard, 1959: 1 yd = 0.9144 m exactly.
  test('a yard is 0.9144 m', () => {
    expect(metresFromYards(1)).toBe(0.9144)
    expect(yardsFromMetres(0.9144)).toBe(1)
  })

  // A published worked estimate of yarn for a square of 34 × 34 in of half double crochet: 37,669.96 in = 1,046.4 yd = 956.8 m.
  test('37,669.96 in of yarn is 1,046.4 yd and 956.8 m', () => {
    const metres = cmFromInches(37_669.96) / 100
    expect(metres).toBeCloseTo(956.8, 1)
    expect(yardsFromMetres(metres)).toBeCloseTo(1046.4, 1)
  })

  // The avoirdupois ounce: 28.3495 g.
  test('an ounce is 28.3495 g', () => {
    expect(ouncesFromGrams(28.3495)).toBe(1)
  })
})
