import { expect, test } from 'vitest'
import { told } from './checked.ts'

// A step of 4 stitches on a piece of 10, 6 rows below it and 3 beside it: an edging up the right side takes 6 row-ends, the 4 slip-stitched
// stitches and 3 row-ends = 13. Whoever says how far it goes works every row-end as far as that. All sums by hand.
const edged = (words: string, total: number): string => `  - name: Panel
    rows: |
      Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)
      Rows 2-6: Ch 1, turn, sc in each st across. (10)
      Row 7 (RS): Turn, sl st in first 4 sts, ch 1, sc in next 6 sts. (6)
      Rows 8-9: Ch 1, turn, sc in each st across. Fasten off. (6)
  - name: Edging
    on: Panel
    rows: |
      Row 1 (RS): With RS facing, join yarn in row-end of Row 1 at the right-hand edge, ch 1, sc in each of 6 row-ends, sc in each of 4 slip-stitched sts, ${words}. Fasten off. (${total})`

test.each(['sc in each of 3 row-ends up to the top', 'sc in each of 3 row-ends to the corner', 'sc in each of the last 3 row-ends'])('%s', (words) => expect(told(edged(words, 13))).toEqual([]))

test.each([['sc in each of 2 row-ends up to the top', 12, 'row-ends-passed: row 1 goes past 1 row-end and says nothing of it']])('%s', (words, total, finding) => {
  expect(told(edged(words, total))).toEqual([finding])
})

// Common practice, no source: a tab may take any part of a side, where it does not say how far that goes.
test('a part of a side may be worked', () => expect(told(edged('sc in next row-end', 11))).toEqual([]))
