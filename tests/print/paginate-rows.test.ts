import fc from 'fast-check'
import { expect, test } from 'vitest'
import { paginateRows, type Stackable } from '../../src/print/pages/paginate-rows.ts'

const row = (height = 7): Stackable => ({ kind: 'row', height })
const words: Stackable = { kind: 'instruction', height: 9 }
const rooms = { whole: 228, note: 5 }
const shares = (blocks: readonly Stackable[], first: number) => paginateRows(blocks, { ...rooms, first }).map(({ from, to, onNewPage }) => [from, to, onNewPage])

test('a part that fits stays where it is', () => {
  expect(shares([row(), row(), row(), row()], 40)).toEqual([[0, 4, false]])
})

test('a part of which only two rows would fit begins on a new page', () => {
  expect(shares(Array.from({ length: 10 }, () => row()), 20)).toEqual([[0, 10, true]])
})

test('rows are kept back so that the last page has three', () => {
  // 31 rows of 7 mm are 217 mm and fit with the note in 228; 33 leave two over, so one is kept back.
  expect(shares(Array.from({ length: 33 }, () => row()), 228)).toEqual([[0, 30, false], [30, 33, true]])
})

test('words that follow a row stay with it', () => {
  const blocks = [...Array.from({ length: 31 }, () => row()), words, row(), row(), row(), row()]
  expect(shares(blocks, 228)).toEqual([[0, 30, false], [30, 36, true]])
})

test('any part is shared out whole and in order, in pages that hold it, with three rows each where there are six', () => {
  const block = fc.oneof({ weight: 6, arbitrary: fc.integer({ min: 7, max: 60 }).map(row) }, { weight: 1, arbitrary: fc.constant(words) })
  fc.assert(fc.property(fc.array(block, { minLength: 1, maxLength: 80 }), fc.integer({ min: -20, max: 228 }), (given, first) => {
    const blocks = [row(), ...given]
    const pages = paginateRows(blocks, { ...rooms, first })
    expect(pages[0]?.from).toBe(0)
    expect(pages.at(-1)?.to).toBe(blocks.length)
    for (const [at, { from, to, onNewPage }] of pages.entries()) {
      if (at > 0) expect(from).toBe(pages[at - 1]?.to)
      expect(to).toBeGreaterThan(from)
      expect(onNewPage || at === 0).toBe(true)
      const height = blocks.slice(from, to).reduce((sum, one) => sum + one.height, 0)
      expect(height).toBeLessThanOrEqual((onNewPage ? rooms.whole : first) - (at < pages.length - 1 ? rooms.note : 0))
    }
  }))
})
