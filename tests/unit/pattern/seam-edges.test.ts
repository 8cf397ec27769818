import { describe, expect, test } from 'vitest'
import { seamPart } from '../../../src/pattern/seam-edges.ts'

const names = ['Front', 'Front border', 'Left Front', 'Gusset', 'Strip A', 'Top of the Buoy']

describe('a part of a seam', () => {
  // Common practice, no source: what making-up instructions call the edges of pieces.
  test.each([
    ['Front', 'Front', undefined], ['front border', 'Front border', undefined], ['Top of the Buoy', 'Top of the Buoy', undefined],
    ['left side of Gusset', 'Gusset', 'left'], ['the right-hand edge of the Gusset', 'Gusset', 'right'], ['top of Left Front', 'Left Front', 'top'],
    ['top edge of Left Front', 'Left Front', 'top'], ['last row of Front', 'Front', 'top'], ['foundation chain of Front', 'Front', 'bottom'],
    ['lower edge of Strip A', 'Strip A', 'bottom'], ['side of Strip A', 'Strip A', 'side'], ['one long edge of Strip A', 'Strip A', 'any'],
    ['Gusset left side', 'Gusset', 'left'], ['Strip A, bottom edge', 'Strip A', 'bottom'], ['Gusset top', 'Gusset', 'top'],
    ['left side of Sail', 'left side of Sail', undefined], ['Fronts', 'Fronts', undefined],
  ])('%s', (text, piece, edge) => {
    expect(seamPart(text, names)).toEqual({ piece, ...(edge !== undefined && { edge }) })
  })
})
