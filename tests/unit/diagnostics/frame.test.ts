import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { Label } from '../../../src/diagnostics/diagnostic.ts'
import { frame } from '../../../src/diagnostics/frame.ts'
import { labelOn, sourceFrom } from './made-up-source.ts'

// Whole frames, drawn by hand in the form of the three reports in report.test.ts.

function drawn(source: { path: string; text: string }, primary: Label, secondary: readonly Label[] = [], width?: number): string {
  return frame({ primary, secondary }, source, width === undefined ? {} : { width }).lines.join('\n')
}

test('lines that do not follow each other are parted by …, a single line between them is shown', () => {
  const source = sourceFrom('a.md', 8, ['Row 1: sc 4.', 'Row 2: sc 4.', 'Row 3: sc 4.', 'Row 4: sc 4.', 'Row 5: sc 4.', 'Row 6: sc 4.'])
  const row = (number: number, text: string) => labelOn(source, `Row ${number}`, text)
  expect(drawn(source, row(3, 'here'), [row(1, 'first'), row(6, '')])).toBe(`\
   |
 8 | Row 1: sc 4.
   | ----- first
 9 | Row 2: sc 4.
10 | Row 3: sc 4.
   | ^^^^^ here
 … |
13 | Row 6: sc 4.
   | -----`)
})

test('labels that overlap or touch stand in rows of their own, the place first', () => {
  const source = sourceFrom('a.md', 3, ['Row 2: [sc in next 2 sts, hdc2tog] 4 times.'])
  const place = labelOn(source, 'hdc2tog', 'works over 2')
  expect(drawn(source, place, [labelOn(source, '[sc in next 2 sts, hdc2tog] 4 times', 'works over 16')])).toBe(`\
  |
3 | Row 2: [sc in next 2 sts, hdc2tog] 4 times.
  |                           ^^^^^^^ works over 2
  |        ----------------------------------- works over 16`)
  expect(drawn(source, place, [labelOn(source, '] 4 times', 'so often')])).toBe(`\
  |
3 | Row 2: [sc in next 2 sts, hdc2tog] 4 times.
  |                           ^^^^^^^ works over 2
  |                                  --------- so often`)
})

test('a secondary label that says the same as the primary is not drawn twice', () => {
  const source = sourceFrom('a.md', 1, ['Row 2: sc.'])
  expect(drawn(source, labelOn(source, 'sc', 'x'), [labelOn(source, 'sc', 'x')])).toBe('  |\n1 | Row 2: sc.\n  |        ^^ x')
})

test('a span over several lines underlines the first one to its end and says so', () => {
  const source = sourceFrom('a.md', 4, ['Row 2: Sc in next 4 sts,', '  hdc in next 2 sts, sc', '  in last st. (8)'])
  const label = labelOn(source, 'Sc in next 4 sts,\n  hdc in next 2 sts, sc\n  in last st', 'makes 7')
  expect(drawn(source, label)).toBe(`\
  |
4 | Row 2: Sc in next 4 sts,
  |        ^^^^^^^^^^^^^^^^^ makes 7 (on to line 6)`)
  expect(drawn(source, { ...label, text: '' })).toContain('^ (on to line 6)')
  expect(drawn(source, labelOn(source, 'sts,\n', 'ends here'))).toContain('^^^^ ends here')
  expect(drawn(source, labelOn(source, 'sts,\n', 'ends here'))).not.toContain('on to')
})

test('Windows line ends are not part of a line', () => {
  const source = { path: 'a.md', text: 'one\r\nRow 1: sc 3.\r\nthree\r\n' }
  expect(drawn(source, { span: { start: 5, end: 19 }, text: 'all of it' })).toBe('  |\n2 | Row 1: sc 3.\n  | ^^^^^^^^^^^^ all of it')
})

test('a byte order mark at the start of a file is not shown and moves nothing', () => {
  expect(drawn({ path: 'a.md', text: '\uFEFF---' }, { span: { start: 1, end: 4 }, text: 'x' })).toBe('  |\n1 | ---\n  | ^^^ x')
})

test('a place of no width still gets one mark, also behind the last character', () => {
  const source = { path: 'a.md', text: 'sc' }
  expect(drawn(source, { span: { start: 2, end: 2 }, text: 'ends' })).toBe('  |\n1 | sc\n  |   ^ ends')
  expect(drawn({ path: 'a.md', text: '' }, { span: { start: 0, end: 0 }, text: 'empty' })).toBe('  |\n1 |\n  | ^ empty')
})

test('a tab is one column, a wide character two, an accent none', () => {
  // Unicode Standard Annex 11: ideographs and emoji are wide; a combining accent adds nothing.
  expect(drawn({ path: 'a.md', text: '\tx: sc' }, { span: { start: 4, end: 6 }, text: '' })).toBe('  |\n1 |  x: sc\n  |     ^^')
  expect(drawn({ path: 'a.md', text: '毛糸: sc' }, { span: { start: 4, end: 6 }, text: '' })).toBe('  |\n1 | 毛糸: sc\n  |       ^^')
  expect(drawn({ path: 'a.md', text: 'e\u0301: 毛糸' }, { span: { start: 4, end: 6 }, text: '' })).toBe('  |\n1 | e\u0301: 毛糸\n  |    ^^^^')
  expect(drawn({ path: 'a.md', text: '🧶 sc' }, { span: { start: 3, end: 5 }, text: '' })).toBe('  |\n1 | 🧶 sc\n  |    ^^')
})

const longRow = '  Row 12 (RS): Ch 1, turn, sc in first st, ' + 'sc in next 3 sts, 2 sc in next st, '.repeat(8) + 'sc in last 4 sts. (52 sc)'

test('a long line keeps its label, its marks and some words around them, and is cut between words', () => {
  const source = sourceFrom('a.md', 2, [longRow])
  expect(drawn(source, labelOn(source, '(52 sc)', 'says 52, makes 49'))).toBe(`\
  |
2 |   Row 12 (RS): … sc in last 4 sts. (52 sc)
  |                                    ^^^^^^^ says 52, makes 49`)
  expect(drawn(source, labelOn(source, '(52 sc)', 'says 52'), [labelOn(source, 'sc in first st', 'the first')])).toBe(`\
  |
2 |   Row 12 (RS): Ch 1, turn, sc in first st, sc in next 3 sts, … sc in last 4 sts. (52 sc)
  |                            --------------                                        ^^^^^^^ says 52
  |                            the first`)
})

test('a long line keeps its start and its total, whatever is labelled', () => {
  const source = sourceFrom('a.md', 2, [longRow])
  expect(drawn(source, labelOn(source, 'Row 12', 'this one'))).toBe(`\
  |
2 |   Row 12 (RS): … (52 sc)
  |   ^^^^^^ this one`)
  const noTotal = sourceFrom('a.md', 2, [longRow.replace(' (52 sc)', '')])
  expect(drawn(noTotal, labelOn(noTotal, 'Row 12', 'this one'))).toContain('\n2 |   Row 12 (RS): …\n')
})

test('a label with numbers for every size is kept', () => {
  const source = sourceFrom('a.md', 2, [longRow.replace('Row 12 (RS)', 'Rnds 2-3 (2-4, 2-4, 2-5, 2-5)')])
  expect(drawn(source, labelOn(source, '(52 sc)', 'x'))).toContain('\n2 |   Rnds 2-3 (2-4, 2-4, 2-5, 2-5): … sc in last 4 sts. (52 sc)\n')
})

test('a narrower screen cuts earlier, and the indentation goes first', () => {
  const source = sourceFrom('a.md', 2, ['  Row 3: Sc in next 15 sts, 2 sc in next st, sc in next 18 sts. (35 sc)'])
  expect(drawn(source, labelOn(source, '(35 sc)', 'x'), [], 60)).toBe(`\
  |
2 | Row 3: … sc in next 18 sts. (35 sc)
  |                             ^^^^^^^ x`)
})

test('a label that is longer than the screen keeps its first and its last words', () => {
  const source = sourceFrom('a.md', 2, [longRow])
  const all = longRow.slice(longRow.indexOf('Ch 1'), longRow.indexOf('. (52'))
  expect(drawn(source, labelOn(source, all, 'works over 36'))).toBe(`\
  |
2 |   Row 12 (RS): Ch 1, turn, sc in first st, … sc in last 4 sts. (52 sc)
  |                ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ works over 36`)
})

// Characters with their columns by Unicode Standard Annex 11 (wide: 2; combining, with its base: no more), and our
// own rule that a tab and what has no shape take one.
const widths = new Map([
  ['a', 1], [' ', 1], [',', 1], [':', 1], ['.', 1], ['…', 1], ['\t', 1], ['e\u0301', 1], ['毛', 2], ['🧶', 2], ['👩‍👩‍👧', 2], ['\u200B', 1], ['\u0007', 1],
])

const anyLine = fc.array(fc.constantFrom(...widths.keys()), { maxLength: 160 })
// Wide enough for any of them: of a label that is longer than the screen not every word is shown.
const widest = 320

test('every underline has the width of its span on that line', () => {
  fc.assert(fc.property(anyLine, fc.nat(160), fc.nat(160), fc.constantFrom('\n', '\r\n'), (characters, a, b, lineEnd) => {
    const [from, to] = [Math.min(a, b, characters.length), Math.min(Math.max(a, b), characters.length)]
    const before = `first${lineEnd}`
    const start = before.length + characters.slice(0, from).join('').length
    const end = start + characters.slice(from, to).join('').length
    const source = { path: 'a.md', text: `${before}${characters.join('')}${lineEnd}last` }
    const row = drawn(source, { span: { start, end }, text: '' }, [], widest).split('\n').at(-1) ?? ''
    const wide = characters.slice(from, to).reduce((sum, character) => sum + (widths.get(character) ?? 0), 0)
    expect(row).toMatch(/^ {2}\| *\^+$/)
    expect(row.replaceAll(/[^^]/g, '')).toHaveLength(Math.max(1, wide))
  }), { numRuns: 500 })
})

test('each of several labels keeps its own width', () => {
  const source = sourceFrom('a.md', 1, ['Row 1: ' + 'sc in next 2 sts, '.repeat(4)])
  const length = source.text.length
  const span = fc.tuple(fc.nat(length - 1), fc.integer({ min: 1, max: 12 })).map(([start, long]) => ({ start, end: Math.min(length, start + long) }))
  fc.assert(fc.property(span, fc.uniqueArray(span, { maxLength: 5, selector: ({ start, end }) => `${start}-${end}` }), (primary, others) => {
    const secondary = others.filter(({ start, end }) => start !== primary.start || end !== primary.end)
    const rows = drawn(source, { span: primary, text: '' }, secondary.map((one) => ({ span: one, text: '' }))).split('\n').slice(2)
    const found = rows.flatMap((row) => [...row.slice(4).matchAll(/\^+|-+/g)].map(({ 0: mark, index }) => `${mark[0]}${index}+${mark.length}`))
    const wanted = [`^${primary.start}+${primary.end - primary.start}`, ...secondary.map(({ start, end }) => `-${start}+${end - start}`)]
    expect(found.sort()).toEqual(wanted.sort())
  }), { numRuns: 500 })
})

test('any labels in any text are drawn, and the line of each is there', () => {
  const text = fc.string({ unit: 'binary', maxLength: 300 })
  const span = fc.record({ start: fc.integer({ min: -5, max: 320 }), end: fc.integer({ min: -5, max: 320 }) })
  const label = fc.record({ span, text: fc.string({ unit: 'binary', maxLength: 20 }) })
  fc.assert(fc.property(text, label, fc.array(label, { maxLength: 6 }), fc.integer({ min: 1, max: 120 }), (source, primary, secondary, width) => {
    const { lines, gutter } = frame({ primary, secondary }, { path: 'a.md', text: source }, { width })
    expect(lines.some((line) => line.includes('^'))).toBe(true)
    expect(lines.every((line) => line.slice(gutter).startsWith(' |'))).toBe(true)
    expect(lines.join('')).not.toMatch(/[\u0000-\u001F\u007F-\u009F]/)
  }), { numRuns: 500 })
})
