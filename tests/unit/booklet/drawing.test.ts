import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { bookletInSize, chosen } from '../../../src/booklet/booklet-in-size.ts'
import type { Booklet, RowLine } from '../../../src/booklet/booklet.ts'
import { makeBooklet } from '../../../src/booklet/make-booklet.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

const checked = (name: string) => checkPattern({ path: `patterns/${name}.md`, text: readFileSync(`patterns/${name}.md`, 'utf8') })
const booklet = (name: string) => makeBooklet(checked(name))
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ')

/** Rows of a made-up piece, with front-matter of its own. */
function made(rows: readonly string[], more: readonly string[] = []): Booklet {
  const text = ['---', 'title: Piece', 'terms: US', 'conventions: { turning-chains: { sc: not counted, dc: counted } }', ...more, 'pieces:', '  - name: Piece', '    rows: |', ...rows.map((row) => `      ${row}`), '---', ''].join('\n')
  return makeBooklet(checkPattern({ path: 'piece.md', text }))
}

const rowsOf = ({ parts }: Booklet, part = 0) => (parts[part]?.lines ?? []).filter((line): line is RowLine => line.kind === 'row')
const real = (one: Booklet, part = 0) => rowsOf(one, part).flatMap((line) => line.real ?? [])

describe('what stands beside a drawing', () => {
  // 9.5 cm fit 96 mm at full size; 25 by 25.5 cm, with an edging of 0.75 cm, fit 96 by 120 at a quarter (66.5 mm); 13.5 cm at a half (67.5 mm).
  test.each([
    ['float', 'Drawn full size', ['24 rounds', '9.5 cm (3¾ in) across']],
    ['shingle-cloth', 'Drawn at one quarter', ['25.5 cm (10 in)', '25 cm (9¾ in)']],
    ['harbour-block', 'Drawn at one half', ['13.5 cm (5¼ in)']],
    ['bollard-hat', 'Drawn at one half, size Baby', ['18 rounds', '37.5 cm (14¾ in) around']],
  ])('%s: %s', (name, scale, dimensions) => {
    const { drawing } = booklet(name)
    expect(drawing?.scale).toBe(scale)
    expect(drawing?.dimensions.map(({ text }) => plain(text))).toEqual(dimensions)
  })

  test('the float has its rounds in two yarns and its becket as a loop of 24 stitches', () => {
    const { drawing } = booklet('float')
    expect(drawing?.drawing.view).toBe('ball')
    // The becket is begun with 24 stitches.
    expect(drawing?.drawing.loop?.strokes).toHaveLength(24)
    expect(plain(drawing?.caption)).toBe('Each mark is one stitch, each line one round: + single crochet, V increase, Λ decrease. Heavy marks are colour B. The becket is drawn shorter.')
    expect(plain(drawing?.alt)).toBe('The ball, seen from the front, drawn from its 24 rounds: 6 stitches in the first round, 48 in the widest, 6 in the last. The becket stands on it as a loop.')
  })

  test('stitches are named in the terms of the pattern: the block is in UK terms, its tall stitch a treble', () => {
    expect(plain(booklet('harbour-block').drawing?.caption)).toContain('T treble crochet, + double crochet')
  })

  test('a yarn that is fastened off is not the one in use: the block has Rounds 3 and 4 in B', () => {
    const { drawing } = booklet('harbour-block')
    const heavy = drawing?.drawing.strokes.filter(({ weight }) => weight === 0.4) ?? []
    // 32 tr of two strokes and 20 chains in Round 3 (12 ch-1, 4 ch-2), 52 dc of two strokes and 8 chains in Round 4.
    expect(heavy.filter(({ kind }) => kind === 'line')).toHaveLength(2 * 32 + 2 * 52)
    expect(heavy.filter(({ kind }) => kind === 'ellipse')).toHaveLength(20 + 8)
  })
})

describe('real rows in short form', () => {
  test('of the float, worked by hand', () => {
    const shorts = real(booklet('float')).map(({ yarn, short }) => plain([yarn, short].join(' ').trim()))
    expect(shorts.slice(0, 4)).toEqual(['A. 6 sc in ring', 'inc × 6', '(1 sc, inc) × 6', '(2 sc, inc) × 6'])
    expect(shorts.slice(8, 18)).toEqual(['48 sc', '48 sc', 'To B. 48 sc', '48 sc', '48 sc', '48 sc', '48 sc', 'To A. 48 sc', '48 sc', '(6 sc, dec) × 6'])
    expect(shorts.at(-1)).toBe('dec × 6')
    expect(real(booklet('float'), 1).map(({ side, change, stitches, short }) => [side, change, ...stitches, plain(short)])).toEqual([
      ['RS', '', '24', '24 sc'], ['WS', '', '24', '24 sc'], ['RS', '+4', '28', '(5 sc, inc) × 4'], ['WS', '−4', '24', '(5 sc, dec) × 4'],
    ])
  })

  test('a range that copies rows has one row after the other, and which row each is like', () => {
    const cloth = real(booklet('shingle-cloth'))
    expect(cloth).toHaveLength(33)
    expect(cloth.slice(5, 9).map(({ label, side, short, as }) => [label, side, plain(short), as])).toEqual([
      ['6', 'WS', '1 sc, (1 dc, 1 sc) × 17', '2'], ['7', 'RS', '35 sc', '3'], ['8', 'WS', '2 sc, (1 dc, 1 sc) × 16, 1 sc', '4'], ['9', 'RS', '35 sc', '5'],
    ])
  })

  test('sizes that leave a row out are not named in it; figures that differ are given for all', () => {
    const rounds = real(booklet('bollard-hat'))
    expect(rounds.slice(6, 9).map(({ label, sizes, change, stitches }) => [label, plain(sizes), change, ...stitches])).toEqual([
      ['7', '', '+8', '56'], ['8', 'from Toddler', '+8', '64'], ['9', 'from Child', '+8', '72'],
    ])
    expect(real(booklet('bollard-hat'), 1)[0]).toMatchObject({ short: '56\u00a0(64,\u00a072,\u00a080,\u00a088)\u00a0hdc', stitches: ['56', '64', '72', '80', '88'] })
  })

  test.each([
    ['spaces are made', ['Foundation: Ch 9.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (8)', 'Row 2: Ch 1, turn, sc in first st, *ch 1, skip next st, sc in next st; rep from * to last st, sc in last st. (5 sc, 3 ch-1 sps)']],
    ['something is done beside the stitches', ['Foundation: Ch 9.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (8)', 'Row 2: Ch 1, turn, sc in each st across, placing a marker in the last st. (8)']],
    ['places are left', ['Foundation: Ch 9.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (8)', 'Row 2: Ch 1, turn, sc in next 6 sts, leave rem 2 sts unworked. (6)']],
  ])('has none where %s', (_, rows) => {
    expect(real(made(rows)).map(({ short }) => plain(short))).toEqual(['8 sc', undefined])
  })

  test('says which loop, where it is one for the whole row', () => {
    const rows = (second: string) => made(['Rnd 1: Make an adjustable ring; 6 sc in ring. (6)', second])
    expect(real(rows('Rnd 2: Sc in back loop only of each st around. (6)')).map(({ short }) => plain(short))).toEqual(['6 sc in ring', '6 sc in back loops'])
    expect(real(rows('Rnd 2: Sc in back loop of next 3 sts, sc in next 3 sts. (6)')).map(({ short }) => plain(short))).toEqual(['6 sc in ring', undefined])
  })
})

describe('a booklet of one size', () => {
  test.each([
    ['56 (64, 72, 80, 88)', 3, '80'], ['Ch 41 (61, 65, 70, 75).', 0, 'Ch 41.'], ['Next 7 (8, 8, 9, 9) rnds', 4, 'Next 9 rnds'], ['6 (–, 2, 3, 4)', 1, '–'],
    // Ranges of rows, and a range whose end alone differs.
    ['Rows 1–11 (1–12, 1–13, 1–14, 1–15): As for Front.', 4, 'Rows 1–15: As for Front.'], ['Rnds 2–24 (29, 32, 35, 38): As for Left sleeve.', 0, 'Rnds 2–24: As for Left sleeve.'],
    ['Rnds 2–24 (29, 32, 35, 38): As for Left sleeve.', 4, 'Rnds 2–38: As for Left sleeve.'],
    // Brackets of another length are no list of sizes.
    ['10 cm (4 in)', 1, '10 cm (4 in)'], ['Rnd 8 (RS)', 1, 'Rnd 8 (RS)'], ['48 (56, 64)', 2, '48 (56, 64)'],
  ])('%s, size %i: %s', (text, size, expected) => {
    expect(chosen(text, 5, size)).toBe(expected)
  })

  test.each([
    ['leaving a 5 m (7 m) tail', 0, 'leaving a 5 m tail'], ['leaving a 5 m (7 m) tail', 1, 'leaving a 7 m tail'], ['13 cm (5 in) wide', 1, '13 cm (5 in) wide'],
  ])('a length by size keeps its unit, one length in two units stays: %s', (text, size, expected) => {
    expect(chosen(text, 2, size)).toBe(expected)
  })

  test('has the counts, figures and rows of that size and no other', () => {
    const adult = bookletInSize(checked('bollard-hat'), 3)
    expect([adult.size, adult.sizes]).toEqual(['Adult', []])
    // Ten rounds of crown, then 80 stitches around to the end: 10 more rounds of sides, 4 of brim.
    expect(rowsOf(adult).map(({ stitches }) => stitches[0])).toEqual(['8', '16', '24', '32', '40', '48', '56', '64', '72', '80'])
    expect(rowsOf(adult, 1).flatMap(({ boxes }) => boxes)).toHaveLength(10)
    expect(rowsOf(adult, 2).flatMap(({ boxes }) => boxes)).toHaveLength(4)
    expect(plain(adult.facts.find(({ label }) => label === 'Size')?.value)).toBe('Adult: 53.5 cm (21 in) around')
    expect(adult.materials[0]?.weight.replace('\u00a0', ' ')).toBe('58 g')
    const words = JSON.stringify([adult.parts.map(({ line, lines }) => [line, lines.map(({ text }) => text)]), adult.materials, adult.facts])
    expect(words).not.toMatch(/\d[\s\u00a0]\(\d+,/)
    expect(words).not.toMatch(/only:/)
  })

  test('of a pattern without sizes is its one booklet', () => {
    expect(bookletInSize(checked('float'), 3)).toEqual(booklet('float'))
  })
})

describe('pieces of a pattern side by side', () => {
  const pieces = (names: readonly string[], strap: boolean) => {
    const rows = (stitches: number, count: number) => ['Foundation: Ch ' + (stitches + 1) + '.', `Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (${stitches})`, `Rows 2-${count}: Ch 1, turn, sc in each st across. (${stitches})`]
    const piece = (name: string, lines: readonly string[]) => [`  - name: ${name}`, '    rows: |', ...lines.map((line) => `      ${line}`)]
    const text = ['---', 'title: Bag', 'terms: US', 'gauge: { stitch: sc, sts: 20, rows: 20, over: 10 cm }', 'conventions: { turning-chains: { sc: not counted } }', 'pieces:',
      ...names.flatMap((name) => piece(name, rows(20, 20))), ...(strap ? piece('Strap', rows(80, 3)) : []), '---', ''].join('\n')
    return makeBooklet(checkPattern({ path: 'bag.md', text })).drawing
  }

  // 20 stitches and 20 rows at 20 to 10 cm are 10 by 10 cm: two of them at a half, 50 + 7 + 50 mm, fit 112 mm.
  test('each with its name and its size in cm', () => {
    const drawing = pieces(['Front', 'Back'], false)
    expect(drawing?.scale).toBe('Drawn at one half')
    expect(drawing?.drawing.captions.map(({ lines }) => lines.map(plain))).toEqual([['Front', '10 × 10 cm'], ['Back', '10 × 10 cm']])
    expect(plain(drawing?.alt)).toContain('Front, 20 rows, 20 stitches where it is widest; Back, 20 rows')
  })

  test('a cord is said not to be drawn', () => {
    expect(plain(pieces(['Front', 'Back'], true)?.caption)).toMatch(/Strap is not drawn\.$/)
    expect(plain(pieces(['Front', 'Back'], false)?.caption)).not.toContain('not drawn')
  })
})

// By hand: Small has Rows 1 to 7, Large 1 to 9.
test('rows that the sizes count apart have both numbers, or their place in the line', () => {
  const booklet = made([
    'Foundation: Ch 9.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (8)', 'Rows 2-3 (2-5): Ch 1, turn, sc in each st across. (8)', 'Row 4 (6): Ch 1, turn, sc in each st across. (8)',
    'Next 2 rows: Ch 1, turn, sc in each st across. (8)', 'Next row: Ch 1, turn, sc in each st across. (8)',
  ], ['sizes: [Small, Large]'])
  expect(real(booklet).map(({ label }) => plain(label))).toEqual(['1', '2', '3', '4', '5', '4 (6)', '1st', '2nd', 'Next'])
})

describe('rows that are as those of another piece', () => {
  const text = ['---', 'title: Bag', 'terms: US', 'conventions: { turning-chains: { sc: not counted } }', 'pieces:', '  - name: Front', '    rows: |', '      Foundation: Ch 9.',
    '      Row 1: Sc in 2nd ch from hook and in each ch across. (8)', '      Rows 2-3: Ch 1, turn, sc in each st across. (8)',
    '      Row 4: Ch 1, turn, [sc in next 2 sts, sc2tog] twice. (6)', '  - name: Back', '    rows: |', '      Foundation: Ch 9.', '      Rows 1-4: As for Front. (6)', '---', ''].join('\n')
  const back = makeBooklet(checkPattern({ path: 'bag.md', text })).parts[1]!

  test('are printed in full after the line that says so, repeats underlined', () => {
    expect(back.lines.map((line) => (line.kind === 'row' ? `${line.label} ${plain(line.text.map(({ text: own }) => own).join(''))}` : plain(line.text[0]?.text)))).toEqual([
      'Rows 1–4: As for Front.', '1 Sc in 2nd ch from hook and in each ch across.', '2–3 Ch 1, turn, sc in each st across.', '4 Ch 1, turn, [sc in next 2 sts, sc2tog] twice.',
    ])
    const [last] = back.lines.slice(-1)
    expect(last?.kind === 'row' ? [last.text.find(({ repeat }) => repeat)?.text.replaceAll('\u00a0', ' '), plain(last.repeats), last.change, last.stitches] : []).toEqual(['[sc in next 2 sts, sc2tog]', '2 ×', '−2', ['6']])
  })

  test('have what stands between those rows there: a shoulder, and where its yarn is joined', () => {
    const lead = 'Second shoulder: With RS facing, skip next 2 sts of Row 3, join yarn in next st.'
    const shoulders = ['      First shoulder:', '      Row 4: Ch 1, turn, sc in first 3 sts, leave rem 5 sts unworked. (3)', `      ${lead}`, '      Row 4: Ch 1, sc in same st and in next 2 sts. (3)'].join('\n')
    const vest = text.replace('      Row 4: Ch 1, turn, [sc in next 2 sts, sc2tog] twice. (6)', shoulders).replace('As for Front. (6)', 'As for Front.')
    const copied = makeBooklet(checkPattern({ path: 'vest.md', text: vest })).parts[1]!
    expect(copied.lines.map((line) => (line.kind === 'row' ? line.label : plain(line.text.map(({ text: own }) => own).join(''))))).toEqual(['Rows 1–4: As for Front.', '1', '2–3', 'First shoulder.', '4', lead, '4'])
  })
})

// A neck edging over a front and a back is a ring between them, and goes round neither.
test('a round over several pieces is not drawn as a border of the first', () => {
  const half = (name: string): string => [`  - name: ${name}`, '    rows: |', '      Foundation: Ch 11.', '      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (10)', '      Rows 2-6: Ch 1, turn, sc in each st across. (10)'].join('\n')
  const vest = (neck: string): string => ['---', 'title: Vest', 'terms: US', 'gauge: { sts: 14, rows: 14, over: 10 cm, hook: 5 mm }', 'conventions: { turning-chains: { sc: not counted }, slip-stitches: not counted }', 'pieces:', half('Front'), half('Back'), `${neck}seams:`,
    '  - { join: [first 3 sts of top of Front, last 3 sts of top of Back], by: whip stitch }', '  - { join: [last 3 sts of top of Front, first 3 sts of top of Back], by: whip stitch }', '---', ''].join('\n')
  const neck = ['  - name: Neck', '    on: [Front, Back]', '    rows: |', '      Rnd 1 (RS): With RS facing, join yarn in 4th st of Row 6 of Front, ch 1, sc in each of 4 sts of Front, sc in each of 4 sts of Back, join with sl st in first sc. (8)', ''].join('\n')
  const drawn = (text: string) => JSON.stringify(makeBooklet(checkPattern({ path: 'vest.md', text })).drawing)
  expect(drawn(vest(neck))).toBe(drawn(vest('')))
})
