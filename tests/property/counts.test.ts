import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { workRows } from '../support/work-rows.ts'
import { fenceOf, lineOf, pieceOf, type RandomPiece } from './random-pieces.ts'
import { oneOf, type Draw } from './random-rows.ts'

// The outside oracle is a finger on the fabric: `support/naive-counter.ts` walks the places one at a time and shares nothing
// with the engine.

/** The rows of a piece in words; every call may choose others. */
function linesOf(draw: Draw, { flat, palette, rows }: RandomPiece): string[] {
  const joined = !flat && oneOf(draw, [true, false])
  return rows.map((row) => lineOf(row, { draw, plain: false, flat, onlySc: palette.length === 1 }, joined))
}

const shown = (counts: Readonly<Record<string, number>>): string[] =>
  Object.entries(counts).filter(([, count]) => count > 0).map(([kind, count]) => `${count} ${kind}`).sort()

describe('a row that comes out', () => {
  test('is counted as a finger counts it, in whatever words it is written', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = pieceOf(draw, 5, 15)
      for (let wording = 0; wording < 2; wording += 1) {
        const text = linesOf(draw, piece).join('\n')
        const worked = workRows(text, fenceOf(piece))
        // Rows that leave 6 and 7 by chance look like a pair, and are told as one: that is no count.
        const found = worked.diagnostics.filter(({ code }) => code !== 'step-lopsided')
        expect(found.map(({ code, line, message }) => `${code} ${line} ${message}`), text).toEqual([])
        const got = piece.rows.map(({ label }) => {
          const { offers, worksOver, leaves, makes, kinds, spaces, verdict } = worked.row(label)
          return { label, offers, worksOver, leaves, makes, kinds: shown(kinds), spaces: shown(spaces), verdict }
        })
        const wanted = piece.rows.map(({ label, count: { offers, worksOver, leaves, makes, kinds, spaces } }) =>
          ({ label, offers, worksOver, leaves, makes, kinds: shown(kinds), spaces: shown(spaces), verdict: 'adds-up' }))
        expect(got, text).toEqual(wanted)
      }
    }), { numRuns: 150 })
  })

  test('[A] n times makes n times what A makes', () => {
    fc.assert(fc.property(fc.gen(), fc.integer({ min: 2, max: 9 }), (draw, times) => {
      const inc = oneOf(draw, [0, 1, 2])
      const dec = oneOf(draw, [0, 1, 2])
      const plain = oneOf(draw, [1, 2, 5])
      const over = plain + inc + 2 * dec
      const makes = plain + 2 * inc + dec
      const unit = [`sc in next ${plain} sts`, ...Array<string>(inc).fill('2 sc in next st'), ...Array<string>(dec).fill('sc2tog')].join(', ')
      const one = workRows(`Row 1: Ch 1, turn, ${unit}. (${makes})`, `last=${over}`).row('Row 1')
      const all = workRows(`Row 1: Ch 1, turn, [${unit}] ${times} times. (${makes * times})`, `last=${over * times}`).row('Row 1')
      expect([all.worksOver, all.makes, all.verdict]).toEqual([one.worksOver * times, one.makes * times, 'adds-up'])
    }), { numRuns: 60 })
  })

  test('a row of plain stitches makes what it works over', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 500 }), fc.constantFrom('sc', 'hdc', 'esc', 'FPdc around'), (stitches, stitch) => {
      const into = stitch.endsWith('around') ? `${stitch} each st across` : `${stitch} in each st across`
      const row = workRows(`Row 1: Ch 1, turn, ${into}. (${stitches})`, `last=${stitches}`).row('Row 1')
      expect([row.worksOver, row.makes, row.leaves, row.verdict]).toEqual([stitches, stitches, 0, 'adds-up'])
    }), { numRuns: 60 })
  })

  test('every size is worked with its own numbers', () => {
    const size = fc.record({ plain: fc.integer({ min: 1, max: 9 }), passes: fc.integer({ min: 2, max: 8 }), tail: fc.integer({ min: 1, max: 6 }) })
    fc.assert(fc.property(fc.array(size, { minLength: 2, maxLength: 6 }), fc.constantFrom('brackets', 'hyphens', 'slashes'), fc.constantFrom(2, 3), (sizes, dress, of) => {
      const names = sizes.map((_, index) => `size${index + 1}`)
      const list = (values: readonly number[]): string => {
        const [first, ...rest] = values
        if (dress === 'slashes') return values.join('/')
        return `${first} (${rest.join(dress === 'brackets' ? ', ' : '-')})`
      }
      const over = sizes.map(({ plain, passes, tail }) => (plain + 1) * passes + tail)
      const makes = sizes.map(({ plain, passes, tail }) => (plain + of) * passes + tail)
      const text = [
        `Ch ${list(over.map((stitches) => stitches + 1))}.`,
        `Row 1: Sc in 2nd ch from hook and in each ch across. (${list(over)} sc)`,
        `Row 2: Ch 1, turn, [sc in next ${list(sizes.map(({ plain }) => plain))} sts, ${of} sc in next st] ${list(sizes.map(({ passes }) => passes))} times, ` +
          `sc in last ${list(sizes.map(({ tail }) => tail))} sts. (${list(makes)} sc)`,
      ].join('\n')
      const worked = workRows(text, `sizes=${names.join(',')}`)
      expect(worked.diagnostics.filter(({ severity }) => severity === 'error').map(({ message }) => message), text).toEqual([])
      const got = names.map((name) => {
        const { offers, worksOver, makes: made, verdict } = worked.row('Row 2', name)
        return { name, offers, worksOver, made, verdict }
      })
      expect(got, text).toEqual(names.map((name, index) => ({ name, offers: over[index], worksOver: over[index], made: makes[index], verdict: 'adds-up' })))
    }), { numRuns: 80 })
  })
})
