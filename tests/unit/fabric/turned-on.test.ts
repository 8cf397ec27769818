import { expect, test } from 'vitest'
import { checked } from '../checks/checked.ts'

// A half whose rows 1 to 5 are 8 wide and whose rows 6 to 10 are 6: the step of 2 lies on the side where Row 6 ends, which is the one where Rows 8
// and 10 end as well. After Row 10 it goes down 5 row-ends, 2 stitches of the step, 5 row-ends, 8 chains, up 10 row-ends and over 6: 36. By hand.
const half = (end: string): readonly string[] => checked(`  - name: Half
    rows: |
      Foundation: Ch 9.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (8)
      Rows 2-5: Ch 1, turn, sc in each st across. (8)
      Row 6: Ch 1, turn, sc in first 6 sts, leave last 2 sts unworked. (6)
      Rows 7-10: Ch 1, turn, sc in each st across. (6)
      ${end}
  - name: Border
    on: Half
    rows: |
      Rnd 1: Ch 1, sc in each of next 5 row-ends, sc in next 2 unworked sts of Row 5, sc in each of next 5 row-ends, sc in the underside of each of next 8 ch, sc in each of next 10 row-ends, sc in next 6 sts, join with sl st in first sc. Fasten off. (36)`).found.map(({ code }) => code)

test('words behind a range that say not to turn are of its last row', () => {
  expect(half('Do not turn.')).toEqual([])
  expect(half('Do not fasten off, do not turn.')).toEqual([])
})
