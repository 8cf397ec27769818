import { describe, expect, test } from 'vitest'
import { workRows } from '../../support/work-rows.ts'

// Common practice, no source: the chain that is skipped before a first hdc in the 2nd chain, and a ch-1 turning chain under hdc,
// are no stitches; hdc2tog is one stitch.

describe('half doubles', () => {
  test('the chain skipped before the first hdc is no stitch', () => {
    const { row, diagnostics } = workRows('Ch 41.\nRow 1: Hdc in 2nd ch from hook and in each ch across. (40)')
    expect([row('Row 1').makes, diagnostics]).toEqual([40, []])
  })

  test('a ch-1 turning chain is no stitch: the first hdc goes into the first stitch', () => {
    const { row, diagnostics } = workRows('Row 1: Ch 1, turn, hdc in each st across. (40)', 'last=40')
    const { worksOver, makes, kinds } = row('Row 1')
    expect({ worksOver, makes, kinds }).toEqual({ worksOver: 40, makes: 40, kinds: { hdc: 40 } })
    expect(diagnostics).toEqual([])
  })

  test('a row of them says one more: that is an error', () => {
    expect(workRows('Row 1: Ch 1, turn, hdc in each st across. (41)', 'last=40').diagnostics.map(({ code }) => code)).toEqual(['total-mismatch'])
  })

  test('hdc2tog is one stitch over two', () => {
    const { row, diagnostics } = workRows('Row 1: Ch 1, turn, hdc2tog, hdc in each st to last 2 sts, hdc2tog. (38)', 'last=40')
    const { worksOver, makes, kinds } = row('Row 1')
    expect({ worksOver, makes, kinds }).toEqual({ worksOver: 40, makes: 38, kinds: { hdc: 36, hdc2tog: 2 } })
    expect(diagnostics).toEqual([])
  })

  test('and it is worked into as one', () => {
    const rows = 'Row 1: Ch 1, turn, [hdc2tog] 10 times. (10)\nRow 2: Ch 1, turn, hdc in each st across. (10)'
    const { row, diagnostics } = workRows(rows, 'last=20')
    expect([row('Row 2').offers, row('Row 2').makes, diagnostics]).toEqual([10, 10, []])
  })
})
