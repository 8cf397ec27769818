import { describe, expect, test } from 'vitest'
import { makeBooklet } from '../../../src/booklet/make-booklet.ts'
import type { Pattern } from '../../../src/pattern/pattern.ts'
import { ball, becket } from './float-by-hand.ts'
import { byHand, plainSpaces } from './made-by-hand.ts'

const booklet = (pattern: Partial<Pattern>) => makeBooklet(byHand([ball, becket], pattern))
const lines = (pattern: Partial<Pattern>) => booklet(pattern).materials.map((line) => ({
  ...line, item: plainSpaces(line.item), ...(line.make === undefined ? {} : { make: plainSpaces(line.make) }),
  for: plainSpaces(line.for), amount: line.amount.map(plainSpaces), weight: plainSpaces(line.weight), ...(line.ounces === undefined ? {} : { ounces: plainSpaces(line.ounces) }),
}))

const float: Partial<Pattern> = {
  gauge: { sts: 16, rows: 16, over: 10, hook: 4 },
  materials: {
    yarns: [
      { letter: 'A', weight: 4, fibre: '100% wool', ball: { grams: 100, metres: 200 }, colour: 'Rust', for: 'ball, Rounds 1-10 and 16-24', needs: [13] },
      { letter: 'B', weight: 4, fibre: '100% wool', ball: { grams: 100, metres: 200 }, colour: 'Chalk', needs: [8] },
    ],
    hooks: [4],
    notions: [{ what: 'fibrefill', amount: ['45 g'], for: 'ball' }, { what: 'yarn needle', count: [1] }],
  },
}

describe('the materials table', () => {
  // By hand: 13 g × 2 m = 26 m = 28.4 yd, 8 g × 2 m = 16 m = 17.5 yd; 26 + 16 = 42 m, 28 + 17 = 45 yd (17.5 rounds down to 17.497).
  // An ounce is 28.3495 g: 13 g are 0.46, 8 g 0.28, 45 g 1.59; the sum is of what is shown, 0.5 + 0.3.
  test('yarns, their sum, then tools', () => {
    expect(lines(float)).toEqual([
      {
        kind: 'yarn', item: 'Yarn A, rust', make: 'Medium (4), worsted, 100% wool, 100 g = 200 m (219 yd)', for: 'Ball, Rounds 1–10 and 16–24',
        amount: ['26 m', '28 yd', '1 ball'], weight: '13 g', ounces: '0.5 oz',
      },
      {
        kind: 'yarn', item: 'Yarn B, chalk', make: 'Medium (4), worsted, 100% wool, 100 g = 200 m (219 yd)', for: '', amount: ['16 m', '17 yd', '1 ball'],
        weight: '8 g', ounces: '0.3 oz',
      },
      { kind: 'total', item: 'Yarn in all', for: '', amount: ['42 m', '45 yd'], weight: '21 g', ounces: '0.8 oz' },
      { kind: 'tool', item: 'Hook, 4 mm (US G-6)', for: 'Or the size that gives the gauge', amount: ['1'], weight: '' },
      { kind: 'tool', item: 'Fibrefill', for: 'Ball', amount: [], weight: '45 g', ounces: '1.6 oz' },
      { kind: 'tool', item: 'Yarn needle', for: '', amount: ['1'], weight: '' },
    ])
  })

  // By hand: 120 g × 0.68 = 81.6 m = 89.2 yd, 240 g × 0.68 = 163.2 m = 178.5 yd; 2 and 3 balls of 100 g.
  test('sizes stand in brackets, and one yarn has no sum', () => {
    const cushion: Partial<Pattern> = {
      sizes: ['Small', 'Large'], terms: 'UK',
      materials: {
        yarns: [{ weight: 6, ball: { grams: 100, metres: 68 }, colour: 'Kelp', needs: [120, 240] }],
        hooks: [10],
        notions: [{ what: 'fibrefill', amount: ['200 g', '400 g'] }, { what: 'ribbon', amount: ['50 cm', '75 cm'] }, { what: 'marker', count: [1, 2] }],
      },
    }
    expect(lines(cushion)).toEqual([
      {
        kind: 'yarn', item: 'Yarn, kelp', make: 'Super bulky (6), super chunky, 100 g = 68 m (74 yd)', for: '',
        amount: ['82 (163) m', '89 (178) yd', '2 (3) balls'], weight: '120 (240) g', ounces: '4.2 (8.5) oz',
      },
      { kind: 'tool', item: 'Hook, 10 mm (US N/P-15, old UK 000)', for: 'Or the size that gives the tension', amount: ['1'], weight: '' },
      { kind: 'tool', item: 'Fibrefill', for: '', amount: [], weight: '200 (400) g', ounces: '7.1 (14.1) oz' },
      { kind: 'tool', item: 'Ribbon', for: '', amount: ['50 (75) cm'], weight: '' },
      { kind: 'tool', item: 'Marker', for: '', amount: ['1 (2)'], weight: '' },
    ])
  })

  test('a yarn without a ball has its grams, and a second hook no gauge to give', () => {
    const plain = lines({
      gauge: { sts: 16, rows: 16, over: 10, hook: 4 },
      materials: { yarns: [{ letter: 'A', needs: [30] }], hooks: [4, 3.5], notions: [] },
    })
    expect(plain[0]).toEqual({ kind: 'yarn', item: 'Yarn A', for: '', amount: [], weight: '30 g', ounces: '1.1 oz' })
    expect(plain[2]).toMatchObject({ item: 'Hook, 3.5 mm (US E-4)', for: '' })
  })

  // The trade council asks for its name on every page that shows its figures.
  test('the source of the yarn table is credited where a category is shown', () => {
    expect(booklet(float).credits).toEqual(['Yarn weights: Craft Yarn Council’s www.YarnStandards.com'])
    expect(booklet({ materials: { yarns: [{ needs: [30] }], hooks: [], notions: [] } }).credits).toEqual([])
  })
})

describe('gauge', () => {
  const gauge = (value: NonNullable<Pattern['gauge']>, terms: 'US' | 'UK' = 'US') => {
    const text = booklet({ gauge: value, terms }).gauge!
    return { ...text, paragraphs: text.paragraphs.map(plainSpaces) }
  }

  // By hand: 16 to 10 cm are 8 to 5 cm, in both directions.
  test('the window is 5 cm of the gauge', () => {
    expect(gauge({ stitch: 'sc', sts: 16, rows: 16, over: 10, hook: 4, after: 'as worked' })).toEqual({
      paragraphs: [
        '16 sc and 16 rounds = 10 cm (4 in), with a 4 mm (US G-6) hook, as worked.',
        'Lay your swatch on the window. Eight stitches and eight rounds fill it when your print is full size and your gauge is right. '
          + 'With more stitches than the gauge asks for, take a larger hook; with fewer, a smaller one.',
      ],
      window: { stitches: 8, rows: 8, label: '5\u00a0cm, 8\u00a0stitches' },
    })
  })

  test('half stitches are marked, and what falls between marks has no window', () => {
    expect(gauge({ sts: 15, rows: 11, over: 10 }).window).toEqual({ stitches: 7.5, rows: 5.5, label: '5\u00a0cm, 7.5\u00a0stitches' })
    expect(gauge({ sts: 17.5, rows: 12, over: 10 }).window).toBeUndefined()
    // 4 in are 10.16 cm: 14 stitches over 4 in are 6.89 to 5 cm.
    expect(gauge({ sts: 14, rows: 14, over: 10.16 }).window).toBeUndefined()
  })

  test('in UK words it is a tension', () => {
    expect(gauge({ sts: 16, rows: 16, over: 10 }, 'UK').paragraphs[1]).toContain('your tension is right')
    // The stitch of a gauge is kept in US words: a US dc is a UK tr.
    expect(gauge({ stitch: 'dc', sts: 16, rows: 8, over: 10 }, 'UK').paragraphs[0]).toBe('16 tr and 8 rounds = 10 cm (4 in).')
  })
})

describe('the facts block', () => {
  const facts = (pattern: Partial<Pattern>, pieces = [ball, becket], body = '') =>
    Object.fromEntries(makeBooklet(byHand(pieces, pattern, body)).facts.map(({ label, value }) => [label, plainSpaces(value)]))

  // By hand: 816 + 100 = 916 stitches, 24 rounds and 4 rows. 9.5 cm = 3.74 in, nearest quarter 3¾; 7.5 cm = 2.95 in, nearest quarter 3.
  test('of a ball with a loop', () => {
    expect(facts({
      ...float, level: 'easy',
      finished: [
        { what: 'diameter', of: 'The ball', is: [9.5], span: { start: 0, end: 0 } }, { what: 'length', of: 'The becket', is: [7.5], span: { start: 0, end: 0 } },
      ],
    })).toEqual({
      Makes: 'One ball and one becket',
      Size: '9.5 cm (3¾ in) across; becket 7.5 cm (3 in) long',
      Yarn: 'Medium (4), worsted, two colours: A 26 m, B 16 m',
      Hook: '4 mm (US G-6)',
      Gauge: '16 sts and 16 rounds = 10 cm (4 in)',
      Worked: 'In a spiral; becket in rows',
      Terms: 'US: sc is the UK dc',
      Level: 'Easy',
      'You need': 'Ch, sc, inc, dec, adjustable ring',
      Length: '24 rounds and 4 rows; 916 stitches',
    })
  })

  // By hand: 30 cm = 11.81 in, 40 cm = 15.75 in, 82 cm = 32.28 in.
  test('sizes name themselves before their figures', () => {
    const is = (...cm: number[]) => ({ is: cm, span: { start: 0, end: 0 } })
    expect(facts({ sizes: ['Narrow', 'Wide'], finished: [{ what: 'width', ...is(30, 40) }, { what: 'length', ...is(82) }] }).Size)
      .toBe('Narrow (Wide): 30 (40) × 82 cm, 11¾ (15¾) × 32¼ in')
    expect(facts({ sizes: ['Narrow', 'Wide'], finished: [{ what: 'circumference', ...is(30, 40) }] }).Size)
      .toBe('Narrow (Wide): 30 (40) cm, 11¾ (15¾) in, around')
    expect(facts({ finished: [{ what: 'Brim', ...is(5.08) }] }).Size).toBe('Brim 5 cm (2 in)')
  })

  test('copies are counted, and what goes on from a piece is part of it', () => {
    const edge = { ...becket, name: 'Edge', piece: { on: 'The ball' } }
    const two = facts({ title: 'Mooring Ball' }, [{ ...ball, piece: { make: 2 } }, edge])
    expect(two.Makes).toBe('Two balls')
    // By hand: 2 × 816 + 100 = 1,732 stitches; 48 rounds and 4 rows.
    expect(two.Length).toBe('48 rounds and 4 rows; 1,732 stitches')
  })

  test('what is not known is left out', () => {
    expect(Object.keys(facts({}))).toEqual(['Makes', 'Worked', 'Terms', 'You need', 'Length'])
  })

  test('UK terms speak of tension', () => {
    expect(facts({ terms: 'UK', gauge: { sts: 16, rows: 16, over: 10 } })).toHaveProperty('Tension')
  })
})
