import { expect, test } from 'vitest'
import { checked } from './checked.ts'
import { twoPanels } from './two-panels.ts'

// Two panels of 8 by 6 sewn side to side: a round has 16 + 6 + 16 + 6 = 44. By hand.
const panels = (seam: string, top = 16): readonly string[] => checked(twoPanels(`  - name: Border
    on: Right panel
    rows: |
      Rnd 1 (RS): With RS facing, join yarn at the upper right-hand corner of Right panel, ch 1, sc in each of next ${top} sts, sc in each of next 6 row-ends, sc in the underside of each of next 16 ch, sc in each of next 6 row-ends, join with sl st in first sc. Fasten off. (${28 + top})
seams:
  - { join: [${seam} of Left panel, left side of Right panel], by: whip stitch }`)).found.map(({ code }) => code)

test('a border over a seam that is understood is held to what it leaves open', () => {
  expect(panels('right side')).toEqual([])
  expect(panels('right side', 15)).not.toEqual([])
})

test('over one that is not, it is told as not counted, and blamed for nothing', () => {
  expect(panels('the frilly whatnot')).toEqual(['row-not-checked', 'words-passed-over'])
})
