import { expect, test } from 'vitest'
import { checked } from './checked.ts'

// Bands that are worked sideways on to an edge: what their rows are joined to is added up. All sums by hand.

const told = (pieces: string, keys = ''): readonly string[] => checked(pieces, keys).found.map(({ code, message, sizes }) => `${code}: ${message}${sizes ? ` (${sizes.join(', ')})` : ''}`)

// 12 rows: a row of the band for each row-end and one back, and the first of the 12 is taken by the join: 1 + 11.
const along = (rows: string): string => `  - name: Front
    rows: |
      Foundation: Ch 11.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)
      Rows 2-12: Ch 1, turn, sc in each st across. Fasten off. (10)
  - name: Band
    on: Front
    rows: |
      Row 1 (RS): With RS facing, join yarn in the row-end of Row 1 at the right-hand edge of Front, ch 5, sc in 2nd ch from hook and in next 3 ch, sl st in next row-end of Front. (4)
      Row 2: Turn, skip the sl st, sc in each of next 4 sts. (4)
      Row 3: Ch 1, turn, sc in each of next 4 sts, sl st in next row-end of Front. (4)
      ${rows} Fasten off. (4)`

test.each([
  // Rows 1, 3, 5 … 21 are joined: 11.
  ['Rows 4-21: Rep Rows 2-3 9 times more.', []],
  ['Rows 4-19: Rep Rows 2-3 8 times more.', ['band-joins-mismatch: Band is joined to 11 of the 12 row-ends of a side of Front, and nothing is said of the one left']],
  // The yarn is joined in the first row-end, and 12 more come next.
  ['Rows 4-23: Rep Rows 2-3 10 times more.', ['band-joins-mismatch: Band is joined to 13 row-ends of a side of Front, but it has 12']],
  ['Rows 4-25: Rep Rows 2-3 11 times more.', ['band-joins-mismatch: Band is joined to 14 row-ends of a side of Front, but it has 12']],
  // Behind `leave` the rest is meant to be free.
  ['Rows 4-17: Rep Rows 2-3 7 times more. Leave rem row-ends of Front unworked.', []],
])('along a side: %s', (rows, expected) => {
  expect(told(along(rows))).toEqual(expected)
})

// 13 and 17 stitches: 1 + 6 × 2 and 1 + 8 × 2; rows 1, 3, … 11 and 1, 3, … 15.
test('in two sizes only the one that is wrong is named', () => {
  const hem = (last: string): string => `  - name: Body
    rows: |
      Foundation: Ch 14 (18).
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (13 (17))
      Rows 2-8: Ch 1, turn, sc in each st across. Fasten off. (13 (17))
  - name: Rib
    on: Body
    rows: |
      Row 1 (RS): With RS facing, join yarn in first st of Row 8 of Body, ch 5, sc in 2nd ch from hook and in next 3 ch, sl st in each of next 2 sts of Body. (4)
      Row 2: Turn, skip the sl sts, sc in each of next 4 sts. (4)
      Row 3: Ch 1, turn, sc in each of next 4 sts, sl st in each of next 2 sts of Body. (4)
      ${last} Fasten off. (4)`
  expect(told(hem('Rows 4-11 (15): Rep Rows 2-3 4 (6) times more.'), 'sizes: [Small, Large]\n')).toEqual([])
  expect(told(hem('Rows 4-11 (13): Rep Rows 2-3 4 (5) times more.'), 'sizes: [Small, Large]\n')).toEqual(['band-joins-mismatch: Rib is joined to 15 of the 17 stitches of the top of Body, and nothing is said of the 2 left (Large)'])
})
