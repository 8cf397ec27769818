import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { balancedLines } from '../../src/print/type/balance.ts'
import { breakLines, type Line, type Span } from '../../src/print/type/break-lines.ts'
import { cleanText } from '../../src/print/type/clean-text.ts'
import { gluedAfter } from '../../src/print/type/glue.ts'
import { codePointsByGlyph } from '../../src/print/type/shape.ts'
import { setPieces } from '../../src/print/type/set-pieces.ts'

const plain = (text: string): readonly Span[] => [{ text, font: 'text' }]
const texts = (lines: readonly Line[]) => lines.map(({ runs }) => runs.map(({ text }) => text).join(''))
const broken = (text: string, width: number) => texts(breakLines(plain(text), { size: 10.5, width }))
/** The pairs of words that a line may not break between. */
const glue = (text: string) => {
  const words = text.split(' ')
  return [...gluedAfter(words)].map((at) => `${words[at]} ${words[at + 1]}`)
}

describe('glue (common practice, no source: a count and its word, a star and what it begins stay together)', () => {
  test.each([
    ['the work is 4 mm thick', ['4 mm']],
    ['sc in next 6 sts, turn', ['6 sts,']],
    ['1 (2, 3) balls of A', ['1 (2,', '(2, 3)', '3) balls']],
    ['repeat Row 5 once', ['Row 5']],
    ['Ch 1, turn', ['Ch 1,']],
    ['see Rounds 9–10 again', ['Rounds 9–10']],
    ['work 2 fpdc, 3 hdc2tog', ['2 fpdc,', '3 hdc2tog']],
    ['* sc in st', ['* sc']],
    ['dc; rep from * around.', ['rep from', 'from *', '* around.']],
    ['rep from * to end', ['rep from', 'from *', '* to', 'to end']],
    ['ending last rep at **, join', ['at **,']],
    ['6 × in all', ['6 ×']],
    ['about 3¾ in across', ['3¾ in']],
    ['plain words without any count', []],
  ])('%s', (text, expected) => {
    expect(glue(text)).toEqual(expected)
  })

  test('holds over a no-break space, which is a plain space in the file', () => {
    expect(broken('sc in next 6\u00a0sts', 21)).toEqual(['sc in next', '6 sts'])
  })
})

describe('lines', () => {
  test('are as long as the column allows, and no longer', () => {
    fc.assert(fc.property(fc.array(fc.stringMatching(/^[a-z]{1,9}[,.]?$/), { minLength: 1, maxLength: 40 }), fc.integer({ min: 40, max: 120 }), (words, width) => {
      const lines = breakLines(plain(words.join(' ')), { size: 10.5, width, hang: 4 })
      expect(texts(lines).join(' ')).toBe(words.join(' '))
      for (const line of lines) expect(line.width).toBeLessThanOrEqual(width + 0.01)
      // What stands first on a line would not have fitted on the line before.
      for (const [at, line] of lines.entries()) {
        const before = lines[at - 1]
        const first = texts([line])[0]?.split(' ')[0] ?? ''
        const [alone] = breakLines(plain(`n ${first}`), { size: 10.5, width: 500 })
        const [letter] = breakLines(plain('n'), { size: 10.5, width: 500 })
        if (before) expect(before.width + (alone?.width ?? 0) - (letter?.width ?? 0)).toBeGreaterThan(width - 0.3)
      }
    }))
  })

  test('lose no character of any text that can be seen', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), fc.integer({ min: 12, max: 80 }), (text, width) => {
      const lines = breakLines(plain(text), { size: 10.5, width })
      expect(texts(lines).join('').replaceAll(' ', '')).toBe(cleanText(text).replace(/[ \u00a0]/g, ''))
      for (const line of lines) expect(line.width).toBeLessThanOrEqual(width + 0.01)
    }))
  })

  test('hang by their indent after the first', () => {
    const lines = breakLines(plain('sc in each of the next stitches around the edge'), { size: 10.5, width: 30, hang: 4 })
    expect(lines.length).toBeGreaterThan(2)
    expect(lines.map(({ runs }) => runs[0]?.x)).toEqual([0, ...lines.slice(1).map(() => 4)])
  })

  test('never part a word but one that is wider than the column, and then without a hyphen', () => {
    expect(broken('a becket', 30)).toEqual(['a becket'])
    const pieces = broken(`a ${'hawser'.repeat(12)} b`, 40)
    expect(pieces.join('')).toBe(`a${'hawser'.repeat(12)}b`)
    expect(pieces.join('')).not.toContain('-')
  })

  test('of a subtitle are about as long as one another', () => {
    const lines = balancedLines(plain('A net float in two colours, worked in rounds, with a becket to hang it by'), { size: 15, width: 158 })
    expect(lines).toHaveLength(2)
    expect(Math.abs((lines[0]?.width ?? 0) - (lines[1]?.width ?? 0))).toBeLessThan(30)
  })

  test('keep their marks through a break', () => {
    const spans: readonly Span[] = [{ text: 'Ch 1. ', font: 'text' }, { text: '*Sc in next sts, dec in the next ones;', font: 'text', repeat: true }, { text: ' rep.', font: 'text' }]
    const runs = breakLines(spans, { size: 10.5, width: 40 }).flatMap((line) => line.runs)
    expect(runs.filter(({ repeat }) => repeat).map(({ text }) => text).join(' ')).toBe('*Sc in next sts, dec in the next ones;')
  })
})

describe('characters', () => {
  test('are taken from the neighbouring family when a font lacks them', () => {
    // Source Serif 4 has no ▸, Source Sans 3 has; Besley has no ⅓, Source Serif 4 has: seen with fontkit in the files.
    expect(setPieces('a▸b', 'text')).toEqual([
      { text: 'a', font: 'text', missing: false }, { text: '▸', font: 'count', missing: false }, { text: 'b', font: 'text', missing: false },
    ])
    expect(setPieces('⅓', 'head')).toEqual([{ text: '⅓', font: 'textStrong', missing: false }])
  })

  test('that no font has are boxes that keep their text, one for what is seen as one', () => {
    expect(setPieces('a🛟', 'text')).toEqual([{ text: 'a', font: 'text', missing: false }, { text: '🛟', font: 'text', missing: true }])
    expect(setPieces('🇳🇴', 'text')).toHaveLength(1)
  })

  test('are cleaned: no control characters, half pairs or invisible marks', () => {
    expect(cleanText('a\tb\r\nc\u0007d\u200be\u00adf\ud83dg')).toBe('a b cdef\ufffdg')
    fc.assert(fc.property(fc.string({ unit: 'binary' }), (text) => {
      expect(cleanText(text)).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u202a-\u202e\ufeff]/)
      expect(cleanText(text).isWellFormed()).toBe(true)
      expect(cleanText(cleanText(text))).toBe(cleanText(text))
    }))
  })

  test('of a glyph are read off the word, whatever the font remembers', () => {
    const codes = (text: string) => Array.from(text, (character) => character.codePointAt(0) ?? 0)
    expect(codePointsByGlyph([codes('s'), codes('t'), codes('u'), codes('ff')], 'stuff')).toEqual([codes('s'), codes('t'), codes('u'), codes('ff')])
    expect(codePointsByGlyph([codes('s'), [], codes('u'), codes('ff')], 'stuff')).toEqual([codes('s'), codes('t'), codes('u'), codes('ff')])
    expect(codePointsByGlyph([codes('o'), [], codes('e')], 'office')).toEqual([codes('o'), codes('ffic'), codes('e')])
    expect(codePointsByGlyph([codes('a')], 'b')).toEqual([codes('b')])
  })
})
