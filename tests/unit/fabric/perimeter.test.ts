import fc from 'fast-check'
import { expect, test } from 'vitest'
import { outline, perimeter, type FlatRow } from '../../../src/fabric/perimeter.ts'
import type { Place } from '../../../src/fabric/place.ts'

/** Named places, so that an outline can be read as words. */
const place = (name: string, more: Partial<Place> = {}): Place => ({ kind: name, row: 0, ...more })
const places = (prefix: string, count: number, more: Partial<Place> = {}): readonly Place[] => Array.from({ length: count }, (_, index) => place(`${prefix}${index + 1}`, more))
const row = (made: readonly Place[], left: readonly Place[] = []): FlatRow => ({ made, left, added: [] })
const words = (all: readonly Place[]): string => all.map(({ kind, row: index }) => (kind === 'row-end' ? `end${index + 1}` : kind)).join(' ')

// Drawn by hand: three rows of 3 stitches on a chain of 3 (a1 is the first stitch worked). Row 1 runs to the right, row 2 back, row 3 to
// the right again, so the last stitch lies at the right.
const rectangle = [row(places('a', 3)), row(places('b', 3)), row(places('c', 3))]
const chain = places('ch', 3)

test('without a turn the outline goes down the side of the last stitch, along the chain, up the other side and along the top', () => {
  expect(words(outline(perimeter(rectangle, chain), false))).toBe('end3 end2 end1 ch3 ch2 ch1 end1 end2 end3 c1 c2 c3')
})

test('after a turn it goes the other way round', () => {
  expect(words(outline(perimeter(rectangle, chain), true))).toBe('c3 c2 c1 end3 end2 end1 ch1 ch2 ch3 end1 end2 end3')
})

test('a row that stops early leaves a step, from the inside outwards', () => {
  // Row 2 works 2 of the 4 stitches of row 1, from the right, and leaves a1 at the left end last: a2 is next to it.
  const stepped = [row(places('a', 4)), row(places('b', 2), [place('a2'), place('a1')])]
  // Row 2 ended towards the left: down that side come its own end, the two places left, and the end of row 1.
  expect(words(outline(perimeter(stepped, places('ch', 4)), false))).toBe('end2 a2 a1 end1 ch1 ch2 ch3 ch4 end1 end2 b1 b2')
})

test('slip stitches at a row’s start step in on the other side, and are one place each', () => {
  const stepped = [row(places('a', 4)), row([...places('s', 2, { travel: true }), ...places('b', 2)])]
  expect(words(outline(perimeter(stepped, places('ch', 4)), false))).toBe('end2 end1 ch1 ch2 ch3 ch4 end1 s1 s2 end2 b1 b2')
})

// Geometry: the outline of a rectangle of n stitches by m rows.
test('a rectangle of n stitches by m rows has 2n + 2m places', () => {
  fc.assert(fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), (n, m) => {
    const rows = Array.from({ length: m }, (_, index) => row(places(`r${index}-`, n)))
    expect(outline(perimeter(rows, places('ch', n)), false)).toHaveLength(2 * n + 2 * m)
  }))
})

test('turning twice changes nothing', () => {
  const edges = perimeter(rectangle, chain)
  expect(outline(edges, true).toReversed()).toEqual(outline(edges, false))
})
