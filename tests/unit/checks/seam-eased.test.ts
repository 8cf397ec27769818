import { expect, test } from 'vitest'
import { checkOnce } from '../../../src/pattern/check-pattern.ts'
import { easedIn } from '../../../src/pattern/eased-in.ts'

// The words are common practice, no source.
test.each<readonly [by: string, eased: readonly number[] | undefined]>([
  ['whip stitch, easing in the 2 extra stitches of the back', [2]],
  ['whip stitch, easing in three sts', [3]],
  ['ease in the extra 4 row-ends', [4]],
  ['mattress stitch, easing in 2 (3, 4) stitches', [2, 3, 4]],
  ['sl st, 5 more stitches of the frill eased in', [5]],
  ['whip stitch, easing in 1 stitch at each corner', undefined],
  ['whip stitch, easing in one stitch every 10', undefined],
  ['whip stitch, easing in the fullness', undefined],
  ['whip stitch with 2 strands, easing in the fullness', undefined],
])('%s', (by, eased) => {
  expect(easedIn(by)).toEqual(eased)
})

// A strip of 12 rows between two that have 13 stitches: both its sides are a row short, and one slip is behind both seams.
test('both sides of a strip that is a row short are told once', () => {
  const panel = (name: string): readonly string[] => [`  - name: ${name}`, '    rows: |', '      Row 1: Ch 14, sc in 2nd ch from hook and in each ch across. (13)']
  const text = ['---', 'title: Strip', 'terms: US', 'pieces:', ...panel('Front'), ...panel('Back'), '  - name: Strip', '    rows: |', '      Row 1: Ch 5, sc in 2nd ch from hook and in each ch across. (4)', '      Rows 2-12: Ch 1, turn, sc in each st across. (4)',
    'seams:', '  - { join: [top of Front, left side of Strip] }', '  - { join: [top of Back, right side of Strip] }', '---', ''].join('\n')
  const seams = checkOnce({ path: 'strip.md', text }).diagnostics.filter(({ code }) => code === 'seam-mismatch')
  expect(seams.map(({ secondary }) => secondary.map((label) => label.text))).toEqual([['this edge', 'its last row', 'and this seam']])
})
