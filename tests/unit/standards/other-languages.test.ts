import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { lexicon } from '../../../src/fabric/lexicon.ts'
import { pieceWords } from '../../../src/notation/piece-words.ts'
import { readHandbookCase } from '../../handbook/read-handbook-case.ts'
import { readCases } from '../../support/read-cases.ts'

// Words as they stand in published lists: German code-knacker.de and kreativehaekelideen.de; Dutch and Danish the Crochet Terms
// Translation Chart (PDF); French cachalabibi.com; Spanish elrincondemaryjoe.blogspot.com; Italian ileamigurumi.it; Portuguese
// cursa.app; Swedish billigt-garn.net; Norwegian tokatter.blogspot.com. All stand against US stitches.
const lists: readonly (readonly [language: string, tells: string, words: Readonly<Record<string, string>>])[] = [
  ['German', '3 fM, wenden', { fM: 'sc', 'feste Masche': 'sc', hStb: 'hdc', 'halbes Stäbchen': 'hdc', Stb: 'dc', Stäbchen: 'dc', DStb: 'tr' }],
  ['Dutch', '3 vasten, 2 stk', { v: 'sc', vaste: 'sc', hstk: 'hdc', stk: 'dc', stokje: 'dc', dstk: 'tr' }],
  ['French', '3 ms, 1 aug', { ms: 'sc', 'maille serrée': 'sc', 'demi-br': 'hdc', br: 'dc', bride: 'dc', dbr: 'tr' }],
  ['Spanish', '3 pb, 1 dism', { pb: 'sc', 'punto bajo': 'sc', mpa: 'hdc', pma: 'hdc', pa: 'dc', 'punto alto': 'dc', pad: 'tr', pat: 'dtr' }],
  ['Italian', '3 mb, 1 aum, 2 mma', { mb: 'sc', 'maglia bassa': 'sc', mma: 'hdc', ma: 'dc', 'maglia alta': 'dc' }],
  ['Portuguese', '3 pb, 1 dim, 2 corr', { pb: 'sc', 'ponto baixo': 'sc', mpa: 'hdc', pa: 'dc', 'ponto alto': 'dc', pad: 'tr' }],
  ['Danish', '3 fm, 1 udt, 2 stm', { fm: 'sc', fastmaske: 'sc', hstm: 'hdc', hstgm: 'hdc', stm: 'dc', stangmaske: 'dc', dstgm: 'tr' }],
  ['Swedish', '3 fm i varje m', { fm: 'sc', 'fast maska': 'sc', stolpe: 'dc', dst: 'tr', dubbelstolpe: 'tr' }],
  ['Norwegian', '3 fm, 2 staver', { fm: 'sc', hst: 'hdc', halvstav: 'hdc', stav: 'dc', dst: 'tr', dobbeltstav: 'tr' }],
]
const english = lexicon('US', [], 1, [])

describe.each(lists)('%s', (_language, rows, words) => {
  test.each(Object.entries(words))('%s is US %s', (word, us) => {
    const parts = word.toLowerCase().replace('-', ' - ').split(' ')
    expect(pieceWords(rows, english).stitchAt(parts)).toEqual({ stitch: us, words: parts.length })
    expect(pieceWords(rows, lexicon('UK', [], 1, [])).stitchAt(parts)).toEqual({ stitch: us, words: parts.length })
  })
})

describe('English rows keep their meaning', () => {
  const handbook = readdirSync('tests/handbook').filter((file) => file.endsWith('.txt')).map((file) => [file, readHandbookCase(`tests/handbook/${file}`).rows] as const)
  const spec = readdirSync('tests/spec').flatMap((file) => readCases(readFileSync(`tests/spec/${file}`, 'utf8'), file))
    .flatMap((one) => (one.kind === 'fence' && !/^Form (258|259:|259 again|260)/.test(one.name) ? [[one.name, one.wrapped.source.text.split('rows: |')[1] ?? ''] as const] : []))

  test.each([...handbook, ...spec])('%s', (_name, rows) => {
    const { phrases, letters = false, stitchAt } = pieceWords(rows, english)
    expect({ phrases, letters }).toEqual({ phrases: undefined, letters: false })
    expect(stitchAt).toBe(english.stitchAt)
  })
})
