import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { borderedRectangle, sumOf, withBorder } from './random-borders.ts'
import { oneOf } from './random-rows.ts'

// Geometry and sums, edge by edge: a rectangle of n stitches by m rows offers n + m + n + m places; each part of the border makes what
// its own words say, and the parts are added up here.

const findings = (text: string): string[] => checkOnce({ path: 'rectangle.md', text }).diagnostics
  .filter(({ code }) => code !== 'key-missing-to-publish')
  .map(({ code, message }) => `${code} ${message}`)

describe('a border round a rectangle', () => {
  test('comes out in whatever words its edges and corners are told', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const cloth = borderedRectangle(draw)
      const text = withBorder(cloth, cloth.parts)
      expect(findings(text), text).toEqual([])
    }), { numRuns: 250, seed: 4_11 })
  })

  test('is found when its total is one off', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const cloth = borderedRectangle(draw)
      const text = withBorder(cloth, cloth.parts, sumOf(cloth.parts) + oneOf(draw, [-1, 1]))
      expect(findings(text), text).not.toEqual([])
    }), { numRuns: 120, seed: 4_12 })
  })

  test('is found when an edge has a place too few or too many, though the total goes along', () => {
    let planted = 0
    fc.assert(fc.property(fc.gen(), (draw) => {
      const cloth = borderedRectangle(draw)
      const candidates = cloth.parts.flatMap(({ slipped }, at) => (slipped ? [{ slipped, at }] : []))
      if (candidates.length === 0) return
      const { slipped, at } = oneOf(draw, candidates)
      const text = withBorder(cloth, cloth.parts.with(at, slipped))
      expect(findings(text), text).not.toEqual([])
      planted += 1
    }), { numRuns: 250, seed: 4_13 })
    expect(planted).toBeGreaterThan(200)
  })
})
