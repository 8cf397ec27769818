import { describe, expect, test } from 'vitest'
import { noProgress, readProgress, withEntry, withTicks } from '../../../src/client/progress.ts'

const fresh = noProgress('skiff', 'Skiff', '1.0.0')

describe('a record of progress', () => {
  test('comes back as it was written', () => {
    const some = { ...withTicks(fresh, '1.0.1', { 'ball-1': 'a', 'ball-2~2': 'b' }), repeats: { 'ball-3:0': 2 }, notes: { 'ball-1': 'tight' }, part: 'ball', copy: 2, size: 'Wide' }
    expect(readProgress(JSON.stringify(some))).toEqual(some)
  })

  test.each([
    ['nothing', ''], ['half a record', '{"kind":"loopledger prog'], ['a list', '[]'], ['another kind', '{"kind":"something","edition":1,"slug":"a","title":"b","version":"1"}'],
    ['a later form', JSON.stringify({ ...fresh, edition: 2 })], ['a record without a pattern', JSON.stringify({ ...fresh, slug: undefined })],
  ])('is not made of %s', (_, text) => {
    expect(readProgress(text)).toBeUndefined()
  })

  test('keeps what is sound of a record that was tampered with', () => {
    const read = readProgress(JSON.stringify({ ...fresh, ticks: { a: 'x', b: 7, c: null }, repeats: { a: -1, b: 1.5, c: 3 }, notes: [], copy: 'two', part: 4 }))
    expect(read).toEqual({ ...fresh, ticks: { a: 'x' }, repeats: { c: 3 } })
  })

  test('ticks and un-ticks, and forgets the repeats of a row that is done or taken back', () => {
    const one = withTicks({ ...fresh, repeats: { 'ball-1:0': 3, 'ball-10:0': 2 } }, '1.0.0', { 'ball-1': 'a' })
    expect(one.ticks).toEqual({ 'ball-1': 'a' })
    expect(one.repeats).toEqual({ 'ball-10:0': 2 })
    expect(withTicks(one, '1.0.0', { 'ball-1': undefined }).ticks).toEqual({})
    expect(withEntry(withEntry({}, 'a', 1), 'a', undefined)).toEqual({})
  })
})
