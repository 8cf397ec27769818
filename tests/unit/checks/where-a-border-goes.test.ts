import { expect, test } from 'vitest'
import { textOf } from '../../../src/text/source.ts'
import { checked, flap } from './checked.ts'

// Of a border that does not come out the finding tells where it begins, which edge comes next, and between which words the gap lies. All by hand.

/** The one finding of a pattern: its labels with the words that they stand under, and its note. */
function told(pieces: string) {
  const { source, found } = checked(pieces)
  expect(found).toHaveLength(1)
  const { code, message, primary, secondary, note } = found[0]!
  return { code, message, marks: [primary, ...secondary].map((label) => `${textOf(source, label.span)}: ${label.text}`), note }
}

// The edging goes down the left side, along the foundation and up again, and forgets the end of Row 1.
test('a gap of one row-end, and the beginning at the top of the left side', () => {
  expect(told(`${flap} at the top of the left side, ch 1, sc in each of 7 row-ends, sc in underside of each of 14 ch, sc in each of last 8 row-ends. Fasten off. (29 sc)`)).toMatchObject({
    code: 'row-ends-passed',
    marks: [
      'sc in underside of each of 14 ch: goes on here, past the row-end of Row 1',
      'sc in each of 7 row-ends: before them it works here',
    ],
    note: 'it begins at the row-end of Row 8, and the 14 chains of the underside come next; it works over 7 of the 8 row-ends from Row 8 to Row 1',
  })
})

// 5 rows of 6 with an edging of 3 rows on the left side: 6 + 3 + 5 + 3 + 6 + 5 = 28, and the first 3 are forgotten.
test('a gap on a fabric of two pieces: its rows are told with their piece', () => {
  expect(told(`  - name: Strip
    rows: |
      Row 1 (RS): Ch 7, sc in 2nd ch from hook and in each ch across. (6 sc)
      Rows 2-5: Ch 1, turn, sc in each sc across. (6 sc) Fasten off after Row 5.
  - name: Edging
    on: Strip
    rows: |
      Row 1 (RS): With RS facing, join yarn in the row-end of Row 5 at the left-hand edge, ch 1, sc in each of 5 row-ends. (5 sc)
      Rows 2-3: Ch 1, turn, sc in each sc across. (5 sc) Fasten off after Row 3.
  - name: Border
    on: Strip
    rows: |
      Rnd 1 (RS): With RS facing, join yarn in first st of Row 5 of Strip, ch 1, sc in each of 6 sts of Row 5, sc in each of 5 sts of Edging, sc in each of next 3 row-ends, sc in underside of each of 6 ch, sc in each of next 5 row-ends, join with sl st in first sc. Fasten off. (25 sc)`)).toMatchObject({
    code: 'row-ends-passed',
    marks: [
      'sc in each of 5 sts of Edging: goes on here, past the row-ends from Row 1 to Row 3 of Edging',
      'sc in each of 6 sts of Row 5: before them it works here',
    ],
    note: 'it begins in stitch 1 of the 6 of Row 5 of Strip, and the row-ends from Row 1 to Row 3 of Edging come next; it works over none of the 3 row-ends from Row 1 to Row 3 of Edging',
  })
})

// The flap has no Row 9.
test('a place that the edge has not', () => {
  expect(told(`${flap} of Row 9 at the left-hand edge, ch 1, sc in each of 8 row-ends. (8 sc)`)).toMatchObject({
    code: 'place-missing',
    message: 'row 1 works into the end of row 9, but the edge that it goes along has none',
    marks: ['join yarn in the row-end of Row 9 at the left-hand edge: no such place is left here'],
  })
})
