import { expect, test } from 'vitest'
import { checked } from './checked.ts'

// Two side strips of 6 beside a middle strip of 4, 8 rows high: a band along their chains has 6 + 4 + 6 = 16, and a round about all of them has
// 16 + 9 + 16 + 9 = 50, with the end of the band on either side. All by hand.
const runner = (band: string, border: string, middle = 8): string => `  - name: Side strip
    make: 2
    rows: |
      Foundation: Ch 7.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (6)
      Rows 2-8: Ch 1, turn, sc in each st across. Fasten off. (6)
  - name: Middle strip
    rows: |
      Foundation: Ch 5.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (4)
      Rows 2-${middle}: Ch 1, turn, sc in each st across. Fasten off. (4)
  - name: Lower band
    on: [Side strip, Middle strip]
    rows: |
      Row 1 (RS): With RS facing, join yarn in the underside of first ch of second Side strip, ch 1, ${band}
  - name: Border
    on: Side strip
    rows: |
      Rnd 1 (RS): With RS facing, join yarn in first st of Row 8 of first Side strip, ch 1, ${border}
seams:
  - { join: [left side of Side strip, right side of Middle strip], by: whip stitch }
  - { join: [left side of Middle strip, right side of Side strip], by: whip stitch }`

const band = 'sc in the underside of each of the 6 ch of Side strip, sc in the underside of each of the 4 ch of Middle strip, sc in the underside of each of the 6 ch of other Side strip. Fasten off. (16)'
const border = 'sc in each of the 6 sts of Side strip, sc in each of the 4 sts of Middle strip, sc in each of the 6 sts of other Side strip, sc in each of next 9 row-ends, sc in next 16 sts of Lower band, sc in each of next 9 row-ends, join with sl st in first sc. Fasten off. (50)'

const codes = (pieces: string): readonly string[] => checked(pieces).found.map(({ code }) => code)

test('a band and a round over both copies', () => {
  expect(codes(runner(band, border))).toEqual([])
})

test('a slip is told once, whichever copy it is met on', () => {
  expect(codes(runner(band.replace('the 6 ch of Side', 'the 5 ch of Side'), border))).toHaveLength(1)
  expect(codes(runner(band, border.replace('next 9 row-ends, join', 'next 8 row-ends, join').replace('(50)', '(49)')))).toHaveLength(1)
})

test('what is told calls a copy by the name of its piece', () => {
  const { found } = checked(runner(band, border, 7))
  expect(found.map(({ code }) => code)).toContain('seam-mismatch')
  expect(found.some(({ message }) => /\(2\)/.test(message))).toBe(false)
})
