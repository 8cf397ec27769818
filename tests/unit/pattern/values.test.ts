import { describe, expect, test } from 'vitest'
import { readPattern } from '../../../src/pattern/read-pattern.ts'
import { found, rowsFound, saysOf, smallWith, sourceOf, withPieces } from './made-up-files.ts'

const disc = ['pieces:', '  - name: Disc', '    rows: |', '      Rnd 1: 6 sc in MR. (6)']

/** A wrong line 4, what is found in it, and the nearest right one. */
describe.each<[wrong: string, places: readonly string[], right: string]>([
  ['level: hard', ['value-wrong 4:8-12'], 'level: complex'],
  ['level: Easy', ['value-wrong 4:8-12'], 'level: easy'],
  ['level:', ['value-wrong 4:1-6'], 'level: easy'],
  ['summary: #1 of the tide set', ['value-wrong 4:1-8'], 'summary: No. #1 of the tide set'],
  ['summary: ""', ['value-wrong 4:10-12'], 'summary: A'],
  ['summary: [A, coaster]', ['value-wrong 4:10-22'], 'summary: "[A, coaster]"'],
  ['number: nine', ['value-wrong 4:9-13'], 'number: 9'],
  ['number: 0', ['value-wrong 4:9-10'], 'number: 1'],
  ['number: 1.5', ['value-wrong 4:9-12'], 'number: 15'],
  ['version: first', ['value-wrong 4:10-15'], 'version: 1'],
  ['version: 1.0.0.0', ['value-wrong 4:10-17'], 'version: 1.0.0'],
  // 2026 has no 29 February, 2028 has (Gregorian calendar; dates as in RFC 3339, full-date).
  ['date: 2026-02-29', ['value-wrong 4:7-17'], 'date: 2028-02-29'],
  ['date: 2 Nov 2026', ['value-wrong 4:7-17'], 'date: 2026-11-02'],
  ['access: paid', ['value-wrong 4:9-13'], 'access: sold'],
  ['made-for: cats', ['value-wrong 4:11-15'], 'made-for: pet'],
  ['sizes: Small', ['value-wrong 4:8-13'], 'sizes: [Small]'],
  ['sizes: [Small, Large, Small]', ['value-wrong 4:23-28'], 'sizes: [Small, Large, Larger]'],
  ['gauge: 8 sts', ['value-wrong 4:8-13'], 'gauge: { sts: 8, rows: 6, over: 10 cm }'],
  ['gauge: { sts: 8, over: 10 cm }', ['key-missing 4:10-13'], 'gauge: { sts: 8, rows: 6, over: 10cm }'],
  ['gauge: { sts: 8, rows: 6, over: 10 }', ['value-wrong 4:33-35'], 'gauge: { sts: 8, rows: 6, over: 100 mm }'],
  ['gauge: { sts: 0, rows: 6, over: 4 in }', ['value-wrong 4:15-16'], 'gauge: { sts: 0.5, rows: 6, over: 4 in }'],
  ['gauge: { sts: 8, rows: 6, over: 0 cm }', ['value-wrong 4:33-37'], 'gauge: { sts: 8, rows: 6, over: ½ in }'],
  ['gauge: { sts: 8, rows: 6, over: 4 in, hook: H-8 }', ['value-wrong 4:45-48'], 'gauge: { sts: 8, rows: 6, over: 4 in, hook: 5 mm }'],
  ['gauge: { sts:8, rows: 6, over: 4 in }', ['key-unknown 4:10-15'], 'gauge: { sts: 8, rows: 6, over: 4 in }'],
  ['conventions: { slip-stitches: yes }', ['value-wrong 4:31-34'], 'conventions: { slip-stitches: counted }'],
  ['conventions: { chains: 1 }', ['value-wrong 4:24-25'], 'conventions: { chains: not counted }'],
  ['conventions: { turning-chains: { dc: true } }', ['value-wrong 4:38-42'], 'conventions: { turning-chains: { dc: counted } }'],
  ['conventions: { turning-chains: counted }', ['value-wrong 4:32-39'], 'conventions: { turning-chains: { tr: counted } }'],
  ['conventions: { turning-chains: { hcd: counted } }', ['key-unknown 4:34-37'], 'conventions: { turning-chains: { hdc: counted } }'],
  // htr is a UK word; in US terms it is hdc.
  ['conventions: { turning-chains: { htr: counted } }', ['key-unknown 4:34-37'], 'conventions: { turning-chains: { tr: counted } }'],
  ['materials: { hooks: [5] }', ['value-wrong 4:22-23'], 'materials: { hooks: [5 mm] }'],
  ['materials: { hooks: 5 }', ['value-wrong 4:21-22'], 'materials: { hooks: 5 mm }'],
  ['materials: { yarns: [{ weight: 8 }] }', ['value-wrong 4:32-33'], 'materials: { yarns: [{ weight: 7 }] }'],
  ['materials: { yarns: [{ needs: 120 }] }', ['value-wrong 4:31-34'], 'materials: { yarns: [{ needs: 120 g }] }'],
  ['materials: { yarns: [{ needs: [120 g, 240 g] }] }', ['value-wrong 4:31-45'], 'materials: { yarns: [{ needs: [120 g] }] }'],
  ['materials: { yarns: [{ ball: { grams: 100 } }] }', ['key-missing 4:32-37'], 'materials: { yarns: [{ ball: { grams: 100, metres: 200 } }] }'],
  ['materials: { notions: [yarn needle] }', ['value-wrong 4:24-35'], 'materials: { notions: [{ what: yarn needle }] }'],
  ['materials: { notions: [{ what: marker, count: 1.5 }] }', ['value-wrong 4:47-50'], 'materials: { notions: [{ what: marker, count: 2 }] }'],
  ['stitches: [{ name: bobble }]', ['key-missing 4:14-18'], 'stitches: [{ abbr: bo }]'],
  ['stitches: [{ abbr: bo, makes: -1 }]', ['value-wrong 4:31-33'], 'stitches: [{ abbr: bo, makes: 0 }]'],
  ['stitches: [{ abbr: bo, height: tall }]', ['value-wrong 4:32-36'], 'stitches: [{ abbr: bo, height: dtr }]'],
  ['seams: [{ by: sewing }]', ['key-missing 4:11-13'], 'seams: [{ join: [Disc], by: sewing }]'],
  ['seams: [{ join: [Disk] }]', ['value-wrong 4:18-22'], 'seams: [{ join: [Disc] }]'],
  ['seams: [{ join: [Disc], ease: yes }]', ['value-wrong 4:31-34'], 'seams: [{ join: [Disc], ease: true }]'],
  ['seams: [{ join: [Disc], wrong-sides: in }]', ['value-wrong 4:38-40'], 'seams: [{ join: [Disc], wrong-sides: apart }]'],
  ['finished: [{ what: width }]', ['key-missing 4:14-18'], 'finished: [{ what: width, is: 9 cm }]'],
  ['finished: [{ what: width, is: [9 cm, 12 cm] }]', ['value-wrong 4:31-44'], 'finished: [{ what: width, is: [9 cm] }]'],
  ['changes: [{ version: 1.0.0, what: First }]', ['key-missing 4:13-20'], 'changes: [{ version: 1.0.0, date: 2026-11-02, what: First }]'],
  ['colour: Kelp', ['key-unknown 4:1-7'], 'summary: Kelp'],
  ['sumary: Kelp', ['key-unknown 4:1-7'], 'summary: Kelp'],
  ['Level: easy', ['key-unknown 4:1-6'], 'level: easy'],
])('%s', (wrong, places, right) => {
  test('is found at its place, and the rows are still there', () => {
    expect(found(smallWith(wrong))).toEqual(places)
    expect(rowsFound(smallWith(wrong))).toEqual({ Disc: '      Rnd 1: 6 sc in MR. (6)' })
  })

  test(`${right} is right`, () => {
    expect(found(smallWith(right))).toEqual([])
  })
})

describe('lists by size', () => {
  test.each<[line: string, places: readonly string[]]>([
    ['finished: [{ what: width, is: [9 cm, 12 cm] }]', []],
    ['finished: [{ what: width, is: 9 cm }]', []],
    ['finished: [{ what: width, is: [9 cm, 12 cm, 15 cm] }]', ['value-wrong 5:31-51']],
    ['materials: { yarns: [{ needs: [5 g, 10 g, 15 g] }] }', ['value-wrong 5:31-48']],
    ['materials: { notions: [{ what: marker, count: [1, 2, 3] }] }', ['value-wrong 5:47-56']],
    ['materials: { notions: [{ what: wool, amount: [1 g, 2 g, 3 g] }] }', ['value-wrong 5:46-61']],
  ])('two sizes and %s', (line, places) => {
    expect(found(smallWith('sizes: [Small, Large]', line))).toEqual(places)
  })

  test('are not held against sizes that cannot be read', () => {
    expect(found(smallWith('sizes: [Small, Large', 'finished: [{ what: width, is: [9 cm, 12 cm] }]'))).toEqual(['front-matter-broken 4:8-9'])
  })

  test('one length holds for every size', () => {
    const { pattern } = readPattern(sourceOf(smallWith('sizes: [Small, Large]', 'finished: [{ what: width, is: 9 cm }]')))
    expect(pattern?.finished[0]?.is).toEqual([9, 9])
  })
})

describe('pieces', () => {
  test.each<[name: string, lines: readonly string[], places: readonly string[], left: readonly string[]]>([
    ['two have one name', ['  - name: Disc', '    rows: |', '      Rnd 1: x'], ['value-wrong 8:11-15'], ['Disc', 'Disc']],
    ['one has no name', ['  - rows: |', '      Rnd 1: x'], ['key-missing 8:5-9'], ['Disc', 'Piece 2']],
    ['one goes on from itself', ['  - name: Rim', '    on: Rim', '    rows: |', '      Rnd 1: x'], ['value-wrong 9:9-12'], ['Disc']],
    ['one goes on from nothing', ['  - name: Rim', '    on: Base', '    rows: |', '      Rnd 1: x'], ['value-wrong 9:9-13'], ['Disc']],
    ['one goes on from a name misspelt', ['  - name: Rim', '    on: disk', '    rows: |', '      Rnd 1: x'], ['value-wrong 9:9-13'], ['Disc', 'Rim']],
    ['one goes on from a later one', ['  - name: Rim', '    on: Cord', '    rows: |', '      Rnd 1: x', '  - name: Cord', '    rows: |', '      Rnd 1: x'], ['value-wrong 9:9-13'], ['Disc', 'Cord']],
    ['one has no such shape', ['  - name: Rim', '    shape: round', '    rows: |', '      Rnd 1: x'], ['value-wrong 9:12-17'], ['Disc', 'Rim']],
    ['one is made no times', ['  - name: Rim', '    make: 0', '    rows: |', '      Rnd 1: x'], ['value-wrong 9:11-12'], ['Disc', 'Rim']],
    ['one has a key misspelt', ['  - name: Rim', '    makes: 2', '    rows: |', '      Rnd 1: x'], ['key-unknown 9:5-10'], ['Disc', 'Rim']],
    ['one goes over two', ['  - name: Cord', '    rows: |', '      Rnd 1: x', '  - name: Rim', '    on: [Disc, Cord, Disc]', '    rows: |', '      Rnd 1: x'], [], ['Disc', 'Cord', 'Rim']],
    ['one goes over two of which one is not there', ['  - name: Rim', '    on: [Disc, Base]', '    rows: |', '      Rnd 1: x'], ['value-wrong 9:16-20'], ['Disc']],
    ['one goes over two of which one is misspelt', ['  - name: Rim', '    on: [disk]', '    rows: |', '      Rnd 1: x'], ['value-wrong 9:10-14'], ['Disc', 'Rim']],
    ['one goes on from another', ['  - name: Rim', '    on: Disc', '    rows: |', '      Rnd 1: x'], [], ['Disc', 'Rim']],
  ])('%s', (_, lines, places, left) => {
    const text = withPieces(...disc, ...lines)
    expect(found(text)).toEqual(places)
    expect(readPattern(sourceOf(text)).pattern?.pieces.map(({ name }) => name)).toEqual(left)
  })
})

describe('keys that a pattern cannot do without', () => {
  test.each<[name: string, text: string, places: readonly string[]]>([
    ['title', withPieces(...disc).replace('title: Tide Coaster\n', ''), ['key-missing 1:1-4']],
    ['terms', withPieces(...disc).replace('terms: US\n', ''), ['key-missing 1:1-4']],
    ['pieces', withPieces(), ['key-missing 1:1-4']],
    ['all of them', '---\n---\n', ['key-missing 1:1-4', 'key-missing 1:1-4', 'key-missing 1:1-4']],
    ['pieces, misspelt', withPieces('peices:', ...disc.slice(1)), ['key-unknown 4:1-7']],
    ['terms, misspelt', withPieces(...disc).replace('terms:', 'term:'), ['key-unknown 3:1-5']],
    ['a list of pieces', withPieces('pieces: []'), ['value-wrong 4:9-11']],
    ['a dash before the piece', withPieces('pieces:', '  name: Disc', '  rows: |', '    Rnd 1: x'), ['value-wrong 4:1-7']],
  ])('%s', (_, text, places) => {
    expect(found(text)).toEqual(places)
  })

  test('a pattern without a title is counted all the same, and so is one whose key is misspelt', () => {
    const untitled = readPattern(sourceOf(withPieces(...disc).replace('title: Tide Coaster\n', '')))
    expect(untitled.pattern?.title).toBe('Tide coaster')
    expect(readPattern(sourceOf(withPieces('peices:', ...disc.slice(1)))).pattern?.pieces.map(({ name }) => name)).toEqual(['Disc'])
  })

  test('without terms nothing can be counted: dc is one stitch in US and another in UK terms', () => {
    expect(readPattern(sourceOf(withPieces(...disc).replace('terms: US\n', ''))).pattern).toBeUndefined()
    expect(readPattern(sourceOf(withPieces(...disc).replace('terms: US', 'terms: uk'))).pattern?.terms).toBe('UK')
  })
})

describe('what is said', () => {
  test.each<[line: string, says: ReturnType<typeof saysOf>]>([
    ['materails: {}', { message: '`materails` is no key of a pattern', hint: 'did you mean `materials`?' }],
    ['level: Easy', { message: '`level` is `Easy`, but must be basic, easy, intermediate or complex', hint: 'did you mean `easy`?' }],
    ['summary: #1', { message: '`summary` is left empty, but must be text', note: '`#` begins a comment in YAML: a value that begins with it needs quotes' }],
    ['summary: [sc]', { message: '`summary` is a list, but must be text', note: 'text that begins with `[` needs quotes' }],
    ['materials: { hooks: [5] }', { message: '`hooks` holds `5`, but each must be a hook size in mm such as `5 mm`' }],
    ['stitches: [{ name: bobble }]', { message: 'special stitch `bobble` has no `abbr`' }],
    ['conventions: { turning-chains: { htr: counted } }', { message: '`htr` is no stitch in US terms', note: 'it is a word of UK terms, and the pattern is in US terms' }],
    ['seams: [{ join: [Disk] }]', { message: 'a seam joins `Disk`, but no piece has that name', hint: 'did you mean `Disc`?' }],
    ['finished: [{ what: width, is: [9 cm, 12 cm] }]', { message: '`is` holds 2 values, but the pattern has 1 size', note: 'a pattern without `sizes` has one size' }],
  ])('of %s', (line, says) => {
    expect(saysOf(smallWith(line))).toEqual(says)
  })
})
