import { expect, test } from 'vitest'
import { checked } from './checked.ts'
import { twoPanels } from './two-panels.ts'

// A yoke of 4 rows over two panels of 6: the band along both has 4 + 6 = 10. All by hand.

const panels = (band: string, yoke = 'Rows 8-10: Ch 1, turn, sc in each st across. Fasten off. (16)'): string => twoPanels(`  - name: Yoke
    on: Right panel
    rows: |
      Row 7 (RS): With RS facing, join yarn in first st of Row 6 of Right panel, ch 1, sc in each of the 8 sts of Right panel, sc in each of the 8 sts of Left panel. (16)
      ${yoke}
  - name: Band
    on: Yoke
    rows: |
      Row 1 (RS): With RS facing, join yarn in the row-end of Row 10 of Yoke at the left-hand edge, ch 1, ${band}`)

const codes = (pieces: string): readonly string[] => checked(pieces).found.map(({ code }) => code)

test('what comes out along a row over two pieces is right', () => {
  expect(codes(panels('sc in each of next 4 row-ends of Yoke, sc in each of next 6 row-ends of Left panel. (10)'))).toEqual([])
})

// 3 of the 4 row-ends, and 4 + 6 = 10 against 11.
test.each([
  ['sc in each of next 3 row-ends of Yoke, sc in each of next 6 row-ends of Left panel. (10)', 'row-ends-passed'],
  ['sc in each of next 4 row-ends of Yoke, sc in each of next 6 row-ends of Left panel. (11)', 'total-mismatch'],
])('what does not come out is told: %s', (band, code) => {
  expect(codes(panels(band))).toContain(code)
})

test('where the slip below is told, that is enough', () => {
  expect(codes(panels('sc in each of next 3 row-ends of Yoke, sc in each of next 6 row-ends of Left panel. (10)', 'Rows 8-10: Ch 1, turn, sc in each st across. Fasten off. (15)'))).toEqual(['total-mismatch'])
})

// A panel of 6 rows, to which words sew another: where its edges lie then is not known.
const lapped = (band: string): string => twoPanels(`  - name: Band
    on: Right panel
    rows: |
      Row 1 (RS): Sew 6 row-ends of Right panel to 6 row-ends of Left panel. With RS facing, join yarn in the row-end of Row 1 at the right-hand edge, ch 1, ${band}`)

test('what comes out along pieces that words sew together is right, and what does not is told as not counted', () => {
  expect(codes(lapped('sc in each of next 6 row-ends. (6)'))).toEqual([])
  expect(codes(lapped('sc in each of next 7 row-ends. (7)'))).toEqual(['row-not-checked'])
})
