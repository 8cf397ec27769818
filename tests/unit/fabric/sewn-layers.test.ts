import { expect, test } from 'vitest'
import type { LaidRow } from '../../../src/fabric/laid-row.ts'
import { Outline } from '../../../src/fabric/outline.ts'
import type { Place } from '../../../src/fabric/place.ts'
import { sewnLayers } from '../../../src/fabric/sewn-layers.ts'

// Mathematics: two like discs held together and sewn along an arc have one rim, of what the arc leaves of each. The one behind lies turned over, so
// that its left side lies on the right side of the one in front.

/** A rectangle of so many stitches by so many rows, its first row a row of the right side. */
function cloth(stitches: number, rows: number) {
  const places = (kind: string, row: number): Place[] => Array.from({ length: stitches }, () => ({ kind, row }))
  const laid = Array.from({ length: rows }, (_, index): LaidRow => {
    const own = places('sc', index)
    const end = (into: Place): Place => ({ kind: 'row-end', row: index, into })
    return { name: `Row ${index + 1}`, number: index + 1, side: index % 2 === 0 ? 'RS' : 'WS', round: false, places: own, ends: [end(own[0]!), end(own.at(-1)!)], startChains: [], endChains: [], foundation: index === 0 ? places('ch', 0) : [] }
  })
  const outline = new Outline()
  for (const [index, row] of laid.entries()) outline.lay(row, index > 0)
  return { outline, rows: laid }
}

/** A row through both layers, over the places of the one in front that are named by its rows. */
function ridge(first: Place, second: Place, last: Place): LaidRow {
  return { name: 'Row 1', number: 1, round: false, places: [], over: { first, second, beforeLast: last, last }, startChains: [], endChains: [], foundation: [] }
}

/** How many places of each edge are left open. */
function left(outline: Outline | undefined) {
  const parts = outline?.walk(false) ?? []
  const count = (edge: string): number => parts.filter((part) => part.edge === edge).reduce((sum, { places }) => sum + places.length, 0)
  return { top: count('top') + count('step'), sides: count('row-ends'), underside: count('underside') }
}

test('sewn along a side, the top and the other side, both leave their undersides: the mouth of a pouch', () => {
  const [front, back] = [cloth(10, 6), cloth(10, 6)]
  // Row 6 is of the wrong side: up the right side, along the top, down the left side.
  const row = ridge(front.rows[0]!.ends![0], front.rows[1]!.ends![1], front.rows[0]!.ends![1])
  expect(left(sewnLayers(front, [row], back)[0])).toEqual({ top: 0, sides: 0, underside: 20 })
  expect(left(sewnLayers(front, [row], front)[0])).toEqual({ top: 0, sides: 0, underside: 20 })
})

test('sewn along one side and the top, each leaves a side and its underside', () => {
  const [front, back] = [cloth(10, 6), cloth(10, 6)]
  const row = ridge(front.rows[0]!.ends![0], front.rows[1]!.ends![1], front.rows[5]!.places[0]!)
  expect(left(sewnLayers(front, [row], back)[0])).toEqual({ top: 0, sides: 12, underside: 20 })
})

test('a piece of another shape does not lie so', () => {
  const [front, back] = [cloth(10, 6), cloth(9, 6)]
  const row = ridge(front.rows[0]!.ends![0], front.rows[1]!.ends![1], front.rows[0]!.ends![1])
  expect(sewnLayers(front, [row], back)).toEqual([])
})
