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

// Row 1 is joined with 1 slip stitch, and every other row after it with 1: `skip the 2 sl sts` cannot be right.
test('slip stitches that are skipped are those with which the row was joined', () => {
  const rows = along('Rows 4-21: Rep Rows 2-3 9 times more.')
  expect(told(rows.replace('skip the sl st,', 'skip the 2 sl sts,'))).toContain('row-overruns: row 2 asks for 2 stitches here, and only 1 stitch is left')
})

// 5 chains of either piece: 1 + 2 + 2 along the front, then 2 + 2 + 1 more of the back.
test('a hem that goes on from one piece to the next is added up on each', () => {
  const body = (name: string): string => `  - name: ${name}
    rows: |
      Foundation: Ch 6.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (5)
      Rows 2-4: Ch 1, turn, sc in each st across. Fasten off. (5)
`
  const hem = (back: string): string => `${body('Front')}${body('Back')}  - name: Hem
    on: Front
    rows: |
      Row 1 (RS): With RS facing, join yarn in the underside of first ch of Front, ch 4, sc in 2nd ch from hook and in next 2 ch, sl st in the underside of each of next 2 ch of Front. (3)
      Row 2: Turn, skip the sl sts, sc in each of next 3 sts. (3)
      Row 3: Ch 1, turn, sc in each of next 3 sts, sl st in the underside of each of next 2 ch of Front. (3)
      Row 4: Turn, skip the sl sts, sc in each of next 3 sts. (3)
      Row 5: Ch 1, turn, sc in each of next 3 sts, sl st in the underside of each of next 2 ch of Back. (3)
      Row 6: Turn, skip the sl sts, sc in each of next 3 sts. (3)
      Row 7: Ch 1, turn, sc in each of next 3 sts, sl st in the underside of each of next ${back} ch of Back. Fasten off. (3)`
  expect(told(hem('3'))).toEqual([])
  expect(told(hem('2'))).toEqual(['band-joins-mismatch: Hem is joined to 4 of the 5 chains of the underside of Back, and nothing is said of the one left'])
})

// Strip 1 has 12 rows. From Row 3 on there are 10: Rows 1, 3, 5, 7 and 9 are joined, to 2 each.
test.each([
  ['Rows 4-9: Rep Rows 2-3 3 times more.', []],
  ['Rows 4-11: Rep Rows 2-3 4 times more.', ['band-joins-mismatch: Strip 2 is joined to 12 row-ends of a side of Strip 1 from Row 3 on, but it has 10 there']],
  ['Rows 4-7: Rep Rows 2-3 2 times more.', ['band-joins-mismatch: Strip 2 is joined to 8 of the 10 row-ends of a side of Strip 1 from Row 3 on, and nothing is said of the 2 left']],
])('from a named row on: %s', (rows, expected) => {
  expect(told(`  - name: Strip 1
    rows: |
      Foundation: Ch 8.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (7)
      Rows 2-12: Ch 1, turn, sc in each st across. Fasten off. (7)
  - name: Strip 2
    rows: |
      Foundation: Ch 6.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across, sl st in each of the row-ends of Rows 3 and 4 of Strip 1. (5)
      Row 2: Turn, skip the sl sts, sc in each of next 5 sts. (5)
      Row 3: Ch 1, turn, sc in each of next 5 sts, sl st in each of next 2 row-ends of Strip 1. (5)
      ${rows} Fasten off. (5)`)).toEqual(expected)
})
