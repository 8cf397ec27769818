import { describe, expect, test } from 'vitest'
import { sizedStretches } from '../../../src/components/sized.ts'

/** The text as a reader of one size sees it when the other sizes are hidden. */
function only(text: string, sizes: number, size: number): string {
  return sizedStretches(text, sizes).map((stretch) => (typeof stretch === 'string' ? stretch : stretch.filter((one) => one.size === size).map((one) => one.text).join(''))).join('')
}

describe('numbers for several sizes', () => {
  // The trade's way to write sizes, smallest first, the others in brackets: common practice, no source.
  test.each([
    ['Hdc in next 6 (7, 8) sts', 3, 1, 'Hdc in next 7 sts'],
    ['*Sc in next 4 (6) sts, ch 2 (3); rep', 2, 1, '*Sc in next 6 sts, ch 3; rep'],
    ['+6 (8)', 2, 1, '+8'],
    ['−2 (+3)', 2, 1, '+3'],
    ['−2 (+3)', 2, 0, '−2'],
    ['1,250 (1,300) stitches', 2, 1, '1,300 stitches'],
    ['1,250\u00a0(1,300,\u00a01,400) m', 3, 2, '1,400 m'],
    ['2½ (3¼) in', 2, 1, '3¼ in'],
    ['37.5 (42.5, 48) cm', 3, 1, '42.5 cm'],
    ['– (64, 72)', 3, 0, '–'],
    ['9–12 (13)', 2, 1, '9–13'],
  ])('%s in size %3$s', (text, sizes, size, shown) => {
    expect(only(text, sizes, size)).toBe(shown)
  })

  test.each([
    ['ch 3 (counts as dc), turn', 2], ['24 (48, 60)', 2], ['(2 dc, ch 2, 2 dc) in next ch-2 sp', 3], ['4 (6)', 1], ['Rows 1 and 2 (see Notes)', 2],
  ])('leaves %s whole with %i sizes', (text, sizes) => {
    expect(sizedStretches(text, sizes)).toEqual([text])
  })

  test('loses and adds no letter', () => {
    for (const text of ['a 1 (2, 3) b 4 (5, 6)', '+6 (8, 9) of 1,000 (1,100, 1,200)', 'plain']) {
      expect(sizedStretches(text, 3).map((stretch) => (typeof stretch === 'string' ? stretch : stretch.map((one) => one.text).join(''))).join('')).toBe(text)
    }
  })
})
