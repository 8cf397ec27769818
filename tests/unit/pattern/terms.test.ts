import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { bookletsInTerms } from '../../../src/booklet/booklet-in-terms.ts'
import { makeBooklet } from '../../../src/booklet/make-booklet.ts'
import { checkOnce, checkPattern } from '../../../src/pattern/check-pattern.ts'
import { patternInTerms, sourceInOtherTerms } from '../../../src/pattern/terms/pattern-in-terms.ts'
import { inOtherTerms } from '../../../src/stitches/other-terms.ts'
import { readCases } from '../../support/read-cases.ts'

/** A pattern with these rows and this prose, its rows in the other terms, and its prose. */
function turned(rows: string, { terms = 'US', prose = '', more = '' }: { terms?: 'US' | 'UK'; prose?: string; more?: string } = {}) {
  const text = `---\ntitle: Case\nterms: ${terms}\n${more}pieces:\n  - name: Treble Panel\n    rows: |\n${rows.split('\n').map((row) => `      ${row}`).join('\n')}\n---\n\n${prose}\n`
  const checked = checkPattern({ path: 'case.md', text })
  const source = sourceInOtherTerms(checked, checked.pattern!)
  const [, front = '', body = ''] = source.text.split(/^---$/m)
  return { rows: front.slice(front.indexOf('rows: |') + 8).split('\n').map((row) => row.trim()).filter((row) => row !== '').join('\n'), prose: body.trim(), front, source, checked }
}

// The US/UK table of the Craft Yarn Council (www.YarnStandards.com), as in unit/standards/us-and-uk.test.ts.
describe('a stitch in the other terms', () => {
  test.each([
    ['sc', 'dc'], ['hdc', 'htr'], ['dc', 'tr'], ['tr', 'dtr'], ['dtr', 'trtr'], ['sl st', 'ss'], ['sc2tog', 'dc2tog'], ['FPdc', 'FPtr'], ['BPhdc', 'BPhtr'],
    ['single crochet', 'double crochet'], ['half double crochet', 'half treble crochet'], ['double crochet', 'treble crochet'],
    ['treble crochet', 'double treble crochet'], ['Sc', 'Dc'], ['HDC', 'HTR'], ['3-dc cl', '3-tr cl'], ['dc5tog', 'tr5tog'], ['half double crochets', 'half treble crochets'],
  ])('US %s, UK %s', (us, uk) => {
    expect(inOtherTerms(us, 'US')).toBe(uk)
    expect(inOtherTerms(uk, 'UK')).toBe(us)
  })

  test.each(['st', 'ch', 'inc', 'shell', 'bobble', 'slip stitch', 'crab st', 'Treb'])('%s stays', (word) => {
    expect(inOtherTerms(word, 'US')).toBeUndefined()
  })

  test('what both terms write alike stays: UK sl st is US sl st', () => {
    expect(inOtherTerms('sl st', 'UK')).toBeUndefined()
  })
})

describe('rows in the other terms', () => {
  test('every stitch where it stands, once: work, targets, what chains count as, totals by kind', () => {
    const us = 'Ch 23.\nRow 1 (RS): Dc in 4th ch from hook and in each ch across. (21 dc)\nRow 2: Ch 3 (counts as dc), turn, sk first dc, sc in next dc, *dc in next dc, sc in next dc; rep from * to last st, dc in top of tch. (11 dc, 10 sc)'
    expect(turned(us).rows).toBe('Ch 23.\nRow 1 (RS): Tr in 4th ch from hook and in each ch across. (21 tr)\n'
      + 'Row 2: Ch 3 (counts as tr), turn, miss first tr, dc in next tr, *tr in next tr, dc in next tr; rep from * to last st, tr in top of tch. (11 tr, 10 dc)')
  })

  test('a piece keeps its name', () => {
    expect(turned('Rnd 1: Sc in each st around Treble Panel. (8)').rows).toBe('Rnd 1: Dc in each st around Treble Panel. (8)')
  })

  test('conventions, gauge and stitches of the pattern go along', () => {
    const more = 'gauge: { stitch: sc, sts: 14, rows: 16, over: 10 cm }\nconventions:\n  turning-chains: { sc: not counted, "dc": counted }\n'
      + 'stitches:\n  - { abbr: bsc, name: beaded single crochet, works-over: 1, makes: 1, height: sc, how: "Slide a bead up, then sc." }\n'
    const { front, source } = turned('Ch 5.\nRow 1: Sc in 2nd ch from hook, bsc in next 3 ch. (4)', { more })
    expect(front).toContain('stitch: dc,')
    expect(front).toContain('{ dc: not counted, "tr": counted }')
    expect(front).toContain('name: beaded double crochet, works-over: 1, makes: 1, height: dc, how: "Slide a bead up, then dc."')
    expect(checkPattern(source).pattern?.conventions.turningChains).toEqual({ sc: false, dc: true })
  })

  test('a stitch that the pattern means in its own way keeps its word', () => {
    const more = 'stitches:\n  - { abbr: tr, name: twisted ridge, works-over: 1, makes: 1 }\n'
    expect(turned('Ch 5.\nRow 1: Sc in 2nd ch from hook, tr in next 3 ch. (4)', { more }).rows).toBe('Ch 5.\nRow 1: Dc in 2nd ch from hook, tr in next 3 ch. (4)')
  })

  test('where the words would then mean two things there is no such edition', () => {
    const more = 'stitches:\n  - { abbr: htr, name: herringbone row, works-over: 1, makes: 2 }\n'
    const { checked } = turned('Ch 5.\nRow 1: Hdc in 2nd ch from hook, htr in next ch, hdc in next 2 ch. (5)', { more })
    expect(checked.diagnostics.filter(({ code }) => code !== 'key-missing-to-publish')).toEqual([])
    expect(patternInTerms(checked, 'UK')).toBeUndefined()
  })
})

describe('prose in the other terms', () => {
  const prose = (text: string, terms: 'US' | 'UK' = 'US') => turned('Ch 5.\nRow 1: Ch 1. (0)', { prose: text, terms }).prose

  test.each([
    ['The first sc goes into the ring.', 'The first dc goes into the ring.'],
    ['Work a row of half double crochet.', 'Work a row of half treble crochet.'],
    ['Gauge matters here; check your gauge.', 'Tension matters here; check your tension.'],
    ['Skip the next 2 sts, then yarn over.', 'Miss the next 2 sts, then yarn round hook.'],
    ['Written in US terms.', 'Written in UK terms.'],
    ['Push each **dc** to the front.', 'Push each **tr** to the front.'],
  ])('%s', (us, uk) => {
    expect(prose(us)).toBe(uk)
    expect(prose(uk, 'UK')).toBe(us)
  })

  test.each([
    'Skip the blocking if you like.', 'An 18-gauge wire.', 'You can gauge the length by eye.', 'The DC in the title is a place.',
    'US sc is UK dc.', 'Knot the ends; s c and d c are letters.', 'The address is [here](https://dc.example/sc).',
  ])('stays: %s', (text) => {
    expect(prose(text)).toBe(text)
  })

  test.each(['Keep the tension of the yarn even.', 'You cannot miss the harbour.', 'Hold the yarn under light tension.'])('stays in UK terms too: %s', (text) => {
    expect(prose(text, 'UK')).toBe(text)
  })
})

const cases = ['tests/spec', 'tests/patterns'].flatMap((folder) => readdirSync(folder).filter((name) => name.endsWith('.md'))
  .flatMap((name) => readCases(readFileSync(`${folder}/${name}`, 'utf8'), name).flatMap((one) => (one.kind === 'fence' ? [{ name: `${name}:${one.line}`, source: one.wrapped.source }] : []))))
const demo = readdirSync('patterns').map((name) => ({ name, source: { path: name, text: readFileSync(`patterns/${name}`, 'utf8') } }))

describe('every form of a row, right or with a slip, in the other terms', () => {
  // The law is of mathematics: what is the same work comes to the same counts, and turning round twice is where one began. Several
  // spellings of one stitch come back as the first of them, so texts are compared after the first turn.
  test('works to the same counts and the same findings, and a third turn is the first', () => {
    const unlike: string[] = []
    for (const [at, { name, source }] of cases.entries()) {
      const checked = checkOnce(source)
      const { pattern } = checked
      // A pattern of mixed terms has no other terms to be put in.
      if (!pattern || checked.diagnostics.some(({ code }) => code === 'terms-mixed' || code === 'stitch-unknown')) continue
      const once = patternInTerms(checked, pattern.terms === 'US' ? 'UK' : 'US')
      if (once === undefined) unlike.push(name)
      // Three turns of every fourth case: each costs a check.
      const twice = once && at % 4 === 0 ? patternInTerms(once, pattern.terms) : undefined
      if (twice && sourceInOtherTerms(twice, twice.pattern!).text !== once?.source.text) unlike.push(`${name}, turned three times`)
    }
    expect(cases.length).toBeGreaterThan(700)
    expect(unlike).toEqual([])
  })

  test.each(demo)('$name turned twice is itself, letter for letter', ({ source }) => {
    const checked = checkPattern(source)
    const once = patternInTerms(checked, checked.pattern!.terms === 'US' ? 'UK' : 'US')
    expect(once).not.toBeUndefined()
    expect(sourceInOtherTerms(once!, once!.pattern!).text).toBe(source.text)
  })

  test.each(demo)('the booklet of $name has the same lines and figures in both terms', ({ source }) => {
    const checked = checkPattern(source)
    const own = makeBooklet(checked)
    const other = bookletsInTerms(checked, own.terms === 'US' ? 'UK' : 'US')!
    const figures = ({ parts }: typeof own) => parts.flatMap(({ lines }) => lines.map((line) => (line.kind === 'row' ? [line.id, line.label, line.repeats, line.change, line.stitches] : [])))
    expect(figures(other.booklet)).toEqual(figures(own))
    expect(other.booklet.terms).not.toBe(own.terms)
  })
})
