import { expect, test } from 'vitest'
import { checkOnce } from '../../../src/pattern/check-pattern.ts'
import { checked } from './checked.ts'

// By hand: 8 stitches over 4 rows, 3 of Row 2 left. What an editor has to see is the edges that the row meets, from the first to the last.

const notesOf = (edging: string): string =>
  checkOnce({
    path: 'flap.md',
    text: `---
title: Flap
terms: US
conventions: { turning-chains: { sc: not counted } }
pieces:
  - name: Flap
    rows: |
      Foundation: Ch 9.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (8 sc)
      Row 2: Ch 1, turn, sc in each sc across. (8 sc)
      Row 3: Ch 1, turn, sc in first 5 sc, leave last 3 sc unworked. (5 sc)
      Rows 4-6: Ch 1, turn, sc in each sc across. (5 sc)
  - name: Edging
    on: Flap
    rows: |
      ${edging}
---
`,
  }).diagnostics.flatMap(({ note }) => note ?? []).join('\n')

test('a row one short on a step is told of that step, and not of the edges that it never comes to', () => {
  const notes = notesOf('Row 1 (RS): Ch 1, turn, sc in each of 5 sc, sc in each of next 4 row-ends, sc in each of the 2 unworked sc. (11 sc)')
  expect(notes).toContain('2 of the 3 stitches of Row 2')
  expect(notes).not.toMatch(/underside|none of/)
})

test('an edge between two that it works along is told of, though it works none of it', () => {
  const notes = notesOf('Row 1 (RS): Ch 1, turn, sc in each of 5 sc, sc in each of next 4 row-ends, sc in row-end of Row 2, sc in row-end of Row 1. (11 sc)')
  expect(notes).toContain('none of the 3 stitches of Row 2')
})

// 8 stitches, then 7 and 6: one stitch of Row 2 and one of Row 6 wait on the side on which the right side rows end.
test('one stitch is told as one', () => {
  const { found } = checked(`  - name: Flap
    rows: |
      Foundation: Ch 9.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (8 sc)
      Row 2: Ch 1, turn, sc in each sc across. (8 sc)
      Row 3: Ch 1, turn, sc in first 7 sc, leave last sc unworked. (7 sc)
      Rows 4-6: Ch 1, turn, sc in each sc across. (7 sc)
      Row 7: Ch 1, turn, sc in first 6 sc, leave last sc unworked. (6 sc)
      Row 8: Ch 1, turn, sc in each sc across. Fasten off. (6 sc)
  - name: Edging
    on: Flap
    rows: |
      Row 1 (RS): With RS facing, join yarn in the unworked st of Row 6, ch 1, sc in same place, sc in each of next 4 row-ends, sc in each of next 2 row-ends. (7 sc)`)
  expect(found.map(({ note }) => note)).toEqual(['it begins in the one stitch of Row 6, and the row-ends from Row 6 to Row 3 come next; it leaves out the one stitch of Row 2'])
})
