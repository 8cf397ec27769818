import { readPattern } from '../../../src/pattern/read-pattern.ts'
import { placeOf, type Source } from '../../../src/text/source.ts'

/** Every key that a pattern file can have. Line numbers in the tests are counted by hand from here. */
export const full = [
  /*  1 */ '---',
  /*  2 */ 'title: Skiff Cushion',
  /*  3 */ 'number: 9',
  /*  4 */ 'summary: A boat-shaped floor cushion in two halves.',
  /*  5 */ 'designer: Saltmarsh Yarnworks',
  /*  6 */ 'version: 1.10',
  /*  7 */ 'date: 2026-11-02',
  /*  8 */ 'access: sold',
  /*  9 */ 'terms: UK',
  /* 10 */ 'level: easy',
  /* 11 */ 'made-for: home',
  /* 12 */ 'sizes: [Small, Large]',
  /* 13 */ 'gauge: { stitch: htr, sts: 8.5, rows: 6, over: 4 in, hook: 10 mm, after: as worked }',
  /* 14 */ 'conventions:',
  /* 15 */ '  turning-chains: { dc: not counted, htr: not counted, tr: counted, dtr: counted, trtr: counted }',
  /* 16 */ '  slip-stitches: counted',
  /* 17 */ '  chains: not counted',
  /* 18 */ 'materials:',
  /* 19 */ '  yarns:',
  /* 20 */ '    - { letter: A, weight: 6, fibre: 100% polyester, ball: { grams: 100, metres: 68 }, colour: Kelp, needs: [120 g, 240 g] }',
  /* 21 */ '    - { letter: B, name: Rope, for: border, needs: 30 g }',
  /* 22 */ '  hooks: [10 mm, 9 mm]',
  /* 23 */ '  notions: [{ what: yarn needle, count: 1 }, { what: fibrefill, amount: [200 g, 400 g], for: filling }]',
  /* 24 */ 'stitches:',
  /* 25 */ '  - { abbr: bo, name: bobble, height: tr, how: "4 tr, closed together" }',
  /* 26 */ '  - { abbr: knot, works-over: 2, makes: 3 }',
  /* 27 */ 'pieces:',
  /* 28 */ '  - name: Front',
  /* 29 */ '    make: 2',
  /* 30 */ '    shape: flat',
  /* 31 */ '    note: Worked from the keel up.',
  /* 32 */ '    rows: |',
  /* 33 */ '      Foundation: Ch 41 (61).',
  /* 34 */ '      Row 1 (RS): Htr in 2nd ch from hook and in each ch across. (40 (60))',
  /* 35 */ '  - name: Border',
  /* 36 */ '    on: Front',
  /* 37 */ '    rows: |',
  /* 38 */ '      Rnd 1: Dc in each st around.',
  /* 39 */ 'seams:',
  /* 40 */ '  - { join: [Front, Border], by: whip stitch, wrong-sides: together, ease: true }',
  /* 41 */ 'finished: [{ what: width, of: Front, is: [50 cm, 19½ in] }, { what: depth, is: 7 3/4 in }]',
  /* 42 */ 'changes: [{ version: 1.10, date: 2026-11-02, what: First release. }]',
  /* 43 */ '---',
  /* 44 */ '',
  /* 45 */ '## Notes',
  /* 46 */ '',
  /* 47 */ 'Row 1 leaves :count[Front row 1] stitches.',
  '',
] as const

/** The full file with some of its lines (by number) written otherwise. */
export function fullWith(changes: Readonly<Record<number, string>>): string {
  return full.map((line, index) => changes[index + 1] ?? line).join('\n')
}

/** The smallest file that is checked, with lines of its own from line 4 on. Its pieces stand at the end of the front-matter. */
export function smallWith(...lines: readonly string[]): string {
  return ['---', 'title: Tide Coaster', 'terms: US', ...lines, 'pieces:', '  - name: Disc', '    rows: |', '      Rnd 1: 6 sc in MR. (6)', '---', ''].join('\n')
}

/** The front-matter of a pattern with these lines from line 4 on, which hold its pieces. */
export function withPieces(...lines: readonly string[]): string {
  return ['---', 'title: Tide Coaster', 'terms: US', ...lines, '---', ''].join('\n')
}

export function sourceOf(text: string): Source {
  return { path: 'patterns/tide-coaster.md', text }
}

/**
 * What is found in a file: code, line, first column and the column after the last, as `value-wrong 6:8-10`. What a file lacks to
 * be published is left out, for nearly all of these files lack it.
 */
export function found(text: string): readonly string[] {
  const source = sourceOf(text)
  return readPattern(source).diagnostics.filter(({ code }) => code !== 'key-missing-to-publish').map(({ code, primary: { span } }) => {
    const start = placeOf(source, span.start)
    const end = placeOf(source, span.end)
    return `${code} ${start.line}:${start.column}-${end.line === start.line ? '' : `${end.line}:`}${end.column}`
  })
}

/** The rows of every piece that could be read, as they stand in the file. */
export function rowsFound(text: string): Readonly<Record<string, string>> {
  const pieces = readPattern(sourceOf(text)).pattern?.pieces ?? []
  return Object.fromEntries(pieces.map(({ name, rows }) => [name, text.slice(rows.start, rows.end)]))
}

/** The one finding in a file, as the designer reads it. */
export function saysOf(text: string): { readonly message: string; readonly note?: string; readonly hint?: string } {
  const [first] = readPattern(sourceOf(text)).diagnostics.filter(({ code }) => code !== 'key-missing-to-publish')
  if (!first) throw new Error('nothing was found')
  return {
    message: first.message,
    ...(first.note === undefined ? {} : { note: first.note }),
    ...(first.hint === undefined ? {} : { hint: first.hint.text }),
  }
}
