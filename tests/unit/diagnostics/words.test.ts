import { expect, test } from 'vitest'
import { byKind, counted, listOf, moreOrFewer, ordinal, plural, signed, timesInWords } from '../../../src/diagnostics/words.ts'

// English grammar and trade spelling are the outside oracle: plurals and ordinals as any English grammar gives them,
// "sts", "sps" and unchanging stitch abbreviations as crochet handbooks print them (common practice, no source).

test.each([
  ['stitch', 'stitches'], ['row', 'rows'], ['round', 'rounds'], ['place', 'places'], ['size', 'sizes'],
  ['st', 'sts'], ['ch-2 sp', 'ch-2 sps'], ['ch sp', 'ch sps'], ['chain space', 'chain spaces'], ['loop', 'loops'],
  ['inch', 'inches'], ['box', 'boxes'], ['body', 'bodies'], ['day', 'days'], ['repeat', 'repeats'],
  ['row-end', 'row-ends'], ['warning', 'warnings'], ['piece', 'pieces'], ['shell', 'shells'], ['picot', 'picots'],
  ['sc', 'sc'], ['hdc', 'hdc'], ['dc', 'dc'], ['tr', 'tr'], ['dtr', 'dtr'], ['ch', 'ch'], ['sl st', 'sl st'],
  ['hdc2tog', 'hdc2tog'], ['FPdc', 'FPdc'],
])('more than one %s are %s', (one, many) => {
  expect(plural(one, 1)).toBe(one)
  expect(plural(one, 2)).toBe(many)
  expect(plural(one, 0)).toBe(many)
})

test('a number goes with its word', () => {
  expect(counted(1, 'stitch')).toBe('1 stitch')
  expect(counted(0, 'stitch')).toBe('0 stitches')
  expect(counted(34, 'stitch')).toBe('34 stitches')
})

test.each([
  [1, '1st'], [2, '2nd'], [3, '3rd'], [4, '4th'], [10, '10th'], [11, '11th'], [12, '12th'], [13, '13th'],
  [20, '20th'], [21, '21st'], [22, '22nd'], [23, '23rd'], [101, '101st'], [111, '111th'], [112, '112th'], [113, '113th'],
])('%i in order is %s', (number, words) => {
  expect(ordinal(number)).toBe(words)
})

test('times are once, twice, then a number', () => {
  expect([1, 2, 3].map(timesInWords)).toEqual(['once', 'twice', '3 times'])
})

test('a list ends in and, or in the word asked for', () => {
  expect(listOf([])).toBe('')
  expect(listOf(['a'])).toBe('a')
  expect(listOf(['a', 'b'])).toBe('a and b')
  expect(listOf(['a', 'b', 'c'])).toBe('a, b and c')
  expect(listOf(['a', 'b', 'c'], 'or')).toBe('a, b or c')
})

test('a change carries its sign, and a true minus', () => {
  expect([6, -2, 0].map(signed)).toEqual(['+6', '\u22122', '0'])
})

test('a difference says its direction', () => {
  expect(moreOrFewer(35, 34)).toBe('1 more')
  expect(moreOrFewer(30, 32)).toBe('2 fewer')
  expect(moreOrFewer(30, 30)).toBe('the same')
})

test('stitches and spaces by kind', () => {
  expect(byKind({ dc: 17 }, { 'ch-2': 5 })).toBe('17 dc, 5 ch-2 sps')
  expect(byKind({ dc: 1, sc: 0 }, { 'ch-1': 1, ch: 2 })).toBe('1 dc, 1 ch-1 sp, 2 ch sps')
  expect(byKind({})).toBe('')
})
