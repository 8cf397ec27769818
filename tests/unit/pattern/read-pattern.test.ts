import { describe, expect, test } from 'vitest'
import { readPattern } from '../../../src/pattern/read-pattern.ts'
import { slugOf } from '../../../src/pattern/slug.ts'
import { placeOf, textOf } from '../../../src/text/source.ts'
import { found, full, fullWith, smallWith, sourceOf } from './made-up-files.ts'

describe('a file with every key', () => {
  const source = sourceOf(full.join('\n'))
  const { pattern, diagnostics } = readPattern(source)

  test('is right', () => {
    expect(diagnostics).toEqual([])
  })

  test('says its facts', () => {
    expect(pattern).toMatchObject({
      slug: 'tide-coaster', title: 'Skiff Cushion', number: 9, summary: 'A boat-shaped floor cushion in two halves.',
      designer: 'Saltmarsh Yarnworks', date: '2026-11-02', access: 'sold', terms: 'UK', level: 'easy', madeFor: 'home', sizes: ['Small', 'Large'],
    })
  })

  // As a number, 1.10 would be 1.1, another version.
  test('keeps a version as it is written', () => {
    expect(pattern?.version).toBe('1.10')
    expect(pattern?.changes).toEqual([{ version: '1.10', date: '2026-11-02', what: 'First release.' }])
  })

  // 1 in = 2.54 cm exactly (international yard and pound agreement, 1959).
  test('gives lengths in centimetres and hooks in millimetres', () => {
    expect(pattern?.gauge).toEqual({ stitch: 'hdc', sts: 8.5, rows: 6, over: 4 * 2.54, hook: 10, after: 'as worked' })
    expect(pattern?.finished.map(({ is }) => is.map((cm) => Number(cm.toFixed(6))))).toEqual([[50, 49.53], [19.685, 19.685]])
    expect(pattern?.materials?.hooks).toEqual([10, 9])
  })

  // UK dc, htr, tr, dtr and trtr are US sc, hdc, dc, tr and dtr (the trade's table of US and UK names).
  test('names stitches in US words', () => {
    expect(pattern?.conventions).toEqual({
      turningChains: { sc: false, hdc: false, dc: true, tr: true, dtr: true }, slipStitchesCount: true, chainsCount: false,
    })
    expect(pattern?.stitches.map(({ span: _, ...stitch }) => stitch)).toEqual([
      { abbr: 'bo', name: 'bobble', worksOver: 1, makes: 1, height: 'dc', how: '4 tr, closed together' },
      { abbr: 'knot', worksOver: 2, makes: 3 },
    ])
  })

  test('lists materials by size', () => {
    expect(pattern?.materials?.yarns).toEqual([
      { letter: 'A', weight: 6, fibre: '100% polyester', ball: { grams: 100, metres: 68 }, colour: 'Kelp', needs: [120, 240] },
      { letter: 'B', name: 'Rope', for: 'border', needs: [30] },
    ])
    expect(pattern?.materials?.notions).toEqual([
      { what: 'yarn needle', count: [1] }, { what: 'fibrefill', amount: ['200 g', '400 g'], for: 'filling' },
    ])
  })

  test('has its pieces and seams', () => {
    expect(pattern?.pieces.map(({ rows: _, nameSpan: __, ...piece }) => piece)).toEqual([
      { name: 'Front', make: 2, shape: 'flat', note: 'Worked from the keel up.' }, { name: 'Border', make: 1, on: 'Front' },
    ])
    expect(pattern?.seams.map(({ span: _, ...seam }) => seam)).toEqual([
      { join: ['Front', 'Border'], by: 'whip stitch', sides: 'together', ease: true },
    ])
  })

  test('finds rows in the file itself, from the start of the first line to the end of the last', () => {
    const [front, border] = pattern!.pieces
    expect(placeOf(source, front!.rows.start)).toEqual({ line: 33, column: 1 })
    expect(textOf(source, front!.rows)).toBe(`${full[32]}\n${full[33]}`)
    expect(textOf(source, border!.rows)).toBe(full[37])
    expect(placeOf(source, front!.nameSpan.start)).toEqual({ line: 28, column: 11 })
  })

  test.each([
    ['title', 2, 8, 'Skiff Cushion'],
    ['sizes', 12, 8, '[Small, Large]'],
    ['sizes.1', 12, 16, 'Large'],
    ['gauge.over', 13, 48, '4 in'],
    ['materials.yarns.1.letter', 21, 17, 'B'],
    ['materials.yarns.0.ball.metres', 20, 82, '68'],
    ['stitches.0.how', 25, 48, '"4 tr, closed together"'],
    ['pieces.1.on', 36, 9, 'Front'],
    ['pieces.1.rows', 38, 1, '      Rnd 1: Dc in each st around.'],
    ['seams.0.join.1', 40, 21, 'Border'],
    ['finished.1.is', 41, 80, '7 3/4 in'],
  ])('keeps the place of %s', (path, line, column, written) => {
    const span = pattern?.places.get(path)
    expect(span && textOf(source, span)).toBe(written)
    expect(span && placeOf(source, span.start)).toEqual({ line, column })
  })
})

describe('a file with title, terms and pieces', () => {
  test('is enough to be checked', () => {
    const { pattern } = readPattern(sourceOf(smallWith()))
    expect(pattern).toMatchObject({ access: 'free', sizes: [], conventions: { turningChains: {} }, stitches: [], seams: [], finished: [], changes: [] })
    expect(pattern).not.toHaveProperty('gauge')
  })

  test('is told once, at its first line, all that it lacks to be published', () => {
    const { diagnostics } = readPattern(sourceOf(smallWith('summary: A coaster.', 'materials: { yarns: [{ letter: A }] }')))
    expect(diagnostics.map(({ code, primary }) => [code, primary.span])).toEqual([['key-missing-to-publish', { start: 0, end: 3 }]])
    const named = [...diagnostics[0]!.message.matchAll(/`([^`]+)`/g)].map(([, key]) => key)
    expect(named).toEqual(['designer', 'version', 'date', 'level', 'made-for', 'gauge', 'finished', 'materials.yarns.needs', 'materials.hooks'])
  })

  test('lacks nothing more than the one key that was taken out', () => {
    const { diagnostics } = readPattern(sourceOf(full.filter((line) => !line.startsWith('level:')).join('\n')))
    expect(diagnostics.map(({ code }) => code)).toEqual(['key-missing-to-publish'])
    expect(diagnostics[0]?.message).toContain('`level`')
  })
})

test('a pattern whose title, facts or materials are wrong is still given, with its rows', () => {
  const text = fullWith({ 2: 'title: [Skiff]', 6: 'version: first', 13: 'gauge: tight', 22: '  hooks: [H]' })
  const { pattern } = readPattern(sourceOf(text))
  expect(found(text)).toEqual(['value-wrong 2:8-15', 'value-wrong 6:10-15', 'value-wrong 13:8-13', 'value-wrong 22:11-12'])
  expect(pattern?.title).toBe('Tide coaster')
  expect(pattern?.pieces.map(({ name }) => name)).toEqual(['Front', 'Border'])
  expect(pattern).not.toHaveProperty('gauge')
  expect(pattern?.materials?.yarns).toHaveLength(2)
})

test('places follow the pattern when a part before them is left out', () => {
  const source = sourceOf(fullWith({ 20: '    - { letter: A, needs: heaps }', 26: '  - { abbr: knot, height: qq }', 25: '  - { name: bobble }' }))
  const { pattern } = readPattern(source)
  expect(pattern?.stitches.map(({ abbr }) => abbr)).toEqual(['knot'])
  expect(textOf(source, pattern!.places.get('stitches.0.abbr')!)).toBe('knot')
})

test.each([
  ['patterns/Skiff Cushion.md', 'skiff-cushion'],
  ['C:\\patterns\\Étoile de mer.md', 'etoile-de-mer'],
  ['tide-coaster.md', 'tide-coaster'],
  ['….md', 'pattern'],
])('the slug of %s is %s', (path, slug) => {
  expect(slugOf(path)).toBe(slug)
})
