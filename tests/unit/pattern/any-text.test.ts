import fc from 'fast-check'
import { expect, test } from 'vitest'
import { decodePattern } from '../../../src/pattern/decode-pattern.ts'
import { readPattern } from '../../../src/pattern/read-pattern.ts'
import type { Span } from '../../../src/text/span.ts'
import { full, smallWith, sourceOf } from './made-up-files.ts'

const good = full.join('\n')

/** Signs with which front-matter is broken: YAML's own, line ends, spaces, keys of the format, and letters of other scripts. */
const signs = [
  '*', '&', '!', '@', '`', '%', '[', ']', '{', '}', ',', ':', ': ', '- ', '? ', '|', '>', '"', "'", '#', ' #', '\\', '\t', '\n', '\r\n', ' ', '    ',
  '---', '---\n', '...', '<<: *a', '&a ', '!!map ', '\uFEFF', '\u00A0', '\u2028', '\uFFFD', '\uE000', '\uD83E', '½', '星',
  'title: ', 'terms: US', 'pieces:', '  - name: ', '    rows: |', 'rows: ', 'Row 1: ', 'on: Front', 'null', 'true', '1e9', '__proto__: x', 'constructor',
]

interface Edit { readonly at: number; readonly cut: number; readonly put: string }

const edit: fc.Arbitrary<Edit> = fc.record({
  at: fc.nat(good.length),
  cut: fc.oneof({ weight: 3, arbitrary: fc.nat(3) }, { weight: 1, arbitrary: fc.nat(200) }),
  put: fc.oneof(fc.constantFrom(...signs), fc.array(fc.constantFrom(...signs), { maxLength: 6 }).map((some) => some.join('')), fc.string({ maxLength: 8 })),
})

function edited(text: string, edits: readonly Edit[]): string {
  return edits.reduce((all, { at, cut, put }) => all.slice(0, at) + put + all.slice(at + cut), text)
}

/** Two lines of a file change places. */
const swapped = fc.tuple(fc.nat(full.length - 1), fc.nat(full.length - 1)).map(([a, b]) => full.with(a, full[b] ?? '').with(b, full[a] ?? '').join('\n'))

const texts = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 400 }),
  fc.array(fc.constantFrom(...signs), { maxLength: 60 }).map((some) => `---\n${some.join('')}`),
  fc.array(fc.constantFrom(...signs), { maxLength: 30 }).map((some) => smallWith(some.join(''))),
  fc.array(edit, { minLength: 1, maxLength: 5 }).map((edits) => edited(good, edits)),
  fc.array(edit, { minLength: 1, maxLength: 2 }).map((edits) => edited(good.replaceAll('\n', '\r\n'), edits)),
  swapped,
)

test('any text is read without a mistake of ours, and every place lies inside it', () => {
  fc.assert(fc.property(texts, (text) => {
    const { pattern, diagnostics } = readPattern(sourceOf(text))
    const spans: Span[] = diagnostics.flatMap(({ primary, secondary }) => [primary.span, ...secondary.map(({ span }) => span)])
    if (pattern) spans.push(...pattern.places.values(), ...pattern.pieces.flatMap(({ rows, nameSpan }) => [rows, nameSpan]))
    for (const part of [pattern?.stitches, pattern?.seams, pattern?.finished]) for (const { span } of part ?? []) spans.push(span)
    const outside = spans.filter(({ start, end }) => !(Number.isInteger(start) && Number.isInteger(end) && start >= 0 && end >= start && end <= text.length))
    expect(outside).toEqual([])
    // A file without a pattern always says why.
    if (!pattern) expect(diagnostics.length).toBeGreaterThan(0)
    // Rows are lines that have words.
    expect((pattern?.pieces ?? []).filter(({ rows }) => text.slice(rows.start, rows.end).trim() === '')).toEqual([])
  }), { numRuns: 1300 })
})

const programs = /\b(?:token|node|parse|ast|invalid|illegal|unexpected|oops|undefined|null|nan|object Object|we|our)\b/i

test('the words of a finding are plain: lower case, no full stop, none of the words of programs', () => {
  fc.assert(fc.property(fc.array(edit, { minLength: 1, maxLength: 3 }).map((edits) => edited(good, edits)), (text) => {
    const said = readPattern(sourceOf(text)).diagnostics.flatMap(({ message, primary, note, hint }) => [message, primary.text, note, hint?.text])
    // What stands in backticks is the designer's.
    const ours = said.filter((words) => words !== undefined).map((words) => words.replace(/`.*`/gs, '`…`'))
    expect(ours.filter((words) => programs.test(words) || !/^[a-z0-9`]/.test(words) || words.endsWith('.'))).toEqual([])
  }), { numRuns: 200 })
})

test('the same text is read the same twice', () => {
  fc.assert(fc.property(texts, (text) => {
    expect(readPattern(sourceOf(text)).diagnostics).toEqual(readPattern(sourceOf(text)).diagnostics)
  }), { numRuns: 200 })
})

test('bytes are the text that they were made from, or refused', () => {
  fc.assert(fc.property(fc.uint8Array({ maxLength: 60 }), (bytes) => {
    const decoded = decodePattern(bytes)
    if ('text' in decoded) expect(new TextEncoder().encode(decoded.text)).toEqual(new Uint8Array(bytes))
    else expect(decoded.reason).toMatch(/UTF-8/)
  }), { numRuns: 1300 })
  fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => {
    expect(decodePattern(new TextEncoder().encode(text))).toEqual({ text })
  }))
})
