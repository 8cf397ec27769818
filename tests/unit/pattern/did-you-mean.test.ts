import { describe, expect, test } from 'vitest'
import { didYouMean, meant } from '../../../src/pattern/did-you-mean.ts'

const keys = ['title', 'summary', 'materials', 'made-for', 'seams', 'sizes', 'hooks']

describe('the name that was meant', () => {
  // One slip is a letter more, less or other (Levenshtein, 1965).
  test.each([
    ['materails', 'materials'], ['tilte', 'title'], ['Title', 'title'], ['MATERIALS', 'materials'], ['madefor', 'made-for'],
    ['made_for', 'made-for'], ['hook', 'hooks'], ['  sizes', 'sizes'],
  ])('%j is %s', (written, name) => {
    expect(meant(written, keys)).toBe(name)
  })

  test.each([['colour'], ['x'], [''], ['s'.repeat(5000)], ['sea']])('%j is none of them', (written) => {
    expect(meant(written, keys)).toBeUndefined()
  })

  test('is first of all the one that differs in capitals alone', () => {
    expect(meant('front', ['Fronts', 'Front'])).toBe('Front')
  })

  test('is a question, and none for a name that is right', () => {
    expect(didYouMean('tilte', keys)).toEqual({ hint: { text: 'did you mean `title`?' } })
    expect(didYouMean('title', keys)).toEqual({})
  })
})
