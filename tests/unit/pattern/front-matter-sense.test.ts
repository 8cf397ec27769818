import { describe, expect, test } from 'vitest'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

/** Findings of a pattern file; what it lacks to be published is not asked here. */
function found(front: string, rows: readonly string[], body = ''): readonly string[] {
  const text = `---\ntitle: Deck Mat\nterms: US\n${front}pieces:\n  - name: Mat\n    rows: |\n${rows.map((row) => `      ${row}\n`).join('')}---\n\n${body}\n`
  return checkPattern({ path: 'pattern.md', text }).diagnostics.map(({ code }) => code).filter((code) => code !== 'key-missing-to-publish')
}

const square = (stitches: number, rows: number): readonly string[] =>
  [`Foundation: Ch ${stitches + 1}.`, `Row 1: Sc in 2nd ch from hook and in each ch across. (${stitches})`, `Rows 2-${rows}: Ch 1, turn, sc in each st across. (${stitches})`]

const yarn = (weight: number, ball = '{ grams: 50, metres: 100 }', needs = '[50 g]'): string => `    - { weight: ${weight}, fibre: 100% wool, ball: ${ball}, needs: ${needs} }\n`

// Hook ranges of the trade council's table of yarn weights, categories 1 to 6, as pages that reproduce it print them.
describe('hooks by the published table', () => {
  const balls: Readonly<Record<number, string>> = { 1: '{ grams: 50, metres: 210 }', 2: '{ grams: 50, metres: 160 }', 3: '{ grams: 50, metres: 120 }', 4: '{ grams: 50, metres: 85 }', 5: '{ grams: 100, metres: 110 }', 6: '{ grams: 100, metres: 60 }' }
  const gauge = (hook: number): string => `gauge: { stitch: sc, sts: 16, rows: 16, over: 10 cm, hook: ${hook} mm, after: as worked }\n`
  const withHook = (weight: number, hook: number): readonly string[] => found(`${gauge(hook)}materials:\n  yarns:\n${yarn(weight, balls[weight])}  hooks: [${hook} mm]\n`, square(40, 40)).filter((code) => code === 'hook-outside-weight' || code === 'ball-outside-weight')

  test.each([[1, 2.25], [1, 3.5], [2, 3.5], [2, 4.5], [3, 4.5], [3, 5.5], [4, 5.5], [4, 6.5], [5, 6.5], [5, 9], [6, 9], [6, 15]])('weight %i with %d mm, an end of its range', (weight, hook) => {
    expect(withHook(weight, hook)).toEqual([])
  })

  // A yarn company's leaflet works Light with 4 mm, and toys are worked one or two sizes below the band: practice outside the table.
  test.each([[3, 4], [4, 4], [4, 3.5], [3, 3.5], [2, 3]])('weight %i with %d mm, as toys and leaflets have it', (weight, hook) => {
    expect(withHook(weight, hook)).toEqual([])
  })

  test.each([[1, 9], [3, 12], [4, 1.5], [5, 2.5], [6, 3]])('weight %i with %d mm is far outside', (weight, hook) => {
    expect(withHook(weight, hook)).toEqual(['hook-outside-weight'])
  })

  test('yarn that is held double is as thick as a heavier one', () => {
    const double = found(`${gauge(12)}materials:\n  yarns:\n${yarn(3, balls[3])}  hooks: [12 mm]\n`, square(40, 40), 'Hold the yarn double throughout.')
    expect(double).not.toContain('hook-outside-weight')
  })
})

// Stitches over 4 in of the same table: 1: 21-32, 2: 16-20, 3: 12-17, 4: 11-14, 5: 8-11.
describe('gauge by the published table', () => {
  const at = (weight: number, sts: number): readonly string[] => found(`gauge: { stitch: sc, sts: ${sts}, rows: ${sts}, over: 4 in, hook: 5 mm, after: as worked }\nmaterials:\n  yarns:\n    - { weight: ${weight}, fibre: 100% wool }\n`, square(40, 40)).filter((code) => code === 'gauge-outside-weight')

  test.each([[1, 21], [1, 32], [2, 16], [2, 20], [3, 12], [3, 17], [4, 11], [4, 14], [5, 8], [5, 11], [4, 16]])('weight %i and %i stitches', (weight, sts) => {
    expect(at(weight, sts)).toEqual([])
  })

  test.each([[1, 10], [3, 30], [4, 24], [5, 20], [4, 6]])('weight %i and %i stitches are far outside', (weight, sts) => {
    expect(at(weight, sts)).toEqual(['gauge-outside-weight'])
  })
})

// Measurement × gauge = count, by hand: 72 at 16 to 10 cm are 45 cm, 40 rows at 16 are 25 cm, 48 round at 16 are 30 cm and 9.5 across.
describe('finished sizes', () => {
  const gauge = 'gauge: { stitch: sc, sts: 16, rows: 16, over: 10 cm, hook: 5 mm, after: as worked }\n'
  const sized = (what: string, cm: string, rows: readonly string[]): readonly string[] => found(`${gauge}finished:\n  - { what: ${what}, of: Mat, is: [${cm}] }\n`, rows)
  const tube = ['Foundation: Ch 48, join with sl st in first ch, being careful not to twist.', 'Rnd 1: Sc in each ch around. (48)', 'Rnds 2-16: Sc in each st around. (48)']

  test.each([['width', '45 cm', square(72, 40)], ['width', '44 cm', square(72, 40)], ['width', '17¾ in', square(72, 40)], ['length', '25 cm', square(72, 40)], ['length', '24 cm', square(72, 40)],
    ['circumference', '30 cm', tube], ['circumference', '29 cm', tube], ['diameter', '9.5 cm', tube]] as const)('%s of %s', (what, cm, rows) => {
    expect(sized(what, cm, rows)).toEqual([])
  })

  test.each([['width', '48 cm', square(72, 40)], ['width', '42 cm', square(72, 40)], ['length', '30 cm', square(72, 40)], ['circumference', '34 cm', tube], ['diameter', '14 cm', tube]] as const)('%s of %s is wrong', (what, cm, rows) => {
    expect(sized(what, cm, rows)).toEqual(['finished-size-mismatch'])
  })

  test('what no count gives is left alone: a piece of another stitch, spaces, a measure by another name', () => {
    expect(sized('drop', '10 cm', square(72, 40))).toEqual([])
    expect(sized('width', '10 cm', ['Foundation: Ch 21.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (20)', 'Row 2: Ch 1, turn, *sc in next st, ch 5, skip next st; rep from * across. (10 sc, 10 ch-5 sps)'])).toEqual([])
  })

  test('told with the sizes that it holds for', () => {
    const text = `---\ntitle: Deck Mat\nterms: US\nsizes: [S, M]\n${gauge}pieces:\n  - name: Mat\n    rows: |\n      Foundation: Ch 33 (65).\n      Row 1: Sc in 2nd ch from hook and in each ch across. (32 (64))\nfinished:\n  - { what: width, of: Mat, is: [20 cm, 48 cm] }\n---\n`
    const told = checkPattern({ path: 'pattern.md', text }).diagnostics.filter(({ code }) => code === 'finished-size-mismatch')
    expect(told.map(({ sizes }) => sizes)).toEqual([['M']])
    expect(told[0]?.message).toContain('64 stitches at the gauge are 40 cm')
  })
})

// Pairs of inches and centimetres that leaflets of yarn companies print, rounded to the half centimetre, one of them a centimetre off.
describe('two units', () => {
  test.each(['28 in (71 cm)', '34 in (86.5 cm)', '36" (91.5 cm)', '40½ in (103 cm)', '53 in (134.5 cm)', '59 in (150 cm)', '68 in (172.5 cm)', '55 in (140 cm)', '4 in (10 cm)', '10 cm (4 in)',
    '50 g (1.75 oz)', '100 g (3.5 oz)', '120 yds (110 m)', '230 m (250 yds)', '½ in (1.3 cm)', '30-32 in (76-81 cm)'])('%s is the same', (pair) => {
    expect(found('', square(20, 4), `It measures ${pair}.`)).toEqual([])
  })

  test.each(['18 in (50 cm)', '34 in (96.5 cm)', '10 cm (6 in)', '100 g (5.3 oz)', '120 yds (131 m)', '20 cm (3 in)'])('%s is not', (pair) => {
    expect(found('', square(20, 4), `It measures ${pair}.`)).toEqual(['conversion-wrong'])
  })
})

// A page of measured swatches works out 34 by 34 in of half double crochet: 956.8 m of worsted yarn.
describe('yarn for the stitches', () => {
  const hdc = (grams: number): readonly string[] => found(`gauge: { stitch: hdc, sts: 14, rows: 8, over: 4 in, hook: 5 mm, after: as worked }\nmaterials:\n  yarns:\n${yarn(4, '{ grams: 100, metres: 200 }', `[${grams} g]`)}  hooks: [5 mm]\n`,
    ['Foundation: Ch 121.', 'Row 1: Hdc in 3rd ch from hook and in each ch across. (119)', 'Rows 2-70: Ch 2 (does not count as a st), turn, hdc in each st across. (119)']).filter((code) => code.startsWith('yarn'))

  test('the amount that the page comes to, and half and twice of it, are let pass', () => {
    expect([478, 240, 956].map((grams) => hdc(grams))).toEqual([[], [], []])
  })

  test('a digit too many or too few is told', () => {
    expect([4780, 47.8].map((grams) => hdc(grams))).toEqual([['yarn-amount-implausible'], ['yarn-amount-implausible']])
  })
})

describe('words that only sound like a hazard or another use', () => {
  const notion = (what: string, madeFor: string, summary: string): readonly string[] =>
    found(`summary: ${summary}\nmade-for: ${madeFor}\nmaterials:\n  yarns:\n    - { weight: 4, fibre: 100% acrylic, ball: { grams: 50, metres: 85 }, needs: [30 g] }\n  notions: [{ what: ${what} }]\n`, square(20, 4), 'Rinse it after use; not for hot pans.')

  test.each([
    ['needle with a large eye', 'toy', 'A seal to hold'], ['pompom maker', 'pet', 'A mat for a cat'], ['button thread', 'baby', 'A mat for a pram'],
    ['yarn needle', 'home', 'A toy basket for the hall'], ['yarn needle', 'home', 'A wrap in baby alpaca'], ['yarn needle', 'kitchen', 'A scrubber for the sink'],
  ])('%s, for %s: %s', (what, madeFor, summary) => {
    expect(notion(what, madeFor, summary)).toEqual([])
  })

  test.each([
    ['safety eyes', 'toy', 'A seal to hold', ['hazard-in-notions', 'notion-not-used']], ['dried beans', 'baby', 'A mat for a pram', ['hazard-in-notions']],
    ['yarn needle', 'home', 'A toy for the bath', ['made-for-doubtful']], ['yarn needle', 'kitchen', 'A trivet for hot pans', ['fibre-melts']],
  ])('%s, for %s: %s is told', (what, madeFor, summary, codes) => {
    expect([...notion(what, madeFor, summary)].sort()).toEqual(codes)
  })
})

// Letters of hooks beside their millimetres, those on which the published charts agree.
describe('letters of hooks', () => {
  const charts: readonly (readonly [string, number])[] = [['B-1', 2.25], ['C-2', 2.75], ['D-3', 3.25], ['E-4', 3.5], ['F-5', 3.75], ['G-6', 4], ['H-8', 5], ['I-9', 5.5], ['J-10', 6], ['K-10½', 6.5], ['L-11', 8]]

  test.each(charts)('%s is %d mm', (letter, size) => {
    expect(found('', square(20, 4), `Worked with a ${letter} (${size} mm) hook.`)).toEqual([])
    expect(found('', square(20, 4), `Worked with a ${size} mm (US ${letter}) hook.`)).toEqual([])
    expect(found('', square(20, 4), `Worked with a ${letter} (${size + 0.5} mm) hook.`)).toEqual(['hook-label-wrong'])
    expect(found('', square(20, 4), `Worked with a ${size + 0.5} mm (US ${letter}) hook.`)).toEqual(['hook-label-wrong'])
  })

  test('a letter that makers sell in two sizes is let pass', () => {
    expect(found('', square(20, 4), 'Worked with a G (4.25 mm) hook.')).toEqual([])
  })
})
