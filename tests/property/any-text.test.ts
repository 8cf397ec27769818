import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkPattern } from '../../src/pattern/check-pattern.ts'
import { workRows } from '../support/work-rows.ts'

/** Words, signs and numbers that rows are made of, in no order at all. */
const pieces = ['sc', 'hdc', 'dc2tog', 'sc2tog', 'inc', 'dec', 'ch', 'sl st', 'sk', 'skip', 'next', 'each', 'last', 'first', 'same', 'st', 'sts', 'sp', 'ch-2 sp',
  'in', 'into', 'around', 'across', 'to', 'end', 'rep', 'from', '*', '**', '(', ')', '[', ']', '{', '}', '†', ';', ',', '.', ':', 'x', 'times', 'more', 'twice',
  'turn', 'join', 'ring', 'magic ring', 'BLO', 'counts as dc', 'Row', 'Rnd', 'Rows', 'Repeat', 'as for', 'evenly', 'leave', 'unworked', 'corner', '0', '1', '2',
  '7', '12', '999999999', '-3', '½', '4 (5, 6)', 'A', 'B', '|', '=', '+6', '—', '\t', '\n', '\nRow 3: ', '\nRnd 4: ', ' ']

/** Every place that is spoken of lies in the text, and begins before it ends. */
function expectPlacesInside(checked: ReturnType<typeof checkPattern>): void {
  const { text } = checked.source
  const spans = [
    ...checked.diagnostics.flatMap(({ primary, secondary, hint }) => [primary.span, ...secondary.map(({ span }) => span), ...(hint?.edit ? [hint.edit.span] : [])]),
    ...checked.pieces.flatMap(({ rows }) => rows.flatMap((row) => [row.written.span, row.written.label, row.written.text, ...row.tally.map(({ span }) => span), ...(row.says ? [row.says.span] : [])])),
  ]
  for (const { start, end } of spans) {
    expect(start).toBeGreaterThanOrEqual(0)
    expect(end).toBeLessThanOrEqual(text.length)
    expect(start).toBeLessThanOrEqual(end)
  }
}

const inASecond = (work: () => void): number => {
  const begun = performance.now()
  work()
  return performance.now() - begun
}

describe('any text at all', () => {
  test('any file comes back with an answer, and with places that lie in it', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 400 }), fc.string({ unit: 'grapheme', maxLength: 400 })), (text) => {
      expectPlacesInside(checkPattern({ path: 'any.md', text }))
      expectPlacesInside(checkPattern({ path: 'any.md', text: `---\n${text}\n---\n` }))
    }), { numRuns: 200 })
  })

  test('any characters as rows', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
      const line = text.replace(/[\n\r\u2028\u2029\u0085]/g, ' ').trim()
      expectPlacesInside(workRows(`Row 1: ${line}`, 'last=20').checked)
    }), { numRuns: 300 })
  })

  test('words of the trade in no order', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 60 }), fc.constantFrom('last=20', 'lastround=24', 'last=20 sizes=S,M,L', 'terms=UK'), (words, below) => {
      const text = words.join(' ').replace(/[\t ]*\n[\t ]*/g, '\n').trim()
      expectPlacesInside(workRows(`Row 1: ${text}`, below).checked)
    }), { numRuns: 600 })
  })

  test('brackets two hundred deep are answered at once', () => {
    for (const [open, close] of [['(', ')'], ['[', ']'], ['*(', ')'], ['{[(', ')]}']] as const) {
      const deep = `${open.repeat(200)}sc in next st${`${close} twice`.repeat(200)}`
      const took = inASecond(() => {
        const worked = workRows(`Row 1: Ch 1, turn, ${deep}. (20)`, 'last=20')
        expectPlacesInside(worked.checked)
        expect(worked.diagnostics.filter(({ severity }) => severity === 'error')).not.toEqual([])
        expect(worked.row('Row 1').verdict).not.toBe('adds-up')
      })
      expect(took).toBeLessThan(2000)
    }
  })

  test('brackets that never close', () => {
    const worked = workRows(`Row 1: ${'(sc, '.repeat(400)}sc. (20)`, 'last=20')
    expectPlacesInside(worked.checked)
    expect(worked.row('Row 1').verdict).not.toBe('adds-up')
  })

  test('a row of two hundred thousand characters', () => {
    const steps = 12_500
    const took = inASecond(() => {
      const worked = workRows(`Row 1: Ch 1, turn${', sc in next st'.repeat(steps)}. (${steps})`, `last=${steps}`)
      expect(worked.row('Row 1').makes).toBe(steps)
      expect(worked.row('Row 1').verdict).toBe('adds-up')
    })
    expect(took).toBeLessThan(5000)
  })

  test('a chain of a billion is said to be too large, at once', () => {
    for (const rows of [
      'Ch 1000000000.\nRow 1: Sc in 2nd ch from hook and in each ch across. (999999999)',
      'Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10)\nRows 2-1000000000: Ch 1, turn, sc in each st across. (10)',
      'Rnd 1: 6 sc in magic ring. (6)\nRnd 2: [2 sc in each st around] 1000000000 times. (12)',
      'Rnd 1: 1000000000 sc in magic ring. (1000000000)',
      'Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10)\nRow 2: Ch 1, turn, [[[sc] 99999 times] 99999 times] 99999 times. (10)',
    ]) {
      const took = inASecond(() => {
        const { checked, diagnostics } = workRows(rows)
        expectPlacesInside(checked)
        expect(diagnostics.filter(({ severity }) => severity === 'error'), rows).not.toEqual([])
      })
      expect(took, rows).toBeLessThan(5000)
    }
  })
})

describe('cost', () => {
  test('twice the rows take about twice the time', () => {
    const rowsOf = (count: number): string =>
      Array.from({ length: count }, (_, index) => `Row ${index + 1}: Ch 1, turn, [sc in next 3 sts, 2 sc in next st, sc2tog, sc in next 4 sts] 10 times. (100)`).join('\n')
    const time = (count: number): number => {
      const text = rowsOf(count)
      const runs = [1, 2, 3].map(() => inASecond(() => expect(workRows(text, 'last=100').rows().length).toBeGreaterThanOrEqual(count)))
      return Math.min(...runs)
    }
    time(50)
    const small = time(100)
    const large = time(400)
    // Four times the rows: linear is 4, quadratic 16. Half-way leaves room for a busy machine.
    expect(large / Math.max(small, 1)).toBeLessThan(9)
  })
})
