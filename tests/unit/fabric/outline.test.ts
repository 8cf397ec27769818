import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { LaidRow, Stretch } from '../../../src/fabric/laid-row.ts'
import { Outline } from '../../../src/fabric/outline.ts'
import type { Place } from '../../../src/fabric/place.ts'

/** Named places, so that an outline can be read as words. `a2` is the second stitch of the row that makes `a`. */
const place = (name: string, row: number): Place => ({ kind: name, row })
const places = (letter: string, count: number): readonly Place[] => Array.from({ length: count }, (_, index) => place(`${letter}${index + 1}`, letter.charCodeAt(0)))

/** A row over the places from one to another of those before; without them over all that the row before made. */
function row(made: readonly Place[], over?: readonly Place[], more: Partial<LaidRow> = {}): LaidRow {
  return {
    name: made[0]?.kind[0] ?? '', round: false, places: made, startChains: [], endChains: [], foundation: [],
    ...(over && { over: { first: over[0]!, second: over[1] ?? over[0]!, beforeLast: over.at(-2) ?? over[0]!, last: over.at(-1)! } }), ...more,
  }
}

function lay(...rows: readonly LaidRow[]): Outline {
  const outline = new Outline()
  for (const each of rows) outline.lay(each, true)
  return outline
}

/** `ends c b a` are row-ends of those rows; other stretches tell their places. */
const words = (stretches: readonly Stretch[]): string =>
  stretches.map(({ edge, rows, places: along }) => (edge === 'row-ends' ? `ends ${rows.map(({ name }) => name).join(' ')}` : `${edge} ${along.map(({ kind }) => kind).join(' ')}`)).join(' | ')

const chain = (count: number): readonly Place[] => places('z', count)
const back = (all: readonly Place[]): readonly Place[] => all.toReversed()

// Drawn by hand; rows lie on one another from below, a1 is the first stitch worked.
describe('three rows of three', () => {
  //   → c1 c2 c3
  //   ← b3 b2 b1
  //   → a1 a2 a3
  //     z1 z2 z3
  const [a, b, c] = [places('a', 3), places('b', 3), places('c', 3)]
  const rows = [row(a, undefined, { foundation: chain(3) }), row(b, back(a)), row(c, back(b))]

  test('without a turn: down the side of the last stitch, along the chain, up the other side and along the top', () => {
    expect(words(lay(...rows).walk(false))).toBe('ends c b a | underside z3 z2 z1 | ends a b c | top c1 c2 c3')
  })

  test('after a turn the other way round', () => {
    expect(words(lay(...rows).walk(true))).toBe('top c3 c2 c1 | ends c b a | underside z1 z2 z3 | ends a b c')
  })
})

describe('steps', () => {
  const a = places('a', 5)
  const base = row(a, undefined, { foundation: chain(5) })

  test('a row that stops early leaves a step at its end', () => {
    //   ← .. b3 b2 b1
    //   → a1 a2 a3 a4 a5
    const b = row(places('b', 3), back(a).slice(0, 3))
    expect(words(lay(base, b).walk(false))).toBe('ends b | step a2 a1 | ends a | underside z1 z2 z3 z4 z5 | ends a b | top b1 b2 b3')
  })

  test('a row that begins farther in leaves one at its start', () => {
    //   ← b3 b2 b1 ..
    //   → a1 a2 a3 a4 a5
    const b = row(places('b', 3), back(a).slice(2))
    expect(words(lay(base, b).walk(false))).toBe('ends b a | underside z1 z2 z3 z4 z5 | ends a | step a5 a4 | ends b | top b1 b2 b3')
  })

  test('on both sides, row over row', () => {
    //   →       c1
    //   ←    b3 b2 b1
    //   → a1 a2 a3 a4 a5
    const b = places('b', 3)
    const outline = lay(base, row(b, back(a).slice(1, 4)), row(places('c', 1), back(b).slice(1, 2)))
    expect(words(outline.walk(false))).toBe('ends c | step b1 | ends b | step a5 | ends a | underside z5 z4 z3 z2 z1 | ends a | step a1 | ends b | step b3 | ends c | top c1')
  })
})

describe('wider rows', () => {
  test('chains added at the start hang out on that side', () => {
    //   ← b5 b4 b3 b2 b1
    //   →       a1 a2 a3 | x1 x2 under b1 b2: x1 outermost
    const a = places('a', 3)
    const b = row(places('b', 5), back(a), { startChains: places('x', 2) })
    expect(words(lay(row(a, undefined, { foundation: chain(3) }), b).walk(false))).toBe('ends b a | underside z1 z2 z3 | ends a | underside x2 x1 | ends b | top b1 b2 b3 b4 b5')
  })

  test('chains added at the end hang out on the other', () => {
    const a = places('a', 3)
    const b = row(places('b', 5), back(a), { endChains: places('x', 2) })
    expect(words(lay(row(a, undefined, { foundation: chain(3) }), b).walk(false))).toBe('ends b | underside x2 x1 | ends a | underside z1 z2 z3 | ends a b | top b1 b2 b3 b4 b5')
  })
})

describe('rows that go back to older ones', () => {
  const a = places('a', 6)
  const base = row(a, undefined, { foundation: chain(6) })

  test('the two sides of a neck stand side by side', () => {
    //   b2 b1 .. .. c2 c1      b over a6 a5, c over a2 a1, worked in the same direction
    //   → a1 a2 a3 a4 a5 a6
    const outline = lay(base, row(places('b', 2), back(a).slice(0, 2)))
    outline.lay(row(places('c', 2), back(a).slice(4)), false)
    expect(words(outline.walk(false))).toBe('ends c a | underside z1 z2 z3 z4 z5 z6 | ends a b | top b1 b2 | ends b | step a4 a3 | ends c | top c1 c2')
  })

  test('a short row and a longer one over it bury its end', () => {
    //   ← e6 e5 e4 e3 e2 e1     over d3 d2 d1 and on over a3 a2 a1
    //   →          d1 d2 d3
    //   ←          b3 b2 b1
    //   → a1 a2 a3 a4 a5 a6
    const b = places('b', 3)
    const outline = lay(base, row(b, back(a).slice(0, 3)))
    const d = places('d', 3)
    outline.lay(row(d, back(b)), true)
    outline.lay(row(places('e', 6), [...back(d), a[2]!, a[1]!, a[0]!]), true)
    expect(words(outline.walk(false))).toBe('ends e a | underside z1 z2 z3 z4 z5 z6 | ends a b d e | top e1 e2 e3 e4 e5 e6')
  })
})

describe('borders', () => {
  const a = places('a', 3)
  const b = places('b', 3)

  test('a row along a side is the side from then on', () => {
    const outline = lay(row(a, undefined, { foundation: chain(3) }), row(b, back(a)))
    const side = outline.walk(false)[0]!.places
    outline.lay(row(places('s', 2), side), false)
    expect(words(outline.walk(false))).toBe('ends s | underside z1 z2 z3 | ends a b | top b1 b2 b3 | ends s | top s1 s2')
  })

  test('a round is all the outline there is', () => {
    const outline = lay(row(a, undefined, { foundation: chain(3) }), row(b, back(a)))
    outline.lay(row(places('r', 10), undefined, { round: true }), false)
    expect(words(outline.walk(false))).toBe(`top ${places('r', 10).map(({ kind }) => kind).join(' ')}`)
  })

  test('a copy goes on by itself', () => {
    const outline = lay(row(a, undefined, { foundation: chain(3) }), row(b, back(a)))
    const copy = outline.copy()
    outline.lay(row(places('r', 10), undefined, { round: true }), false)
    expect(words(copy.walk(false))).toBe('ends b a | underside z1 z2 z3 | ends a b | top b1 b2 b3')
    copy.lay(row(places('c', 3), back(b)), true)
    expect(words(copy.walk(false))).toBe('ends c b a | underside z3 z2 z1 | ends a b c | top c1 c2 c3')
  })
})

describe('seams through both layers', () => {
  test('a folded top is closed: nothing of it is left, and the seam has no ends', () => {
    //   c1 c2 c3 c4          folded between c2 and c3: c4 meets c1, c3 meets c2
    //   b4 b3 b2 b1          a heel flap over half of a round of eight
    //   r4 r3 r2 r1  | r8 r7 r6 r5
    const [r, b, c] = [places('r', 8), places('b', 4), places('c', 4)]
    const outline = lay(row(r, undefined, { round: true }), row(b, r.slice(0, 4)), row(c, back(b)))
    outline.lay(row(places('s', 2), back(c), { closes: true }), true)
    expect(words(outline.walk(false))).toBe('ends c b | step r5 r6 r7 r8 | ends b c')
    expect(words(outline.walk(true))).toBe('ends c b | step r8 r7 r6 r5 | ends b c')
  })

  test('a folded side is closed; what is not folded in goes on beside the foundation', () => {
    //   → c1 c2 c3
    //   ← b3 b2 b1    folded between a and b, so that one end of each meets: c is a flap
    //   → a1 a2 a3
    const [a, b, c] = [places('a', 3), places('b', 3), places('c', 3)]
    const outline = lay(row(a, undefined, { foundation: chain(3) }), row(b, back(a)), row(c, back(b)))
    const side = outline.walk(false)[0]!.places
    outline.lay(row(places('s', 1), side.slice(1), { closes: true }), false)
    expect(words(outline.walk(false))).toBe('underside z3 z2 z1 | ends a b c | top c1 c2 c3 | ends c')
  })

  test('two tops that are sewn together part the outline: the hook stays on its ring', () => {
    //   b1 b2 .. .. c2 c1     b and c stand at either end of a, a2 lies between them; b is sewn to c
    //   a6 a5 a4 a3 a2 a1
    const a = places('a', 6)
    const [b, c] = [places('b', 2), places('c', 2)]
    const outline = lay(row(a, undefined, { foundation: chain(6) }), row(b, back(a).slice(0, 2)))
    outline.lay(row(c, back(a).slice(4)), false)
    // As it lies: ends c a | underside | ends a b | top b1 b2 | ends b | step a4 a3 | ends c | top c1 c2. The ring outside holds a's foundation.
    outline.sew(b, c)
    expect(words(outline.walk(false))).toBe('ends c a | underside z1 z2 z3 z4 z5 z6 | ends a b')
  })

  test('a row can lie on a seam', () => {
    const [a, b] = [places('a', 4), places('b', 2)]
    const outline = lay(row(a, undefined, { foundation: chain(4) }))
    outline.lay(row(b, back(a), { closes: true }), true)
    outline.lay(row(places('c', 2), back(b)), true)
    expect(words(outline.walk(false))).toBe('ends c a | underside z4 z3 z2 z1 | ends a c | top c1 c2')
  })
})

// Geometry: the outline of a rectangle of n stitches by m rows.
test('a rectangle of n stitches by m rows has 2n + 2m places', () => {
  fc.assert(fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 40 }), (n, m) => {
    const outline = new Outline()
    let below: readonly Place[] | undefined
    for (let index = 0; index < m; index += 1) {
      const made = Array.from({ length: n }, (_, at): Place => place(`s${at}`, index))
      outline.lay(row(made, below && back(below), index === 0 ? { foundation: chain(n) } : {}), true)
      below = made
    }
    expect(outline.walk(false).reduce((sum, { places: along }) => sum + along.length, 0)).toBe(2 * n + 2 * m)
    expect(outline.walk(true).flatMap(({ places: along }) => along).toReversed()).toEqual(outline.walk(false).flatMap(({ places: along }) => along))
  }))
})
