import { expect, test } from 'vitest'
import type { LaidRow, Part } from '../../../src/fabric/laid-row.ts'
import { sewnRings, type SewnPiece, type ToldSeam } from '../../../src/fabric/sewn-rings.ts'
import type { Place } from '../../../src/fabric/place.ts'

// Mathematics: two discs glued along an arc are a disc, whose rim is both rims without the arcs; a disc glued to itself along two arcs is a tube with two rims.

interface Cloth {
  readonly parts: readonly Part[]
  readonly piece: SewnPiece
}

/** A rectangle of so many stitches by so many rows, drawn by hand: top, left side down, underside, right side up, as seen from the right side. */
function cloth(stitches: number, rows: number): Cloth {
  const places = (kind: string, row: number): Place[] => Array.from({ length: stitches }, () => ({ kind, row }))
  const chain = places('ch', 0)
  const laid = Array.from({ length: rows }, (_, index): LaidRow => ({
    name: `Row ${index + 1}`, number: index + 1, side: index % 2 === 0 ? 'RS' : 'WS', round: false, places: places('sc', index), startChains: [], endChains: [], foundation: index === 0 ? chain : [],
  }))
  // Rows of the right side run from right to left, those of the wrong side from left to right.
  const ends = laid.map(({ side, places: row }, index) => {
    const [first, last] = [row[0]!, row.at(-1)!].map((into): Place => ({ kind: 'row-end', row: index, into }))
    return side === 'RS' ? { right: first!, left: last! } : { right: last!, left: first! }
  })
  const side = (hand: 'left' | 'right', order: readonly number[]): Part[] => order.map((index) => ({ edge: 'row-ends', row: laid[index]!, places: [ends[index]![hand]] }))
  const up = laid.map((_, index) => index)
  const top = laid.at(-1)!
  return {
    parts: [{ edge: 'top', row: top, places: top.side === 'RS' ? top.places : top.places.toReversed() }, ...side('left', up.toReversed()), { edge: 'underside', row: laid[0]!, places: chain.toReversed() }, ...side('right', up)],
    piece: { rows: laid, under: () => [] },
  }
}

const count = (parts: readonly Part[], edge: Part['edge']): number => parts.filter((part) => part.edge === edge).reduce((sum, { places }) => sum + places.length, 0)
const open = (parts: readonly Part[]): number => count(parts, 'top') + count(parts, 'row-ends') + count(parts, 'underside')

test('two cloths sewn side to side have one rim, without the two sides', () => {
  const [one, other] = [cloth(10, 6), cloth(7, 6)]
  const rings = sewnRings([one.parts, other.parts], [one.piece, other.piece], [[{ piece: 0, words: { edge: 'left' } }, { piece: 1, words: { edge: 'right' } }]])
  expect(rings.map(open)).toEqual([2 * (10 + 6) + 2 * (7 + 6) - 2 * 6])
  // Round it goes: the top of the one, the top of the other, down, along both undersides, up.
  const [ring] = rings
  const edges = ring!.map(({ edge }) => edge).filter((edge, index, all) => edge !== all[index - 1])
  const from = edges.findIndex((edge, index) => edge === 'underside' && edges[(index + 1) % edges.length] === 'seam')
  expect([...edges.slice(from), ...edges.slice(0, from)]).toEqual(['underside', 'seam', 'underside', 'row-ends', 'top', 'seam', 'top', 'row-ends'])
})

test('a cloth sewn to itself is a tube with two rims', () => {
  const { parts, piece } = cloth(12, 5)
  const rings = sewnRings([parts], [piece], [[{ piece: 0, words: { edge: 'left' } }, { piece: 0, words: { edge: 'right' } }]])
  expect(rings.map(open).toSorted()).toEqual([12, 12])
  expect(rings.map((ring) => count(ring, 'top')).toSorted()).toEqual([0, 12])
})

test('two cloths sewn at both ends of their tops leave a neck', () => {
  const [front, back] = [cloth(20, 8), cloth(20, 8)]
  const shoulder = (piece: number, at: 'first' | 'last') => ({ piece, words: { edge: 'top' as const, part: true, count: 6, at } })
  // Row 8 is of the wrong side: its first stitch lies at the left. A left shoulder meets the right one of the piece behind it, seen from its own right side.
  const rings = sewnRings([front.parts, back.parts], [front.piece, back.piece], [[shoulder(0, 'first'), shoulder(1, 'last')], [shoulder(0, 'last'), shoulder(1, 'first')]])
  expect(rings.map(open).toSorted((a, b) => a - b)).toEqual([8 + 8, 2 * (8 + 20 + 8)])
})

test('a side of which some rows are sewn leaves a slit', () => {
  const { parts, piece } = cloth(10, 9)
  const rows = (first: number, last: number) => ({ rows: [first, last] as const, part: true, count: last - first + 1 })
  const rings = sewnRings([parts], [piece], [
    [{ piece: 0, words: { edge: 'left', ...rows(1, 3) } }, { piece: 0, words: { edge: 'right', ...rows(1, 3) } }],
    [{ piece: 0, words: { edge: 'left', ...rows(7, 9) } }, { piece: 0, words: { edge: 'right', ...rows(7, 9) } }],
  ])
  // The hem of 10, the top of 10, and a slit of 3 rows on either side.
  expect(rings.map(open).toSorted((a, b) => a - b)).toEqual([6, 10, 10])
})

test('first, next and next go on along an edge, and what is behind them stays free', () => {
  const strip = cloth(3, 20)
  const sewn = [5, 4, 3].map((rows) => cloth(2, rows))
  const seams = sewn.map(({ piece: { rows } }, index): ToldSeam => [{ piece: 0, words: { edge: 'left', part: true, count: rows.length, at: index === 0 ? 'first' : 'next' } }, { piece: index + 1, words: { edge: 'right' } }])
  const [ring] = sewnRings([strip.parts, ...sewn.map(({ parts }) => parts)], [strip.piece, ...sewn.map(({ piece }) => piece)], seams)
  const left = ring!.filter(({ edge, row, places: [place] }) => edge === 'row-ends' && strip.piece.rows.includes(row) && (row.side === 'WS') === (place!.into === row.places[0]))
  expect(left.map(({ row }) => row.number)).toEqual([20, 19, 18, 17, 16, 15, 14, 13])
})

test('a seam of an edge that is gone, or of a part that is not told, changes nothing', () => {
  const { parts, piece } = cloth(10, 4)
  expect(sewnRings([parts], [piece], [[{ piece: 0, words: { edge: 'left', part: true } }, { piece: 0, words: { edge: 'right' } }]])).toEqual([])
  expect(sewnRings([parts], [piece], [[{ piece: 1, words: { edge: 'left' } }, { piece: 0, words: { edge: 'right' } }]])).toEqual([])
})
