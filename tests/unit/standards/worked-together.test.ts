import { describe, expect, test } from 'vitest'
import { workRows } from '../../support/work-rows.ts'

// A stitch handbook (zanotowane.pl 719/2920): sc2tog uses 2 and makes 1, sc3tog uses 3 and makes 1. The legs of a cluster or a
// bobble stand in one place; dc3tog stands over three.

const legs = [2, 3, 4, 5]
const bases = ['sc', 'hdc', 'dc', 'tr', 'dtr']

describe('stitches worked together', () => {
  test.each(bases.flatMap((base) => legs.map((n) => [`${base}${n}tog`, n] as const)))('%s uses %i and makes 1', (word, n) => {
    const stitches = n + 6
    const { row, diagnostics } = workRows(`Row 1: Ch 1, turn, sc in next 3 sts, ${word}, sc in next 3 sts. (7)`, `last=${stitches}`)
    const { worksOver, makes, leaves, kinds } = row('Row 1')
    expect({ worksOver, makes, leaves, kinds }).toEqual({ worksOver: stitches, makes: 7, leaves: 0, kinds: { sc: 6, [word]: 1 } })
    expect(diagnostics).toEqual([])
  })

  test.each(legs)('%i legs: one fewer below and the row overruns', (n) => {
    const { row, diagnostics } = workRows(`Row 1: Ch 1, turn, sc in next 3 sts, dc${n}tog, sc in next 3 sts. (7)`, `last=${n + 5}`)
    expect(row('Row 1').verdict).toBe('does-not')
    expect(diagnostics.map(({ code }) => code)).toEqual(['row-overruns'])
  })

  test.each([2, 3, 4])('a %i-dc cluster in one stitch uses 1', (n) => {
    const { row, diagnostics } = workRows(`Row 1: Ch 1, turn, sc in next 3 sts, ${n}-dc cl in next st, sc in next 3 sts. (7)`, 'last=7')
    const { worksOver, makes } = row('Row 1')
    expect({ worksOver, makes }).toEqual({ worksOver: 7, makes: 7 })
    expect(diagnostics).toEqual([])
  })

  test('a cluster that is said to go over stitches uses so many', () => {
    const { row, diagnostics } = workRows('Row 1: Ch 1, turn, sc in next 3 sts, CL over next 9 sts, sc in next 3 sts. (7)', 'last=15 stitches="CL:1:1"')
    const { worksOver, makes } = row('Row 1')
    expect({ worksOver, makes }).toEqual({ worksOver: 15, makes: 7 })
    expect(diagnostics).toEqual([])
  })
})
