import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

// Which words tell the terms apart: derived from the Craft Yarn Council's US/UK table (www.YarnStandards.com). `sc`, `hdc` and their
// decreases are US only, `htr`, `ttr` and `qtr` UK only; `dc`, `tr` and `dtr` are in both; `ss`, `miss`, `yrh` are weak signs, since
// Canadian print has them beside US stitches.

function mixed(terms: 'US' | 'UK', rows: readonly string[], body = '', head: readonly string[] = []): readonly Diagnostic[] {
  const text = ['---', 'title: Case', `terms: ${terms}`, ...head, 'pieces:', '  - name: Case', '    rows: |', ...rows.map((row) => `      ${row}`), '---', '', body, ''].join('\n')
  return checkPattern({ path: 'case.md', text }).diagnostics.filter(({ code }) => code === 'terms-mixed')
}

const uk = ['Rnd 1: 6 dc in magic ring, ss in first dc. (6 dc)', 'Rnd 2: 1 ch, 2 dc in each st around, ss in first dc. (12 dc)']
const us = ['Rnd 1: 6 sc in magic ring, sl st in first sc. (6 sc)', 'Rnd 2: Ch 1, 2 sc in each st around, sl st in first sc. (12 sc)']
const joined = (rows: readonly string[], word: string): readonly string[] => rows.map((row) => row.replace(/in first (dc|sc)/, `in first ${word}`))

describe('words of the other terms', () => {
  test.each(['sc', 'hdc', 'sc2tog', 'hdc2tog', 'FPhdc', 'half double crochet'])('%s in the text of a UK pattern', (word) => {
    expect(mixed('UK', uk, `Fasten off after the last ${word}.`)).toHaveLength(1)
  })

  test.each(['htr', 'htr2tog', 'ttr', 'qtr', 'FPhtr', 'half treble'])('%s in the text of a US pattern', (word) => {
    expect(mixed('US', us, `Fasten off after the last ${word}.`)).toHaveLength(1)
  })

  test('in rows that come out: once, at the first, with the others beside it and the place where the terms are said', () => {
    const [found, ...more] = mixed('UK', joined(uk, 'sc'))
    expect(more).toEqual([])
    expect(found!.secondary.map(({ text }) => text)).toEqual(['says UK', 'US word'])
    expect(found!.note).toContain('round 1 and round 2')
  })

  test('in every row as a stitch: once, beside the words that cannot be read', () => {
    const text = `---\ntitle: Case\nterms: UK\npieces:\n  - name: Case\n    rows: |\n      ${us.join('\n      ')}\n---\n`
    const codes = checkPattern({ path: 'case.md', text }).diagnostics.map(({ code }) => code).filter((code) => code !== 'key-missing-to-publish')
    expect(codes.filter((code) => code === 'terms-mixed')).toHaveLength(1)
    expect(new Set(codes)).toEqual(new Set(['stitch-unknown', 'terms-mixed']))
  })

  test('in capitals too, where a row is in capitals', () => {
    expect(mixed('UK', joined(uk, 'sc').map((row) => row.toUpperCase()))).toHaveLength(1)
  })

  test('in one size and in three the same', () => {
    expect(mixed('UK', joined(uk, 'sc'), '', ['sizes: [S, M, L]'])).toHaveLength(1)
  })

  test('UK words in plenty, and nothing of US print beside them', () => {
    const rows = ['Rnd 1: 3 ch (counts as dc), 11 dc in magic ring, ss in top of 3 ch. (12 dc)',
      'Rnd 2: 4 ch (counts as dc, ch 1), miss first 2 sts, 1 dc in next st, (1 ch, miss 1 st, 1 dc in next st) 4 times, 1 ch, miss last st, ss in 3rd ch of 4 ch. (6 dc)']
    expect(mixed('US', rows)).toHaveLength(1)
    expect(mixed('US', [rows[0]!.replace('ss in', 'sl st in'), rows[1]!])).toEqual([])
  })
})

describe('no false alarm', () => {
  test('where the words are those of the pattern', () => {
    expect(mixed('UK', uk, 'Fasten off after the last dc; htr and tr are not used.')).toEqual([])
    expect(mixed('US', us, 'Fasten off after the last sc; hdc is not used.')).toEqual([])
  })

  test('on words that both have', () => {
    for (const word of ['dc', 'tr', 'dtr', 'trtr', 'dc2tog', 'FPdc', 'FPtr', 'edc']) {
      expect(mixed('UK', uk, `After the last ${word}.`), word).toEqual([])
      expect(mixed('US', us, `After the last ${word}.`), word).toEqual([])
    }
  })

  test('on one row that is told as not understood', () => {
    expect(mixed('UK', [uk[0]!, 'Rnd 2: 1 ch, 2 hdc in each st around, ss in first dc. (12)'])).toEqual([])
  })

  test('on a text that explains the other terms', () => {
    expect(mixed('UK', uk, '## Terms\n\nUK terms are used.\n\n- dc: US sc\n- htr: hdc')).toEqual([])
    expect(mixed('US', us, 'UK makers: hdc is htr.')).toEqual([])
  })

  test('on one weak sign', () => {
    expect(mixed('US', [...us, 'Rnd 3: Ch 1, (2 sc in next st, miss next st) 6 times, ss in first sc. (12 sc)'])).toEqual([])
    expect(mixed('US', us, 'Keep an even tension, and do not miss the last stitch.')).toEqual([])
    expect(mixed('UK', [...uk, 'Rnd 3: 1 ch, (2 dc in next st, skip next st) 6 times, sl st in first dc. (12 dc)'])).toEqual([])
  })

  test('on a stitch of the pattern’s own, on initials and inside words', () => {
    const own = ['stitches:', '  - { abbr: hdc, name: half drop, works-over: 1, makes: 1 }']
    expect(mixed('UK', [uk[0]!, 'Rnd 2: 1 ch, hdc in each st around, ss in first dc. (6)', 'Rnd 3: 1 ch, hdc in each st around, ss in first dc. (6)'], '', own)).toEqual([])
    expect(mixed('UK', uk, 'Yarn of the SC range; scarf, disc, descent.')).toEqual([])
  })

  const files = ['patterns', 'tests/patterns'].flatMap((folder) => readdirSync(folder).filter((name) => name.endsWith('.md')).map((name) => `${folder}/${name}`))

  test('on the patterns of this collection', () => {
    expect(files.length).toBeGreaterThan(20)
    const alarms = files.flatMap((path) => checkPattern({ path, text: readFileSync(path, 'utf8') }).diagnostics.filter(({ code }) => code === 'terms-mixed').map(({ message }) => `${path}: ${message}`))
    expect(alarms).toEqual([])
  })
})
