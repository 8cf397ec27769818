import { expect, test } from 'vitest'
import { told } from './checked.ts'

// An elbow: 3 rows of 6 stitches, then 4 chains added at one end and 5 rows of 10. All round lie 10 + 5 row-ends + 4 ch + 3 row-ends + 6 ch + 8
// row-ends = 36, with 3 in each of five outward corners 46. Round 2: five corners gain 2 each and the inner corner loses 1 = 55. Round 3: the decrease
// of round 2 and the stitch on either side of it are one, 55 + 10 - 2 = 63. Round 4 once more: 63 + 10 - 2 = 71. All sums by hand.
const elbow = (inner: string, third = 63, fourth = 71): string => `  - name: Elbow
    rows: |
      Foundation: Ch 7.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (6)
      Rows 2-3: Ch 1, turn, sc in each st across. (6)
      Row 4: Ch 5, turn, sc in 2nd ch from hook and in each of next 3 ch, sc in each of the 6 sts. (10)
      Rows 5-8: Ch 1, turn, sc in each st across. Do not fasten off. (10)
  - name: Border
    on: Elbow
    rows: |
      Rnd 1 (RS): Ch 1, turn, 3 sc in first st, sc in next 8 sts, 3 sc in last st; sc in each of 5 row-ends; along the underside of the added ch of Row 4, 3 sc in first ch, sc in each of next 3 ch; sc in each of next 3 row-ends; on the foundation, 3 sc in first ch, sc in each of next 4 ch, 3 sc in last ch; sc in each of 8 row-ends; join with sl st in first sc. (46)
      Rnd 2: Ch 1, sc in each sc around, 3 sc in the center sc of each of the 5 outer corners and sc2tog over the 2 sc that meet in the inner corner; join with sl st in first sc. (55)
      Rnd 3: Ch 1, sc in each st around, 3 sc in the center sc of each of the 5 outer corners and ${inner}; join with sl st in first sc. (${third})
      Rnd 4: Ch 1, sc in each st around, 3 sc in the center sc of each of the 5 outer corners and ${inner}; join with sl st in first sc. Fasten off. (${fourth})`

// Common practice, no source: a hollow is kept sharp by three together over the decrease of the round before.
test.each(['sc3tog over the inward corner', 'sc3tog at the inner corner', 'sc3tog over the 3 sts at the inner corner', 'sc3tog over the 3 sts that meet in the inner corner'])('%s', (words) => {
  expect(told(elbow(words))).toEqual([])
  expect(told(elbow(words, 65))).toEqual(['total-mismatch: round 3 makes 63 stitches, but its total says 65'])
})

test('three together want a decrease below them, or a stitch in the corner itself', () => {
  const plain = elbow('sc3tog at the inner corner').replace('sc2tog over the 2 sc that meet in the inner corner; join with sl st in first sc. (55)', 'sc in each other st; join with sl st in first sc. (56)')
  expect(told(plain)).not.toEqual([])
})
