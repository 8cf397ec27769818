import { describe, expect, test } from 'vitest'
import { capital, figure, perSize, sentence } from '../../../src/booklet/figures.ts'
import { typeset } from '../../../src/booklet/typeset.ts'

// Signs and places where lines must not break are common typographic practice for English books, no source; written by hand.
// `~` stands for the no-break space.
const shown = (text: string) => typeset(text).replaceAll('\u00a0', '~')

describe('signs of print', () => {
  test.each([
    ['(sc, inc) x 6', '(sc, inc)~×~6'],
    ['(sc, inc) x6', '(sc, inc)~×6'],
    ['2x (sc, inc)', '2×~(sc, inc)'],
    ['30 x 40 cm', '30~×~40~cm'],
    ['Rows 5-12', 'Rows~5–12'],
    ['since 2026-11-02', 'since 2026-11-02'],
    ['shaped 2-1-5', 'shaped 2-1-5'],
    ['in next ch-2 sp', 'in next ch-2~sp'],
    ['a 5-dc shell', 'a 5-dc shell'],
    ['at -6', 'at −6'],
    ["the designer's \"own\" word", 'the designer’s “own” word'],
    ['4" wide', '4″ wide'],
  ])('%s', (typed, printed) => {
    expect(shown(typed)).toBe(printed)
  })

  test('the letter x of a letter code is a stitch, not a times sign', () => {
    expect(shown('x, v, x')).toBe('x, v, x')
    expect(shown('fox 6')).toBe('fox 6')
  })
})

describe('places where no line breaks', () => {
  test.each([
    ['sc in next 6 sts', 'sc in next~6~sts'],
    ['ch 1, turn', 'ch~1, turn'],
    ['with a 4 mm hook', 'with a 4~mm hook'],
    ['*sc in next st; rep from * around', '*sc in next st; rep~from~*~around'],
    ['rep from * 5 more times', 'rep~from~*~5~more~times'],
    ['12 (14, 16) sts', '12~(14,~16)~sts'],
    ['With A, ch 25', 'With~A, ch~25'],
    ['see Row 5', 'see Row~5'],
    ['* sc in next st', '*~sc in next st'],
  ])('%s', (typed, printed) => {
    expect(shown(typed)).toBe(printed)
  })

  test('no character is added or taken away, so that places in the text stay true', () => {
    const row = 'With A, *sc in next 12 (14, 16) sts, "x" 2x (sc, inc) x 6; rep from * 5 more times, turn - 4 mm'
    expect(typeset(row)).toHaveLength(row.length)
  })
})

describe('figures', () => {
  test.each([[816, '816'], [1046.4, '1,046.4'], [6252, '6,252'], [-6, '−6'], [0.5, '0.5'], [9.999, '10']])('%s', (value, text) => {
    expect(figure(value)).toBe(text)
  })

  test('sizes stand smallest first, the others in brackets; one figure when all agree', () => {
    expect(perSize(['48', '64', '80'])).toBe('48\u00a0(64,\u00a080)')
    expect(perSize(['6', '6', '6'])).toBe('6')
    expect(perSize(['6'])).toBe('6')
  })
})

describe('sentences', () => {
  test('a capital comes after opening signs', () => {
    expect(capital('*sc in next st')).toBe('*Sc in next st')
    expect(capital('[hdc, ch 1]')).toBe('[Hdc, ch 1]')
    expect(capital('6 sc in ring')).toBe('6 sc in ring')
  })

  test('one full stop at the end', () => {
    expect(sentence('fasten off')).toBe('Fasten off.')
    expect(sentence('Fasten off.')).toBe('Fasten off.')
    expect(sentence('turn;')).toBe('Turn.')
    expect(sentence(' ')).toBe('')
  })
})
