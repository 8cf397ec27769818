import { expect, test } from 'vitest'
import { stitchesShown } from '../../../src/booklet/stitches-shown.ts'

// Common practice in printed patterns, no source: one number stands for every size.
test.each([
  [['8', '8', '8', '8'], ['8']], [['48', '56', '48'], ['48', '56', '48']], [['8', '–', '8'], ['8', '–', '8']], [['12'], ['12']], [[], []],
])('%j is shown as %j', (stitches, shown) => {
  expect(stitchesShown(stitches)).toEqual(shown)
})
