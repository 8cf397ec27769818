import { describe, expect, test } from 'vitest'
import { hookLabel, hookSize, hookSizes } from '../../../src/measures/hooks.ts'

describe('hook sizes', () => {
  // Published hook charts that agree: a general store's needle conversion chart, a yarn shop's needle and hook chart, matifs.com.
  test.each([
    [2.25, 'B-1'], [2.75, 'C-2'], [3.25, 'D-3'], [3.5, 'E-4'], [3.75, 'F-5'], [4, 'G-6'], [4.5, '7'], [5, 'H-8'], [5.5, 'I-9'],
    [6, 'J-10'], [6.5, 'K-10½'], [8, 'L-11'],
  ])('%s mm is US %s', (mm, us) => {
    expect(hookSize(mm)?.us).toBe(us)
  })

  // The same charts, column of the old UK and Canadian numbers.
  test.each([
    [2, '14'], [2.25, '13'], [3.25, '10'], [4, '8'], [4.5, '7'], [5, '6'], [5.5, '5'], [6, '4'], [6.5, '3'], [7, '2'], [8, '0'],
    [9, '00'], [10, '000'],
  ])('%s mm is old UK %s', (mm, uk) => {
    expect(hookSize(mm)?.uk).toBe(uk)
  })

  // Charts print two series of old UK numbers for these, one for needles and one for hooks: no label is safer than either.
  test.each([2.5, 2.75, 3, 3.5, 3.75])('%s mm has no old UK number', (mm) => {
    expect(hookSize(mm)?.uk).toBeUndefined()
  })

  test('sizes stand in order, each once', () => {
    const sizes = hookSizes.map(({ mm }) => mm)
    expect(sizes.length).toBeGreaterThan(12)
    expect(sizes).toEqual([...new Set(sizes)].sort((a, b) => a - b))
  })
})

describe('hook labels', () => {
  // The trade council pairs 10 mm with N/P-15 and prints 4.5 mm as 7, without a letter.
  test.each([
    [10, '10\u00a0mm (US\u00a0N/P-15)'], [4.5, '4.5\u00a0mm (US\u00a07)'], [5.5, '5.5\u00a0mm (US\u00a0I-9)'], [7, '7\u00a0mm'],
    [12, '12\u00a0mm'],
  ])('%s mm in US terms', (mm, label) => {
    expect(hookLabel(mm)).toBe(label)
  })

  test('UK terms add the old number', () => {
    expect(hookLabel(4, 'UK')).toBe('4\u00a0mm (US\u00a0G-6, old\u00a0UK\u00a08)')
    expect(hookLabel(7, 'UK')).toBe('7\u00a0mm (old\u00a0UK\u00a02)')
    expect(hookLabel(3.5, 'UK')).toBe('3.5\u00a0mm (US\u00a0E-4)')
  })
})
