import { describe, expect, test } from 'vitest'
import { partNames, seamPart, seamPartBySize, wholeEdges } from '../../../src/pattern/seam-edges.ts'

const names = ['Front', 'Front border', 'Left Front', 'Gusset', 'Strip A', 'Top of the Buoy']

describe('a part of a seam', () => {
  // Common practice, no source: what making-up instructions call the edges of pieces.
  test.each([
    ['Front', 'Front', undefined], ['front border', 'Front border', undefined], ['Top of the Buoy', 'Top of the Buoy', undefined],
    ['left side of Gusset', 'Gusset', 'left'], ['the right-hand edge of the Gusset', 'Gusset', 'right'], ['top of Left Front', 'Left Front', 'top'],
    ['top edge of Left Front', 'Left Front', 'top'], ['last row of Front', 'Front', 'top'], ['foundation chain of Front', 'Front', 'bottom'],
    ['lower edge of Strip A', 'Strip A', 'bottom'], ['side of Strip A', 'Strip A', 'side'], ['one long edge of Strip A', 'Strip A', 'any'],
    ['Gusset left side', 'Gusset', 'left'], ['Strip A, bottom edge', 'Strip A', 'bottom'], ['Gusset top', 'Gusset', 'top'],
    ['Gusset right selvedge', 'Gusset', 'right'], ['Gusset: left edge', 'Gusset', 'left'], ['Gusset right', 'Gusset', 'right'], ['row-ends at right of Gusset', 'Gusset', 'right'],
    ['ends of rows on left side of Strip A', 'Strip A', 'left'], ['all row-ends of the right edge of Front', 'Front', 'right'], ['Front right-side row-ends', 'Front', 'right'],
    ['right-hand edge of Front border', 'Front border', 'right'], ['row-ends of Gusset', 'Gusset', 'side'],
    ['left side of Sail', 'left side of Sail', undefined], ['Fronts', 'Fronts', undefined],
  ])('%s', (text, piece, edge) => {
    expect(seamPart(text, names)).toEqual({ piece, ...(edge !== undefined && { edge: { edge } }) })
  })
  // A number is of all of the edge, or of the part that is sewn: rows 3 to 8 are six.
  test.each([
    ['right side of Front (12 row-ends)', { edge: 'right', count: 12 }], ['12 row-ends on right of Front', { edge: 'right', count: 12 }],
    ['middle of top edge of Front', { edge: 'top', part: true }], ['last 5 sts of top edge of Front', { edge: 'top', at: 'last', count: 5, part: true }],
    ['left side of Front, Rows 3-8', { edge: 'left', rows: [3, 8], count: 6, part: true }], ['right edge of Front from Row 1 to Row 12', { edge: 'right', rows: [1, 12], count: 12, part: true }],
    ['Row 12 of Front, top edge', { edge: 'top', row: 12 }], ['Round 1 of Front', { edge: 'all' }], ['Front (72 dc of last round)', { edge: 'all', count: 72 }], ['last round of Front, all four sides', { edge: 'all' }],
    ['all 72 dc of Front', { edge: 'all', count: 72 }], ['Front Row 12, first 6 sc', { edge: 'top', row: 12, at: 'first', count: 6, part: true }], ['left shoulder of Front (outer 6 sc of Row 12)', { edge: 'top', row: 12, count: 6, part: true }],
    ['6 sts at either end of top edge of Front', { edge: 'top', count: 6, part: true }], ['Front, upper edge, 6 sts in from each side', { edge: 'top', count: 6, part: true }],
    ['sts 15-20 of top of Front', { edge: 'top', count: 6, part: true }], ['outermost six stitches of each shoulder of Front', { edge: 'top', count: 6, part: true }],
    ['both shoulders of Front', { edge: 'top', part: true }], ['top of Front except center 8 sts', { edge: 'top', without: 8 }],
  ])('%s', (text, edge) => {
    expect(seamPart(text, names)).toEqual({ piece: 'Front', edge })
  })
  test('a number for each size is that of the size', () => {
    expect(seamPartBySize('first 12 (14) row-ends of left side of Gusset', names).map(({ edge }) => edge?.count)).toEqual([12, 14])
    expect(seamPartBySize('right side of Front (12 (14, 16) row-ends)', names).map(({ edge }) => edge?.count)).toEqual([12, 14, 16])
    expect(seamPartBySize('right side of Front (12 row-ends)', names).map(({ edge }) => edge?.count)).toEqual([12])
  })
  test('a list that was parted at the commas of its sizes is whole again', () => {
    expect(wholeEdges(['first 9 (11', '13) sts of top of Front', 'Gusset'])).toEqual(['first 9 (11, 13) sts of top of Front', 'Gusset'])
    expect(wholeEdges(['Front (12 row-ends)', 'Gusset'])).toEqual(['Front (12 row-ends)', 'Gusset'])
  })
  test('a part of a piece is told by its heading', () => {
    const parts = partNames('Front', 'Row 1: Ch 8.\n  First shoulder\nRow 2: Ch 1, turn.\nSecond shoulder:\nRow 2: Ch 1.')
    expect(parts.map(({ name }) => name)).toEqual(['first shoulder', 'second shoulder'])
    expect(partNames('Back', 'Row 16: Ch 1, turn.\n  Left shoulder: With RS facing, sk next 6 sts, join yarn in next st.\n  Row 17: Ch 1, sc in same st.\n  Note: Join yarn anew.').map(({ name }) => name)).toEqual(['left shoulder'])
    expect(seamPart('top of Second shoulder', ['Front', 'Back'], parts)).toEqual({ piece: 'Front', edge: { edge: 'top', under: 'second shoulder' } })
    expect(seamPart('top of Second shoulder of Front', ['Front', 'Back'], parts)).toEqual({ piece: 'Front', edge: { edge: 'top', under: 'second shoulder' } })
    expect(seamPart('First shoulder', ['Front', 'Back'], parts)).toEqual({ piece: 'Front', edge: { edge: 'top', under: 'first shoulder' } })
    expect(seamPart('first 12 unworked sts of Row 10 of Back', ['Front', 'Back'], parts)).toEqual({ piece: 'Back', edge: { edge: 'top', row: 10, at: 'first', count: 12, part: true } })
  })
  test('a piece whose edge is told in words that are not understood', () => {
    expect(seamPart('the pebbly part of Front', names)).toEqual({ piece: 'Front', edge: { edge: 'any', part: true }, unread: true })
    expect(seamPart('bottom of Rib', ['Bottom', 'Rib'])).toEqual({ piece: 'Rib', edge: { edge: 'bottom' } })
    expect(seamPart('Rows 8-3 of the left side of Front', names).edge).toEqual({ edge: 'left', rows: [3, 8], count: 6, part: true })
  })
  test('a name with a bracket in it is a name like others', () => {
    expect(seamPart('top of Second shoulder of Front (left', ['Front (left'], [{ name: 'second shoulder', piece: 'Front (left' }])).toEqual({ piece: 'Front (left', edge: { edge: 'top', under: 'second shoulder' } })
  })
})
