import { expect, test } from 'vitest'
import { nearest } from '../../../src/diagnostics/nearest.ts'

// What a person would take the slip for (common practice, no source).

test.each([
  ['hcd', 'hdc'], // two letters changed places
  ['HDC', 'hdc'],
  ['hdcc', 'hdc'],
  ['sc2tg', 'sc2tog'],
  ['materails', 'materials'],
  ['conventons', 'conventions'],
])('%s is likely meant for %s', (typed, meant) => {
  expect(nearest(typed, ['sc', 'hdc', 'dc', 'tr', 'sc2tog', 'materials', 'conventions', 'pieces'])).toBe(meant)
})

test('nothing near, or two that are equally near, is no answer', () => {
  expect(nearest('bobble', ['sc', 'hdc', 'dc'])).toBeUndefined()
  expect(nearest('xc', ['sc', 'dc'])).toBeUndefined()
  expect(nearest('q', ['a', 'b'])).toBeUndefined()
  expect(nearest('', ['a'])).toBeUndefined()
  expect(nearest('sc', [])).toBeUndefined()
})
