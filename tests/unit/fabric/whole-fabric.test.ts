import { describe, expect, test } from 'vitest'
import { endsOf, type LaidRow, type Stretch } from '../../../src/fabric/laid-row.ts'
import { Outline } from '../../../src/fabric/outline.ts'
import type { PieceRun } from '../../../src/fabric/piece-run.ts'
import type { Place } from '../../../src/fabric/place.ts'
import { Fabrics } from '../../../src/fabric/whole-fabric.ts'
import { workedPiece } from '../../support/named-outline.ts'

/** `a2` is the second stitch of the row that makes `a`. */
const places = (letter: string, count: number): readonly Place[] => Array.from({ length: count }, (_, index) => ({ kind: `${letter}${index + 1}`, row: letter.charCodeAt(0) }))

function row(made: readonly Place[], over?: readonly Place[], foundation: readonly Place[] = []): LaidRow {
  return {
    name: made[0]!.kind[0]!, round: false, places: made, startChains: [], endChains: [], foundation, ends: endsOf(made),
    ...(over && { over: { first: over[0]!, second: over[1] ?? over[0]!, beforeLast: over.at(-2) ?? over[0]!, last: over.at(-1)! } }),
  }
}

const back = (all: readonly Place[]): readonly Place[] => all.toReversed()

/** A piece of one row, on the outline of the piece that it goes on from. The row after it is worked back over it. */
function piece(laid: LaidRow, on?: { readonly run: PieceRun; readonly index: number }): PieceRun {
  const outline = on?.run.outline.copy() ?? new Outline()
  outline.lay(laid, true)
  const { on: _, ...plain } = workedPiece('Ch 2.')
  return { ...plain, outline, laid: [{ row: laid, turned: true }], edge: { places: back(laid.places), round: false, chain: false }, ...(on && { on: on.index }) }
}

const words = (stretches: readonly Stretch[] | undefined): string | undefined =>
  stretches?.map(({ edge, rows, places: along }) => (edge === 'row-ends' ? `ends ${rows.map(({ name }) => name).join(' ')}` : `${edge} ${along.map(({ kind }) => kind).join(' ')}`)).join(' | ')

// Drawn by hand; a body of seven with a front on either end of it, b worked first.
//   c2 c1 .. .. .. b2 b1        c goes on beside b, and leaves three between
//   a1 a2 a3 a4 a5 a6 a7
//   z1 z2 z3 z4 z5 z6 z7
describe('two pieces beside one another on a third', () => {
  const [a, b, c] = [places('a', 7), places('b', 2), places('c', 2)]
  const fabrics = new Fabrics()
  const body = piece(row(a, undefined, places('z', 7)))
  fabrics.add(body, undefined)

  test('a piece alone is seen as its own', () => {
    expect(fabrics.seenFrom(0, [])).toEqual({ whole: [], sewn: [] })
    expect(fabrics.beside(0)).toEqual([])
  })

  test('what the first one leaves is where the second may begin', () => {
    fabrics.add(piece(row(b, back(a).slice(0, 2)), { run: body, index: 0 }), 0)
    expect(fabrics.beside(0).map(({ places: run }) => run.map(({ kind }) => kind).join(' '))).toEqual(['a5 a4 a3 a2 a1'])
    expect(words(fabrics.seenFrom(0, []).whole[0]?.walk(false))).toBe('ends a | underside z7 z6 z5 z4 z3 z2 z1 | ends a | step a1 a2 a3 a4 a5 | ends b | top b2 b1 | ends b')
  })

  test('both stand on the whole, and a seam between their tops parts it', () => {
    fabrics.add(piece(row(c, [a[1]!, a[0]!]), { run: body, index: 0 }), 0)
    const { whole, sewn } = fabrics.seenFrom(0, [[1, 2]])
    expect(words(whole[0]?.walk(false))).toBe('ends a | underside z7 z6 z5 z4 z3 z2 z1 | ends a c | top c2 c1 | ends c | step a3 a4 a5 | ends b | top b2 b1 | ends b')
    expect(words(sewn[0]?.walk(false))).toBe('ends a | underside z7 z6 z5 z4 z3 z2 z1 | ends a c b')
    expect(fabrics.hangingWith(0)).toEqual([0, 1, 2])
  })
})

// Drawn by hand; flaps b and c on a round of nine.
//      b1 b2       c1 c2
//   a1 a2 a3 a4 a5 a6 a7 a8 a9 (a1)
describe('two flaps on a round', () => {
  const [a, b, c] = [places('a', 9), places('b', 2), places('c', 2)]
  const fabrics = new Fabrics()
  const ring = { ...row(a), round: true }
  const plain = piece(ring)
  const cap: PieceRun = { ...plain, edge: { places: a, round: true, chain: false } }
  fabrics.add(cap, undefined)
  const runs = (): readonly string[] => fabrics.beside(0).map(({ places: run }) => run.map(({ kind }) => kind).join(' '))

  test('what the first one leaves is parted by it and by the join, and is one run over the join', () => {
    fabrics.add(piece(row(b, a.slice(1, 3)), { run: cap, index: 0 }), 0)
    expect(runs()).toEqual(['a4 a5 a6 a7 a8 a9', 'a1', 'a4 a5 a6 a7 a8 a9 a1'])
  })

  test('a round goes along what is open, down and up the flaps', () => {
    fabrics.add(piece(row(c, a.slice(5, 7)), { run: cap, index: 0 }), 0)
    expect(words(fabrics.seenFrom(0, []).whole[0]?.walk(false))).toBe('step a1 | ends b | top b1 b2 | ends b | step a4 a5 | ends c | top c1 c2 | ends c | step a8 a9')
    expect(runs()).toEqual(['a8 a9', 'a4 a5', 'a1', 'a8 a9 a1'])
  })
})
