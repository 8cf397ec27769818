import { expect, test } from 'vitest'
import { told } from './checked.ts'

// A panel of 8 by 6 with bands of 3 rows on its sides; an end strip goes over 3 row-ends of a band, 8 stitches and 3 row-ends = 14. Without `each` three
// along three rows are all of them, as `14 sc along 14 rows` are (common practice, no source). All sums by hand.
const strip = (right: string, left: string, total = 14): string => `  - name: Panel
    rows: |
      Foundation: Ch 9.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (8)
      Rows 2-6: Ch 1, turn, sc in each st across. Fasten off. (8)
  - name: Right band
    on: Panel
    rows: |
      Row 1 (RS): With RS facing, join yarn in row-end of Row 1 at the right-hand edge, ch 1, sc in each of 6 row-ends. (6)
      Rows 2-3: Ch 1, turn, sc in each st across. Fasten off. (6)
  - name: Left band
    on: Panel
    rows: |
      Row 1 (RS): With RS facing, join yarn in row-end of Row 6 at the left-hand edge, ch 1, sc in each of 6 row-ends. (6)
      Rows 2-3: Ch 1, turn, sc in each st across. Fasten off. (6)
  - name: End strip
    on: [Right band, Panel, Left band]
    rows: |
      Row 1 (RS): With RS facing, join yarn in the end of Row 3 of Right band, ch 1, ${right}, sc in each of the 8 sts of Panel, ${left}. (${total})
      Row 2: Ch 1, turn, sc in each st across. Fasten off. (${total})`

test.each([
  ['3 sc in the row-ends of Right band', '3 sc in the row-ends of Left band'],
  ['3 sc down the ends of Rows 3-1 of Right band', '3 sc up the ends of Rows 1-3 of Left band'],
  ['3 sc along the row-ends of Right band', '3 sc along the row-ends of Left band'],
])('%s', (right, left) => {
  expect(told(strip(right, left))).toEqual([])
  expect(told(strip(right, left, 13))).not.toEqual([])
})

// 3 in each of 3 row-ends on either side: 9 + 8 + 9 = 26.
test('so many in each are so many in each', () => expect(told(strip('3 sc in each row-end of Right band', '3 sc in each row-end of Left band', 26))).toEqual([]))
