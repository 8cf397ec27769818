import { expect, test } from 'vitest'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

// A back of 6 rows that ends in two shoulders of 2 rows each, both numbered 5 and 6: 4 + 2 + 2 = 8 rows. A front whose rows are told as those of
// the back by all of their numbers has both shoulders as well. All sums by hand.
const vest = (front: string): string => `---
title: Case
terms: US
conventions: { turning-chains: { sc: not counted }, slip-stitches: not counted }
pieces:
  - name: Back
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
      ${front}
---
`

const rowsOfFront = (front: string): readonly (number | undefined)[] => checkPattern({ path: 'case.md', text: vest(front) }).pieces.filter(({ piece }) => piece.name === 'Front').flatMap(({ rows }) => rows.map(({ number }) => number))

const found = (front: string): readonly string[] => checkPattern({ path: 'case.md', text: vest(front) }).diagnostics.filter(({ code }) => code !== 'key-missing-to-publish').map(({ message }) => message)

test.each(['Work as for Back.', 'Rows 1-6: As for Back.', 'Foundation and Rows 1-6: As for Back.', 'Foundation: Ch 11.\n      Rows 1-6: As for Back.'])('%s', (front) => {
  expect(found(front)).toEqual([])
  expect(rowsOfFront(front).filter((number) => number !== undefined)).toEqual([1, 2, 3, 4, 5, 6, 5, 6])
})

test('a range that ends before the parts has none of them', () => {
  expect(rowsOfFront('Rows 1-4: As for Back.\n      Row 5: Ch 1, turn, sc in each st across. (10)').filter((number) => number !== undefined)).toEqual([1, 2, 3, 4, 5])
})

// The rounds of a handle under a heading begin again at 1: they are none of the rows.
test('a section that numbers anew is not copied with the rows', () => {
  const bag = `---
title: Case
terms: US
conventions: { turning-chains: { sc: not counted }, slip-stitches: not counted }
pieces:
  - name: Front
    rows: |
      Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)
      Rows 2-4: Ch 1, turn, sc in each st across. Fasten off. (10)
      Edging
      Rnd 1: With RS facing, join yarn in first st of Row 4, ch 1, sc in each st across, sc in each of 4 row-ends, sc in the underside of each of 10 ch, sc in each of 4 row-ends, join with sl st in first sc. (28)
  - name: Back
    rows: |
      Foundation: Ch 11.
      Rows 1-4: As for Front.
---
`
  const [, back] = ['Front', 'Back'].map((name) => checkPattern({ path: 'bag.md', text: bag }).pieces.filter(({ piece }) => piece.name === name))
  expect(back!.flatMap(({ rows }) => rows.map(({ number }) => number)).filter((number) => number !== undefined)).toEqual([1, 2, 3, 4])
})
