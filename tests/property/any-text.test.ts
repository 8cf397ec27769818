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

/** Milliseconds of work, not of waiting: the machine may be busy with other things. */
const milliseconds = (work: () => void): number => {
  const begun = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(begun)
  return (user + system) / 1000
}

describe('any text at all', () => {
  test('any file comes back with an answer, and with places that lie in it', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ unit: 'binary', maxLength: 400 }), fc.string({ unit: 'grapheme', maxLength: 400 })), (text) => {
      expectPlacesInside(checkPattern({ path: 'any.md', text }))
      expectPlacesInside(checkPattern({ path: 'any.md', text: `---\n${text}\n---\n` }))
    }), { numRuns: 130 })
  })

  test('any characters as rows', () => {
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
      const line = text.replace(/[\n\r\u2028\u2029\u0085]/g, ' ').trim()
      expectPlacesInside(workRows(`Row 1: ${line}`, 'last=20').checked)
    }), { numRuns: 200 })
  })

  test('words of the trade in no order', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 60 }), fc.constantFrom('last=20', 'lastround=24', 'last=20 sizes=S,M,L', 'terms=UK'), (words, below) => {
      const text = words.join(' ').replace(/[\t ]*\n[\t ]*/g, '\n').trim()
      expectPlacesInside(workRows(`Row 1: ${text}`, below).checked)
    }), { numRuns: 400, examples: [[['sc', 'to', '2', 'Row'], 'last=20']] })
  })

  // From shallow to deep, so that a cost that doubles with every level is seen before it takes for ever.
  test.each([['(', ')'], ['[', ']'], ['*(', ')'], ['{[(', ')]}']])('brackets two hundred deep are answered at once: %s', (open, close) => {
    for (const depth of [6, 9, 11, 12, 30, 200]) {
      const deep = `${open.repeat(depth)}sc in next st${`${close} twice`.repeat(depth)}`
      const took = milliseconds(() => {
        const worked = workRows(`Row 1: Ch 1, turn, ${deep}. (20)`, 'last=20')
        expectPlacesInside(worked.checked)
        expect(worked.diagnostics.filter(({ code, severity }) => severity === 'error' || code === 'row-not-checked')).not.toEqual([])
        // A row that would be too large for the fabric is not among the worked ones.
        expect(worked.rows().filter(({ label, verdict }) => label === 'Row 1' && verdict === 'adds-up')).toEqual([])
      })
      expect(took, `${depth} deep`).toBeLessThan(5000)
    }
  })

  test('brackets that never close', () => {
    const worked = workRows(`Row 1: ${'(sc, '.repeat(400)}sc. (20)`, 'last=20')
    expectPlacesInside(worked.checked)
    expect(worked.row('Row 1').verdict).not.toBe('adds-up')
  })

  test('a row of two hundred thousand characters', () => {
    const steps = 12_500
    const took = milliseconds(() => {
      const worked = workRows(`Row 1: Ch 1, turn${', sc in next st'.repeat(steps)}. (${steps})`, `last=${steps}`)
      expect(worked.row('Row 1').makes).toBe(steps)
      expect(worked.row('Row 1').verdict).toBe('adds-up')
    })
    expect(took).toBeLessThan(10_000)
  })

  test.each([
    ['a chain', (n: number) => `Ch ${n}.\nRow 1: Sc in 2nd ch from hook and in each ch across. (${n - 1})`],
    ['a ring', (n: number) => `Rnd 1: ${n} sc in magic ring. (${n})`],
    ['a range', (n: number) => `Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10)\nRows 2-${n}: Ch 1, turn, sc in each st across. (10)`],
    ['a bracket that finds nothing the second time', (n: number) => `Rnd 1: 6 sc in magic ring. (6)\nRnd 2: [2 sc in each st around] ${n} times. (12)`],
    ['brackets in brackets', (n: number) => `Ch 11.\nRow 1: Sc in 2nd ch from hook and in each ch across. (10)\nRow 2: Ch 1, turn, [[sc] ${n} times] ${n} times. (10)`],
  ])('%s of a billion is refused, at once', (_, rowsOf) => {
    for (const number of [3_000_000, 1_000_000_000]) {
      const took = milliseconds(() => {
        const { checked, diagnostics } = workRows(rowsOf(number))
        expectPlacesInside(checked)
        expect(diagnostics.filter(({ code, severity }) => severity === 'error' || code === 'row-not-checked')).not.toEqual([])
      })
      expect(took, `${number}`).toBeLessThan(10_000)
    }
  })
})

describe('cost', () => {
  // Sixteen times as much: linear is 16, quadratic 256. Half-way leaves room for a busy machine and for the collector of garbage.
  const stepUp = (work: (size: number) => void, size: number): number => {
    const best = (of: number): number => Math.min(...[1, 2, 3].map(() => milliseconds(() => work(of))))
    best(Math.ceil(size / 2))
    return best(size * 16) / Math.max(best(size), 1)
  }

  test('sixteen times the rows take about sixteen times as long', () => {
    const work = (count: number): void => {
      const rows = Array.from({ length: count }, (_, index) => `Row ${index + 1}: Ch 1, turn, [sc in next 3 sts, 2 sc in next st, sc2tog, sc in next 4 sts] 10 times. (100)`)
      expect(workRows(rows.join('\n'), 'last=100').row(`Row ${count}`).makes).toBe(100)
    }
    expect(stepUp(work, 50)).toBeLessThan(64)
  })

  test('a row sixteen times as wide takes about sixteen times as long', () => {
    const work = (passes: number): void => {
      const text = 'Row 1: Ch 1, turn, *sc in next 3 sts, 2 sc in next st, sc2tog, sc in next 4 sts; rep from * across.'
      expect(workRows(`${text} (${passes * 10})`, `last=${passes * 10}`).row('Row 1').makes).toBe(passes * 10)
    }
    expect(stepUp(work, 250)).toBeLessThan(64)
  })

  test('a row sixteen times as long takes about sixteen times as long', () => {
    const work = (steps: number): void => {
      expect(workRows(`Row 1: Ch 1, turn${', sc in next st'.repeat(steps)}. (${steps})`, `last=${steps}`).row('Row 1').makes).toBe(steps)
    }
    expect(stepUp(work, 500)).toBeLessThan(64)
  })
})
