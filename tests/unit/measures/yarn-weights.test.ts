import { describe, expect, test } from 'vitest'
import {
  holds, tradeName, weightsForHook, yarnStandardsCredit, yarnWeight, yarnWeightLabel, yarnWeights,
} from '../../../src/measures/yarn-weights.ts'

describe('yarn weights', () => {
  // The Craft Yarn Council's table of yarn weights as reproduced by 222handspun.com (0 to 7) and crochetonatrain.com (0 to 6).
  test.each([
    [0, 'Lace', 'dc', 32, 42, 2.25, 2.25],
    [1, 'Super Fine', 'sc', 21, 32, 2.25, 3.5],
    [2, 'Fine', 'sc', 16, 20, 3.5, 4.5],
    [3, 'Light', 'sc', 12, 17, 4.5, 5.5],
    [4, 'Medium', 'sc', 11, 14, 5.5, 6.5],
    [5, 'Bulky', 'sc', 8, 11, 6.5, 9],
  ])('category %s, %s: %s %s to %s over 4 in, hook %s to %s mm', (number, name, stitch, from, to, hookFrom, hookTo) => {
    expect(yarnWeight(number)).toMatchObject({ name, gauge: { stitch, from, to }, hook: { from: hookFrom, to: hookTo } })
  })

  // Editions of the table differ above 5; all of them begin category 6 at 9 mm and have a larger hook for 7.
  test('6 begins at 9 mm in every edition, and 7 is larger', () => {
    const six = yarnWeight(6)!
    const hooks = [six.hook, ...six.alternatives.map(({ hook }) => hook!)]
    expect(hooks).toHaveLength(3)
    expect(hooks.map(({ from }) => from)).toEqual([9, 9, 9])
    expect(yarnWeight(7)!.hook.from).toBeGreaterThan(9)
  })

  // The older editions as 222handspun.com (6 to 9 stitches, hook 9 to 16 mm) and crochetonatrain.com (5 to 9, 9 mm and larger) print them.
  test('older editions of 6 are accepted as well', () => {
    const gauges = yarnWeight(6)!.alternatives.map(({ gauge }) => gauge)
    expect(gauges).toContainEqual({ from: 6, to: 9 })
    expect(gauges).toContainEqual({ from: 5, to: 9 })
  })

  test('categories run from 0 to 7', () => {
    expect(yarnWeights.map(({ number }) => number)).toEqual([0, 1, 2, 3, 4, 5, 6, 7])
    expect(yarnWeight(8)).toBeUndefined()
  })

  // In the same table neighbouring categories share the end points of their hook ranges.
  test.each([[3.5, [1, 2]], [4.5, [2, 3]], [5.5, [3, 4]], [6.5, [4, 5]], [9, [5, 6]], [5, [3]]])(
    'a %s mm hook goes with %s', (mm, numbers) => {
      expect(weightsForHook(mm).map(({ number }) => number)).toEqual(numbers)
    })

  // Trade facts: super bulky (6) is worked with a 10 mm hook, worsted (4) with a 5.5 mm hook.
  test('super bulky goes with 10 mm, worsted with 5.5 mm', () => {
    expect(weightsForHook(10).map(({ types }) => types[0])).toEqual(['Super Bulky'])
    expect(weightsForHook(5.5).map(({ types }) => types[0])).toContain('Worsted')
  })

  // The same table, stitches over 4 in: 16 and 17 are in both 2 and 3, 11 in both 4 and 5.
  test('gauge ranges overlap where the table says', () => {
    const byGauge = (sts: number) => yarnWeights.filter(({ gauge }) => gauge.stitch === 'sc' && holds(gauge, sts)).map(({ number }) => number)
    expect(byGauge(16)).toEqual([2, 3])
    expect(byGauge(11)).toEqual([4, 5])
    expect(byGauge(13)).toEqual([3, 4])
  })
})

describe('words for yarn weights', () => {
  test('as materials lists print them', () => {
    expect(yarnWeightLabel(6)).toBe('Super bulky\u00a0(6)')
    expect(yarnWeightLabel(4)).toBe('Medium\u00a0(4)')
  })

  // A yarn shop's table of trade names by length for 100 g: aran in the UK is worsted in the US, chunky is bulky.
  test('over the counter', () => {
    expect([3, 4, 5, 6].map((number) => tradeName(number, 'UK'))).toEqual(['DK', 'aran', 'chunky', 'super chunky'])
    expect([3, 4, 5, 6].map((number) => tradeName(number, 'US'))).toEqual(['DK', 'worsted', 'bulky', 'super bulky'])
    expect(tradeName(1, 'UK')).toBeUndefined()
  })

  // The council asks for this name on every page that shows its figures.
  test('the credit names the council and its address', () => {
    expect(yarnStandardsCredit).toContain('Craft Yarn Council’s www.YarnStandards.com')
  })
})
