import { describe, expect, test } from 'vitest'
import { abbreviationsOf, type AbbreviationSearch } from '../../../src/booklet/abbreviations.ts'

const search = (rows: string, more: Partial<AbbreviationSearch> = {}) =>
  abbreviationsOf({ rows, prose: '', terms: 'US', special: [], sizes: [], sides: false, kinds: [], ...more })
const listed = (rows: string, more: Partial<AbbreviationSearch> = {}) => search(rows, more).map(({ us, uk }) => `${us} | ${uk}`)
const meaningOf = (word: string, rows: string, more: Partial<AbbreviationSearch> = {}) =>
  search(rows, more).find(({ us, uk }) => us === word || uk === word)?.meaning

describe('abbreviations', () => {
  test('all that are used and no others, stitches first, then words, then signs', () => {
    expect(listed('Ch 1, turn. *Sc in next 5 sts, inc; rep from * across.')).toEqual(['ch | ch', 'sc | dc', 'inc | inc', 'rep | rep', 'sts | sts', '* … ; | * … ;'])
  })

  // Craft Yarn Council's table of US and UK terms: US sc, hdc, dc, tr are UK dc, htr, tr, dtr; decreases follow from it.
  test.each([
    ['Sc in next st.', 'sc | dc'], ['Hdc in next st.', 'hdc | htr'], ['Dc2tog over next 2 sts.', 'dc2tog | tr2tog'], ['Tr in next st.', 'tr | dtr'],
    ['FPdc around next st.', 'FPdc | FPtr'],
  ])('%s', (rows, entry) => {
    expect(listed(rows)).toContain(entry)
  })

  test('in UK terms the same word is another stitch', () => {
    expect(listed('Tr in next st, dc in next st, ss in first tr.', { terms: 'UK' })).toEqual(['sl st | ss', 'sc | dc', 'dc | tr', 'st | st'])
    expect(meaningOf('tr', 'Tr in next st.', { terms: 'UK' })).toMatch(/^treble crochet: /)
  })

  test('a plural stands beside its word', () => {
    expect(listed('Sc in next 2 sts, dc in next st.')).toContain('st, sts | st, sts')
    expect(meaningOf('st, sts', 'Sc in next 2 sts, dc in next st.')).toBe('stitch, stitches')
  })

  test('a slip stitch is one word, and its `st` no other', () => {
    expect(listed('Join with sl st.')).toEqual(['sl st | ss'])
  })

  test('a chain space of so many chains is a ch-sp, and no chain and no sp', () => {
    expect(listed('3 dc in next ch-2 sp.')).toContain('ch-sp | ch-sp')
    expect(listed('3 dc in next ch-2 sp.')).not.toContain('sp | sp')
  })

  test('sides in a column need their words', () => {
    expect(listed('Sc across.', { sides: true })).toEqual(['sc | dc', 'RS | RS', 'WS | WS'])
    expect(listed('Sc across.')).toEqual(['sc | dc'])
  })

  test('a capital at the head of a sentence is the same word, a letter of a yarn is none', () => {
    expect(listed('Rep Row 2. With A, sk 1.')).toEqual(['rep | rep', 'sk | miss'])
  })

  test('prose is searched for what can be no ordinary word', () => {
    expect(listed('Ch 3.', { prose: 'Tie a knot round the star; hdc lies flatter. In the shell shop, double up.' })).toEqual(['ch | ch', 'hdc | htr'])
  })

  test('special stitches of the pattern stand with the stitches, by their own words', () => {
    const special = [{ abbr: 'bo', name: 'bobble', worksOver: 1, makes: 1, span: { start: 0, end: 0 } }, { abbr: 'kn', worksOver: 1, makes: 1, span: { start: 0, end: 0 } }]
    expect(search('Bo in next st.', { special }).filter(({ kind }) => kind === 'stitch')).toEqual([
      { kind: 'stitch', us: 'bo', uk: 'bo', meaning: 'bobble, see Special stitches' },
    ])
  })

  test('inc and dec say what they are made of, in both terms, where that is one stitch', () => {
    expect(meaningOf('inc', 'Inc in each st.', { kinds: ['sc'] })).toBe('increase: 2 sc (UK 2 dc) in one stitch')
    expect(meaningOf('inc', 'Inc in each st.', { kinds: ['sc', 'dc'] })).toBe('increase: 2 stitches in one stitch')
    expect(meaningOf('inc', 'Inc in each st.', { kinds: ['sc'], terms: 'UK' })).toBe('increase: 2 dc (US 2 sc) in one stitch')
  })

  test('brackets are explained as they are used', () => {
    expect(listed('(2 dc, ch 2, 2 dc) in next ch-2 sp.')).toContain('( ) in | ( ) in')
    expect(listed('[sc in next st, inc] 6 times.')).toContain('[ ] 2 times | [ ] 2 times')
    expect(listed('(sc, inc) × 6.')).toEqual(expect.arrayContaining(['( ) 2 times | ( ) 2 times', '× | ×']))
    expect(listed('Sc in each st (do not turn).').filter((entry) => entry.includes('('))).toEqual([])
  })

  test('a star that is only pointed back at opens no second kind of repeat', () => {
    const rows = '*Sc in next st; rep from * across.\nCh 1, turn, *dc in next st; rep from * across.'
    expect(listed(rows).filter((entry) => entry.startsWith('*'))).toEqual(['* … ; | * … ;'])
    expect(listed('*2 sc, inc* 6 times.').filter((entry) => entry.startsWith('*'))).toEqual(['* … * | * … *'])
  })

  test('a stitch that the meaning of another names is explained as well', () => {
    expect(listed('FPdc around next st.')).toEqual(['dc | tr', 'FPdc | FPtr', 'st | st'])
  })

  test('numbers of the sizes are explained first of the signs', () => {
    const signs = search('*Sc in next 12 (14) sts; rep from * across.', { sizes: ['Narrow', 'Wide'] }).filter(({ kind }) => kind === 'sign')
    expect(signs.map(({ us }) => us)).toEqual(['6 (8)', '* … ;'])
    expect(signs[0]!.meaning).toBe('numbers for the sizes: Narrow first, in brackets Wide; one number is for all')
  })

  test('the name of a size is not parted from its number', () => {
    const [sign] = search('Sc in next 12 (14) sts.', { sizes: ['2 years', '4 years'] }).filter(({ kind }) => kind === 'sign')
    expect(sign!.meaning).toBe('numbers for the sizes: 2\u00a0years first, in brackets 4\u00a0years; one number is for all')
  })
})
