import { describe, expect, test } from 'vitest'
import { told } from './checked.ts'

// A vest of 10 stitches by 6 rows, with armholes of 2 stitches by 4 rows. Whoever tells that its sides are sewn means them as far as the armholes
// where an edging goes round those (common practice, no source): 2 + 4 on the front and 4 + 2 on the back = 12 round an armhole. All sums by hand.
const half = (below = 6): string => `Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)
      Rows 2-${below}: Ch 1, turn, sc in each st across. (10)
      Row ${below + 1}: Turn, sl st in first 2 sts, ch 1, sc in next 6 sts, leave last 2 sts unworked. (6)
      Rows ${below + 2}-${below + 4}: Ch 1, turn, sc in each st across. Fasten off. (6)`

const vest = (sides: string, up = 4, total = 12, below = 6): string => `  - name: Front
    rows: |
      ${half(below)}
  - name: Back
    rows: |
      ${half()}
  - name: Armhole edging
    make: 2
    on: [Front, Back]
    rows: |
      Rnd 1 (RS): With RS facing, join yarn at the underarm, ch 1, sc in each of 2 underarm sts, sc in each of ${up} row-ends up to the shoulder, sc in each of 4 row-ends down from the shoulder, sc in each of 2 underarm sts, join with sl st in first sc. Fasten off. (${total})
seams:
  - { join: [first 2 sts of top of Front, last 2 sts of top of Back], by: whip stitch }
  - { join: [last 2 sts of top of Front, first 2 sts of top of Back], by: whip stitch }
${sides}`

const wholeSides = `  - { join: [left side of Front, right side of Back], by: mattress stitch }
  - { join: [right side of Front, left side of Back], by: mattress stitch }`

describe.each([
  ['whole sides', wholeSides],
  ['sides as far as the armholes', '  - { join: [sides of Front below the armholes, sides of Back below the armholes], by: mattress stitch }'],
  ['one side as far as the armhole, and the other', '  - { join: [left side of Front below the armhole, right side of Back below the armhole], by: mattress stitch }\n  - { join: [right side of Front below the armhole, left side of Back below the armhole], by: mattress stitch }'],
])('%s', (_, sides) => {
  test('an edging goes round the armhole', () => expect(told(vest(sides))).toEqual([]))
  test('one row-end too few of the 8 is told', () => expect(told(vest(sides, 3, 11))).toEqual([expect.stringMatching(/^row-(?:ends-passed|overruns): round 1 .* row-end/)]))
})

test('sides that are sewn below the armholes must match there', () => {
  const longer = vest('  - { join: [sides of Front below the armholes, sides of Back below the armholes], by: mattress stitch }', 4, 12, 5)
  expect(told(longer).filter((words) => words.startsWith('seam'))).toEqual(['seam-mismatch: the edges to be joined do not match: the side of Front below the armhole has 5 row-ends and the side of Back below the armhole has 6 row-ends'])
})
