import { expect, test } from 'vitest'
import { checkOnce } from '../../../src/pattern/check-pattern.ts'

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
