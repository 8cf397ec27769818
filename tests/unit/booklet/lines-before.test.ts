import { expect, test } from 'vitest'
import { partsOf } from '../../../src/booklet/part.ts'
import { checkOnce } from '../../../src/pattern/check-pattern.ts'

// A buyer works from the print alone: whatever the designer wrote over a row must stand there, once and before it.
const printed = (lines: string): readonly string[] => {
  const checked = checkOnce({
    path: 'pattern.md',
    text: `---
title: A mat
terms: US
conventions: { turning-chains: { sc: not counted }, slip-stitches: not counted }
pieces:
  - name: Body
    rows: |
      Foundation: Ch 9.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (8)
      Rows 2-4: Ch 1, turn, sc in each st across. Fasten off. (8)
  - name: Tab
    on: Body
    rows: |
      ${lines}
---
`,
  })
  const tab = partsOf(checked, checked.pattern!, '').find(({ piece }) => piece.name === 'Tab')
  return tab!.part.lines.map((line) => line.text.map((run) => ('text' in run ? run.text : '')).join('').replaceAll('\u00a0', ' '))
}

test.each([
  ['how the yarn is joined and a chain', 'Join yarn in the underside of first ch of Body, ch 6.', 'Row 1: Sc in 2nd ch from hook and in each of next 4 ch. (5)'],
  ['what is skipped before the yarn is joined', 'With RS facing, skip first 3 sts of Row 4, join yarn in next st.', 'Row 5: Ch 1, sc in same st and in each of next 4 sts. (5)'],
  ['how the yarn is joined', 'With RS facing, join yarn in first st of Row 4.', 'Row 5: Ch 1, sc in same st and in each of next 7 sts. (8)'],
])('%s', (_, above, row) => {
  const lines = printed(`${above}\n      ${row}`)
  expect(lines[0]).toBe(above)
  expect(lines.filter((line) => line === above)).toHaveLength(1)
  expect(lines).toHaveLength(2)
})
