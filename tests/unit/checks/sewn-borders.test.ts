import { expect, test } from 'vitest'
import { told } from './checked.ts'

// Two squares of 6 stitches by 6 rows. A border has 3 in each of four corners, 4 between them along the stitches and 6 along the row-ends:
// 12 + 2 x 4 + 2 x 6 = 32. From the centre of one corner to the centre of the next lie 1 + 6 + 1 = 8 on either straight side, and 1 + 4 + 1 = 6
// above and below. Sewn along a side from centre to centre, a trim goes 3, 6, seam, 6, 3, 8, 3, 6, seam, 6, 3, 8 = 54. All sums by hand.
const bordered = (name: string): string => `  - name: ${name}
    rows: |
      Foundation: Ch 7.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (6)
      Rows 2-6: Ch 1, turn, sc in each st across. Fasten off. (6)
  - name: ${name} border
    on: ${name}
    rows: |
      Rnd 1 (RS): With RS facing, join yarn in first st of Row 6, ch 1, 3 sc in same st, sc in next 4 sts, 3 sc in last st, sc in each of 6 row-ends, 3 sc in first ch, sc in next 4 ch, 3 sc in last ch, sc in each of 6 row-ends, join with sl st in first sc. Fasten off. (32)
`

const pad = (trim: string): string => `${bordered('Right half')}${bordered('Left half')}  - name: Trim
    on: [Right half border, Left half border]
    rows: |
      Rnd 1 (RS): With RS facing, join yarn in center st of top right corner of Right half border, ch 1, ${trim}, join with sl st in first sc. Fasten off. (54)
seams:
  - { join: [left side of Right half border, right side of Left half border], by: whip stitch }`

const trim = '3 sc in same st, sc in next 6 sts, sc in seam, sc in next 6 sts of Left half border, 3 sc in corner st, sc in next 8 sts, 3 sc in corner st, sc in next 6 sts, sc in seam, sc in next 6 sts of Right half border, 3 sc in corner st, sc in last 8 sts'

test('a trim goes round two borders that are sewn corner to corner', () => expect(told(pad(trim))).toEqual([]))

test('it is told where the trim leaves a stitch of a border', () => {
  const [first] = told(pad(trim.replace('sc in next 6 sts of Right half border', 'sc in next 5 sts of Right half border')))
  expect(first).toMatch(/^(?:places-left-over|total-mismatch): round 1/)
})

// 32 all round: sewn along the first 24, each keeps 8 for the mouth.
test('so many stitches of the last round may be sewn', () => {
  const bag = `${bordered('Front')}${bordered('Back')}  - name: Mouth
    on: Front border
    rows: |
      Rnd 1 (RS): With RS facing, join yarn in the first unsewn st of Front border, ch 1, sc in each of the 8 unsewn sts of Front border, sc in each of the 8 unsewn sts of Back border, join with sl st in first sc. Fasten off. (16)
seams:
  - { join: [first 24 sts of top of Front border, first 24 sts of top of Back border], by: whip stitch }`
  expect(told(bag)).toEqual([])
  expect(told(bag.replace('first 24 sts of top of Back', 'first 23 sts of top of Back'))).not.toEqual([])
})
