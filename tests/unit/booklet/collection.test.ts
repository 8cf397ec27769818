import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { makeBooklet } from '../../../src/booklet/make-booklet.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'
import { plainSpaces } from './made-by-hand.ts'

const checkedPattern = (slug: string) => checkPattern({ path: `patterns/${slug}.md`, text: readFileSync(`patterns/${slug}.md`, 'utf8') })

const slugs = readdirSync('patterns').map((name) => name.replace(/\.md$/, ''))

/** Stitches of every row of a piece, in one size. */
const counts = (slug: string, piece: string, size?: string) =>
  checkedPattern(slug).pieces.find((worked) => worked.piece.name === piece && worked.size === size)!.rows
    .filter((row) => row.number !== undefined).map(({ makes }) => makes)

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0)
const times = (count: number, value: number) => Array.from({ length: count }, () => value)

describe('counts of the collection, worked by hand with pencil and paper', () => {
  // 6 × (1+…+8) + 9 × 48 + 6 × (7+…+1) = 216 + 432 + 168.
  test('Float: 816 stitches in the ball, 100 in the becket', () => {
    expect(counts('float', 'The ball')).toEqual([6, 12, 18, 24, 30, 36, 42, 48, ...times(9, 48), 42, 36, 30, 24, 18, 12, 6])
    expect(sum(counts('float', 'The ball'))).toBe(816)
    expect(counts('float', 'The becket')).toEqual([24, 24, 28, 24])
  })

  // Row 2: 1 + 17 × 2; Row 4: 2 + 16 × 2 + 1. Edging: 33 row-ends, 35 chains, 33 row-ends, 35 stitches.
  test('Shingle Cloth: 33 rows of 35, and 136 round the edge', () => {
    expect(counts('shingle-cloth', 'Cloth')).toEqual(times(33, 35))
    expect(counts('shingle-cloth', 'Edging')).toEqual([136])
  })

  // Crown 8 a round; the body 56 (64, 72, 80, 88).
  test.each([['Baby', 7, 8, 3, 840], ['Toddler', 8, 9, 3, 1056], ['Child', 9, 9, 4, 1296], ['Adult', 10, 10, 4, 1560], ['Large', 11, 10, 4, 1760]])(
    'Bollard Hat, %s: %s rounds of crown, %s of sides, %s of brim, %s stitches', (size, crown, sides, brim, all) => {
      expect(counts('bollard-hat', 'Crown', size)).toEqual(Array.from({ length: crown }, (_, index) => 8 * (index + 1)))
      expect(counts('bollard-hat', 'Sides', size)).toEqual(times(sides, 8 * crown))
      expect(counts('bollard-hat', 'Brim', size)).toEqual(times(brim, 8 * crown))
      expect(sum(['Crown', 'Sides', 'Brim'].flatMap((piece) => counts('bollard-hat', piece, size)))).toBe(all)
    })

  // 12; 4 × 3 + 16; 16 + 4 × 4; 4 × 11 + 8; 4 × 13 + 16; 4 × 17 + 8.
  test('Harbour Block: six rounds', () => {
    expect(counts('harbour-block', 'Block')).toEqual([12, 28, 32, 52, 68, 76])
  })
})

describe('the collection is clean', () => {
  test.each(slugs)('%s has nothing to look at', (slug) => {
    expect(checkedPattern(slug).diagnostics.map(({ code, message }) => `${code}: ${message}`)).toEqual([])
  })

  test('no count is left open in print', () => {
    expect(slugs.length).toBeGreaterThan(3)
    for (const slug of slugs) {
      const rows = makeBooklet(checkedPattern(slug)).parts.flatMap(({ lines }) => lines).filter((line) => line.kind === 'row')
      expect(rows.length, slug).toBeGreaterThan(5)
      expect(rows.filter(({ stitches }) => stitches.includes('?')), slug).toEqual([])
    }
  })
})

describe('finished sizes are counts ÷ gauge, to the nearest half centimetre', () => {
  // By hand: 35 ÷ 1.4 = 25, 33 ÷ 1.3 = 25.38; 48 ÷ 1.6 ÷ π = 9.55; 19 ÷ 1.4 = 13.57; 56, 64, 72, 80, 88 ÷ 1.5 = 37.33, 42.67, 48, 53.33, 58.67.
  test.each([
    ['shingle-cloth', [[25], [25.5]]], ['float', [[9.5]]], ['harbour-block', [[13.5], [13.5]]], ['bollard-hat', [[37.5, 42.5, 48, 53.5, 58.5]]],
    // Thirteen rounds of 1 cm on either side, 14 stitches between the ends: 26 and 26 + 14 ÷ 1.3 = 36.77. 48 ÷ 1.6 = 30.
    ['galley-mat', [[26], [37]]], ['regatta-pot', [[30]]],
    // 40 and 60 ÷ 0.8; 11 and 15 ÷ 0.6 = 18.33 and 25. 47 ÷ 1.6 = 29.38; 80 rows of dc ÷ 0.8 and one of sc, which is about half a centimetre.
    ['skiff-cushion', [[50, 75], [18.5, 25]]], ['drift-net-runner', [[29.5], [100.5]]],
    // 88 to 120 in steps of 8, and 32 to 40 in steps of 2, ÷ 1.5; 24, 29, 32, 35 and 38 ÷ 1.1.
    ['deckhand-top', [[58.5, 64, 69.5, 74.5, 80], [21.5, 22.5, 24, 25.5, 26.5], [22, 26.5, 29, 32, 34.5]]],
  ])('%s', (slug, cm) => {
    expect(checkedPattern(slug).pattern!.finished.map(({ is }) => is)).toEqual(cm)
  })
})

/** A yarn of a pattern is listed, size by size, at the estimated metres and a tenth to two tenths more. */
function expectListed(slug: string, yarn: number, estimates: readonly number[]): void {
  const { needs, ball } = checkedPattern(slug).pattern!.materials!.yarns[yarn]!
  expect(needs).toHaveLength(estimates.length)
  needs.forEach((grams, size) => {
    const listed = (grams * ball!.metres) / ball!.grams
    expect(listed, `size ${size}`).toBeGreaterThanOrEqual(estimates[size]! * 1.1)
    expect(listed, `size ${size}`).toBeLessThanOrEqual(estimates[size]! * 1.21)
  })
}

describe('yarn is area × measured yarn use, and a tenth to spare', () => {
  // Published measurements of yarn use (windchilde.com, worsted yarn, 5 mm hook): inches of yarn for a square inch of cloth,
  // and for an inch of one row of sc 10.6. Soft figures: a designer weighs; the list may ask for up to a tenth more than the sum.
  const [sc, hdc, dc] = [31.42, 32.08, 31.6]
  const metres = (squareCm: number, use: number) => (squareCm / 2.54 ** 2) * use * 0.0254

  test.each([
    // 25 × 25.38 cm of sc and dc; the edging is an inch of row for each inch of 100.8 cm.
    ['shingle-cloth', 0, [metres(25 * 25.38, dc)]],
    ['shingle-cloth', 1, [(100.8 / 2.54) * 10.6 * 0.0254]],
    // 576 and 240 + 100 stitches of 0.625 × 0.625 cm, and 15 cm of foundation chain at the 5 in to an inch that the same page gives.
    ['float', 0, [metres(576 * 0.625 ** 2, sc)]],
    ['float', 1, [metres(340 * 0.625 ** 2, sc) + 0.15 * 5]],
    // Stitches of 10 ÷ 15 × 10 ÷ 11 cm.
    ['bollard-hat', 0, [840, 1056, 1296, 1560, 1760].map((stitches) => metres((stitches * 100) / 165, hdc))],
    // Squares of 5, 9.29 and 13.57 cm a side: the first and what lies outside the second are A, between them B.
    ['harbour-block', 0, [metres(5 ** 2 + 13.57 ** 2 - 9.29 ** 2, dc)]],
    ['harbour-block', 1, [metres(9.29 ** 2 - 5 ** 2, dc)]],
  ])('%s, yarn %s', (slug, yarn, estimates) => expectListed(slug, yarn, estimates))
})

describe('yarn is rows × measured yarn use, and a tenth to spare', () => {
  // The same page, in inches of yarn for an inch of one row, which holds for yarn of any weight as long as a stitch keeps its shape;
  // for slip stitches the 5 of a chain.
  const [sc, hdc, dc, chain] = [10.6, 15.7, 20.4, 5]
  const metres = (stitches: number, toCm: number, use: number) => ((stitches / toCm) * use) / 100

  test.each([
    // Rounds of 36 to 124, eight more each, are 960 stitches; the edge is a round of 124 and 124 slip stitches.
    ['galley-mat', 0, [metres(960, 1.3, hdc)]],
    ['galley-mat', 1, [metres(124, 1.3, hdc) + metres(124, 1.3, chain)]],
    // Base 6 × (1+…+8) = 216, 4 + 4 rounds of 48, half of the 5 rounds of sails, under which 120 stitches' length lies as well.
    ['regatta-pot', 0, [metres(216 + 8 * 48 + 120, 1.6, sc) + 0.75]],
    ['regatta-pot', 1, [metres(120 + 2 * 48, 1.6, sc) + 0.75]],
    // Each half: 8 × 40 + 34 + 26 + 16 = 396 hdc (12 × 60 + 52 + 40 + 24 = 836), 41 (61) chains, 12 (18) slip stitches; two rounds of border.
    // The seam is three times its length.
    ['skiff-cushion', 0, [2 * (metres(396, 0.8, hdc) + metres(41 + 12, 0.8, chain) + metres(104 + 110, 0.8, sc)) + 3 * 1.1 / 0.8,
      2 * (metres(836, 0.8, hdc) + metres(61 + 18, 0.8, chain) + metres(156 + 162, 0.8, sc)) + 3 * 1.62 / 0.8]],
    // 40 solid rows of 47 dc, 40 of net with 24 dc and 23 chains, a row of sc and the chain; 416 sc round it. A dc is as wide as an sc.
    ['drift-net-runner', 0, [metres(40 * 47 + 40 * 24, 1.6, dc) + metres(40 * 23 + 48, 1.6, chain) + metres(47 + 416, 1.6, sc)]],
    // Stitches in all: yoke 1384 (1604, 1812, 2064, 2508), body 1664 (2008, 2380, 3012, 3588), each sleeve 696 (884, 1032, 1170, 1336).
    ['deckhand-top', 0, [4440, 5380, 6256, 7416, 8768].map((stitches) => metres(stitches, 1.5, hdc))],
    ['drift-net-runner', 1, [metres(358, 1.6, dc) + metres(70, 1.6, sc)]],
  ])('%s, yarn %s', (slug, yarn, estimates) => expectListed(slug, yarn, estimates))
})

// In US pattern text a US word stands, in UK text a UK word: the block is the one of the collection in UK terms.
test('each pattern prints in its own terms', () => {
  const tension = makeBooklet(checkedPattern('harbour-block'))
  expect(tension.facts.map(({ label }) => label)).toContain('Tension')
  expect(plainSpaces(tension.gauge!.paragraphs[0]!)).toMatch(/^14 tr and 8 rounds = 10 cm \(4 in\)/)
  expect(tension.abbreviations.map(({ uk }) => uk)).toEqual(expect.arrayContaining(['ch', 'ss', 'dc', 'tr']))
  expect(tension.abbreviations.map(({ uk }) => uk)).not.toContain('sc')
})
