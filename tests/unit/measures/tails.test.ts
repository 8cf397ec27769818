import { expect, test } from 'vitest'
import { sewingTail, tailText } from '../../../src/measures/tails.ts'

// Common practice, no source: three to four times the seam.
test('a seam of 20 cm wants a tail of 60 to 80 cm', () => {
  expect(sewingTail(20)).toEqual({ from: 60, to: 80 })
})

// Common practice, no source: a metre and a half or more to sew round a bulky cushion of two sides.
test('sewing half way round a 50 cm cushion wants a metre and a half or more', () => {
  expect(sewingTail(50).from).toBeGreaterThanOrEqual(150)
  expect(tailText(sewingTail(50).from)).toBe('1.5\u00a0m')
})

test('tails are said in whole 5 cm, and in metres when they are long', () => {
  expect(tailText(31)).toBe('35\u00a0cm')
  expect(tailText(60)).toBe('60\u00a0cm')
  expect(tailText(152)).toBe('1.75\u00a0m')
  expect(tailText(200)).toBe('2\u00a0m')
})
