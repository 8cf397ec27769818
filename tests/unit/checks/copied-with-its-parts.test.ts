import { expect, test } from 'vitest'
import { checked, told } from './checked.ts'

// A back of 6 rows that ends in two shoulders of 2 rows each, both numbered 5 and 6: 4 + 2 + 2 = 8 rows. A front whose rows are told as those of
// the back by all of their numbers has both shoulders as well. All sums by hand.
const vest = (front: string): string => `  - name: Back
    rows: |
      Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)
      Rows 2-4: Ch 1, turn, sc in each st across. (10)
      First shoulder:
      Row 5 (RS): Ch 1, turn, sc in first 3 sts, leave last 7 sts unworked. (3)
      Row 6: Ch 1, turn, sc in each st across. Fasten off. (3)
      Second shoulder: With RS facing, skip next 4 sts of Row 4, join yarn in next st.
      Row 5 (RS): Ch 1, sc in same st and in next 2 sts. (3)
      Row 6: Ch 1, turn, sc in each st across. Fasten off. (3)
  - name: Front
    rows: |
      ${front}`

/** The numbers of the rows of a piece. */
const numbersOf = (name: string, pieces: string): readonly number[] => checked(pieces).pieces.filter(({ piece }) => piece.name === name).flatMap(({ rows }) => rows.flatMap(({ number }) => number ?? []))

test.each(['Work as for Back.', 'Rows 1-6: As for Back.', 'Foundation and Rows 1-6: As for Back.', 'Foundation: Ch 11.\n      Rows 1-6: As for Back.'])('%s', (front) => {
  expect(told(vest(front))).toEqual([])
  expect(numbersOf('Front', vest(front))).toEqual([1, 2, 3, 4, 5, 6, 5, 6])
})

test('a range that ends before the parts has none of them', () => {
  expect(numbersOf('Front', vest('Rows 1-4: As for Back.\n      Row 5: Ch 1, turn, sc in each st across. (10)'))).toEqual([1, 2, 3, 4, 5])
})

// The rounds of a handle under a heading begin again at 1: they are none of the rows.
test('a section that numbers anew is not copied with the rows', () => {
  const bag = `  - name: Front
    rows: |
      Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)
      Rows 2-4: Ch 1, turn, sc in each st across. Fasten off. (10)
      Edging
      Rnd 1: With RS facing, join yarn in first st of Row 4, ch 1, sc in each st across, sc in each of 4 row-ends, sc in the underside of each of 10 ch, sc in each of 4 row-ends, join with sl st in first sc. (28)
  - name: Back
    rows: |
      Foundation: Ch 11.
      Rows 1-4: As for Front.`
  expect(numbersOf('Back', bag)).toEqual([1, 2, 3, 4])
})
