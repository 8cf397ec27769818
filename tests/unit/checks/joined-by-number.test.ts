import { expect, test } from 'vitest'
import { checked } from './checked.ts'

// A flap on a chain of 14, joined in the fifth: 14 - 4 before it - 4 worked = 6 are left. By hand.

const found = (place: string, left = 6): readonly string[] => checked(`  - name: Panel
    rows: |
      Foundation: Ch 15.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (14)
      Rows 2-8: Ch 1, turn, sc in each st across. Fasten off. (14)
  - name: Loop
    on: Panel
    rows: |
      Row 1 (RS): With RS facing, join yarn in ${place}, ch 1, sc in the underside of each of next 4 ch, leave rem ${left} ch unworked. (4)`).found.map(({ code }) => code)

test.each([
  'the underside of 5th ch', 'the underside of the 5th chain', 'the 5th ch of the underside', 'the underside of 5th foundation ch', 'the underside of the 5th ch of Panel',
])('%s', (place) => {
  expect(found(place)).toEqual([])
  expect(found(place.replace('5th', '6th'))).toEqual(['places-left-over'])
  expect(found(place, 7)).toEqual(['places-left-over'])
})

// The row could begin anywhere: it is not taken to begin at the first chain.
test('a place by a number in words that are not understood', () => {
  expect(found('the nook below the 5th pebble')).toEqual(['row-not-checked'])
})
