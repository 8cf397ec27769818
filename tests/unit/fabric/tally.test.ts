import { expect, test } from 'vitest'
import { workRows } from '../../support/work-rows.ts'

/** The steps of the last row, as makes and sum so far, and what the row makes. */
function tallyOf(rows: string, fence: string): { readonly steps: readonly (readonly [number, number])[]; readonly makes: number } {
  const worked = workRows(rows, fence)
  const row = worked.checked.pieces[0]!.rows.at(-1)!
  return { steps: row.tally.map(({ makes, soFar }) => [makes, soFar] as const), makes: row.makes }
}

// By hand: 3 slip stitches and 24 sc on 30, of which 3 are left. Where slip stitches count the row makes 27, else 24.
const stepped = 'Row 1: Ch 1, turn, sc in each st across. (30)\nRow 2: Turn, sl st in first 3 sts, sc in next 24 sts, leave last 3 sts unworked.'

test('the steps of a row add up to what it makes, where slip stitches count', () => {
  expect(tallyOf(`${stepped} (27)`, 'last=30 slip=counted')).toEqual({ steps: [[3, 3], [24, 27]], makes: 27 })
})

test('and where they do not', () => {
  expect(tallyOf(`${stepped} (24)`, 'last=30 slip=not')).toEqual({ steps: [[0, 0], [24, 24]], makes: 24 })
})

// 6 rows of 8: 6 + 8 + 6 + 8 = 28 places; the total says one more.
test('and where a border is spread evenly over an edge', () => {
  const rows = 'Row 1: Ch 9, sc in 2nd ch from hook and in each ch across. (8)\nRows 2-6: Ch 1, turn, sc in each st across. (8)\nRnd 7: Ch 1, sc evenly around, join with sl st in first sc. (29)'
  expect(tallyOf(rows, '')).toEqual({ steps: [[29, 29]], makes: 29 })
})
