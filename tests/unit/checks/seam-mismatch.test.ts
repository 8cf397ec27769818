import { expect, test } from 'vitest'
import { checked } from './checked.ts'

// What a seam or a border through both layers joins of an edge is told as that: the edge itself may have more. By hand.

const messages = (pieces: string): readonly string[] => checked(pieces).found.map(({ message }) => message)

const back = `  - name: Back
    rows: |
      Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)
      Rows 2-12: Ch 1, turn, sc in each st across. Fasten off. (10)
`

// Back has 12 rows, 7 of them alone and 5 through both layers; Pocket has 4. 10 + 12 + 10 + 12 = 44.
test('a pocket that is a row too low', () => {
  expect(messages(`${back}  - name: Pocket
    rows: |
      Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)
      Rows 2-4: Ch 1, turn, sc in each st across. Fasten off. (10)
  - name: Border
    on: Back
    rows: |
      Rnd 1 (RS): Lay Pocket on Back with right sides up, join yarn at the upper right-hand corner of Back, ch 1, sc in each of the 10 sts of Back, sc in each of next 7 row-ends, sc in each of next 5 row-ends through both layers, sc in the underside of each of next 10 ch through both layers, sc in each of next 5 row-ends through both layers, sc in each of next 7 row-ends, join with sl st in first sc. (44)`)).toEqual([
    'the edges to be joined do not match: 5 row-ends of the side of Back are joined and the side of Pocket has 4 row-ends',
  ])
})

// Both have 10 stitches at the top: 4 are sewn to 5.
test('a part of an edge', () => {
  expect(messages(`${back}  - name: Front
    rows: |
      Rows 1-12: As for Back.
seams:
  - { join: [first 4 sts of top of Front, last 5 sts of top of Back], by: whip stitch }`)).toEqual([
    'the edges to be joined do not match: 4 stitches of the top of Front are joined and 5 stitches of the top of Back are joined',
  ])
})
