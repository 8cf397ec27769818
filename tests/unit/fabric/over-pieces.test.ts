import { describe, expect, test } from 'vitest'
import { endsOf, type LaidRow, type Stretch } from '../../../src/fabric/laid-row.ts'
import { likeness } from '../../../src/fabric/likeness.ts'
import { Outline } from '../../../src/fabric/outline.ts'
import { goesOver, overEnds } from '../../../src/fabric/over-pieces.ts'
import type { Place } from '../../../src/fabric/place.ts'

// Drawn by hand: a row y over a piece of a on z, three chains, and a piece of b on x, seen from the right side. It is worked from right to left.
//
//   y7 y6 y5 ––– y4 y3 y2 y1
//   b3 b2 b1      a4 a3 a2 a1
//   x3 x2 x1      z4 z3 z2 z1
//
// All round from the end of y, counterclockwise: the left side of y and b, x, the right side of b, the chains from below, the left side of a, z,
// the right side of a and y, the top of y.

const places = (letter: string, count: number): readonly Place[] => Array.from({ length: count }, (_, index) => ({ kind: `${letter}${index + 1}`, row: letter.charCodeAt(0) }))

function row(made: readonly Place[], foundation: readonly Place[] = [], more: Partial<LaidRow> = {}): LaidRow {
  return { name: made[0]!.kind[0]!, side: 'RS', round: false, places: made, startChains: [], endChains: [], foundation, ends: endsOf(made), ...more }
}

function fabric(laid: LaidRow): Outline {
  const outline = new Outline()
  outline.lay(laid, true)
  return outline
}

const words = (stretches: readonly Stretch[]): string => stretches.map(({ edge, rows, places: along }) => (edge === 'row-ends' ? `ends ${rows.map(({ name }) => name).join(' ')}` : `${edge} ${along.map(({ kind }) => kind).join(' ')}`)).join(' | ')

const [a, b, bridge] = [places('a', 4), places('b', 3), places('c', 3)]

function yoke(own: Outline, other: Outline, left = b): Outline {
  const over = goesOver([{ piece: 'right', places: a, bridge: [] }, { piece: 'left', places: left, bridge }], own, (name) => (name === 'left' ? [other] : []), 'RS')!
  const all = own.copy()
  all.lay(row(places('y', 7), [], { goesOver: over, over: overEnds(over) }), true)
  return all
}

describe('a row over two pieces and a chain between them', () => {
  const right = fabric(row(a, places('z', 4)))
  const round = 'ends y b | underside x3 x2 x1 | ends b | underside c3 c2 c1 | ends a | underside z4 z3 z2 z1 | ends a y | top y1 y2 y3 y4 y5 y6 y7'

  test('holds them together', () => {
    expect(words(yoke(right, fabric(row(b, places('x', 3)))).walk(false))).toBe(round)
  })

  test('whichever way its last row was worked', () => {
    expect(words(yoke(right, fabric(row(b.toReversed(), places('x', 3).toReversed(), { side: 'WS', name: 'b' })), b.toReversed()).walk(false))).toBe(round)
  })

  test('whichever way the other one was worked', () => {
    const worked = fabric(row(b.toReversed(), places('x', 3).toReversed(), { side: 'WS', name: 'b' }))
    expect(words(yoke(right, worked).walk(false))).toBe(round)
  })

  // The row has a side of its own at either end of the chains: makers work into it, or do not (common practice, no source).
  test('and with the sides at the chains', () => {
    const [beside] = yoke(right, fabric(row(b, places('x', 3)))).withBridgeEnds
    expect(words(beside!.walk(false))).toBe('ends y b | underside x3 x2 x1 | ends b y | underside c3 c2 c1 | ends y a | underside z4 z3 z2 z1 | ends a y | top y1 y2 y3 y4 y5 y6 y7')
  })

  test('is not known where a piece is not', () => {
    expect(goesOver([{ places: a, bridge: [] }, { piece: 'sleeve', places: b, bridge }], right, () => [], 'RS')).toBeUndefined()
  })
})

test('two copies of one piece have places of their own', () => {
  const one = fabric(row(a, places('z', 4)))
  const over = goesOver([{ places: a, bridge: [] }, { places: a, bridge: [] }], one, () => [], 'RS')!
  one.lay(row(places('y', 8), [], { goesOver: over, over: overEnds(over) }), true)
  // 4 + 4 below; each copy has two ends, of which two meet under the row, and the row two.
  expect(words(one.walk(false))).toBe('ends y a | underside z4 z3 z2 z1 | ends a a | underside z4 z3 z2 z1 | ends a y | top y1 y2 y3 y4 y5 y6 y7 y8')
  expect(over.legs[1]!.places.some((place) => a.includes(place))).toBe(false)
})

test('a likeness has the outline of the other, and none of its places', () => {
  const one = fabric(row(a, places('z', 4)))
  const copy = likeness()
  const [outline, { placeFor }] = [one.copy(copy), copy]
  expect(words(outline.walk(false))).toBe(words(one.walk(false)))
  expect(outline.has(a[0]!)).toBe(false)
  expect(outline.has(placeFor(a[0]!))).toBe(true)
})
