import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { ShortRows, type ShortRow } from '../support/short-rows.ts'
import { wrapRows } from '../support/wrap-rows.ts'
import { fenceAttributes } from '../support/fence-attributes.ts'
import { oneOf, whole, type Draw } from './random-rows.ts'

// The outside oracle keeps what is left on pins: `support/short-rows.ts` shares nothing with the engine.

function shortRows(draw: Draw): ShortRows {
  const piece = new ShortRows(whole(draw, 12, 40))
  const wanted = whole(draw, 3, 12)
  while (piece.rows.length < wanted) {
    const most = Math.min(6, piece.stitches - 4)
    const way = oneOf(draw, ['leave', 'leave', 'take', 'plain'])
    if (way === 'leave' && most > 0) piece.leave(whole(draw, 1, most))
    else piece.take(way === 'take' ? whole(draw, 0, piece.ahead.length) : 0)
  }
  // In the end all that waits is taken up again, side by side.
  for (let left = 0; left < 2; left += 1) piece.take(piece.ahead.length)
  return piece
}

const sts = (count: number): string => (count === 1 ? 'next st' : `next ${count} sts`)
const many = (count: number): string => (count === 1 ? 'st' : 'sts')

function words(draw: Draw, { number, over, leaves, takes }: ShortRow): string {
  if (number === 1) return `Foundation: Ch ${over + 1}.\nRow 1: Sc in 2nd ch from hook and in each ch across. (${over})`
  const parts = [leaves === 0 && takes.length === 0 && oneOf(draw, [true, false]) ? 'sc in each st across' : `sc in ${sts(over)}`]
  for (const { ofRow, stitches } of takes) {
    parts.push(oneOf(draw, [
      `sc in ${stitches} unworked ${many(stitches)} of Row ${ofRow}`,
      `sc in next ${stitches === 1 ? '' : `${stitches} `}unworked ${many(stitches)} of Row ${ofRow}`,
      ...(stitches === 1 ? [] : [`sc in each of ${stitches} unworked sts of Row ${ofRow}`, `sc in each of next ${stitches} unworked sts of Row ${ofRow}`]),
    ]))
  }
  if (leaves > 0) parts.push(oneOf(draw, [`leave rem ${many(leaves)} unworked`, leaves === 1 ? 'leave last st unworked' : `leave last ${leaves} sts unworked`]))
  return `Row ${number}: Ch 1, turn, ${parts.join(', ')}. (${made({ number, over, leaves, takes })})`
}

const made = ({ over, takes }: ShortRow): number => over + takes.reduce((sum, { stitches }) => sum + stitches, 0)

function findings(rows: string): string[] {
  return checkOnce(wrapRows(rows, fenceAttributes('turning=sc:not')).source).diagnostics
    .filter(({ code }) => code !== 'key-missing-to-publish' && code !== 'step-lopsided')
    .map(({ code, message }) => `${code} ${message}`)
}

describe('short rows', () => {
  test('come out when every row takes up what older rows left', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const text = shortRows(draw).rows.map((row) => words(draw, row)).join('\n')
      expect(findings(text), text).toEqual([])
    }), { numRuns: 200, seed: 4_7 })
  })

  test('are found when a row takes up one more or one fewer than wait, whether or not its total goes with it', () => {
    let planted = 0
    fc.assert(fc.property(fc.gen(), (draw) => {
      const { rows } = shortRows(draw)
      const candidates = rows.filter(({ takes }) => takes.length > 0)
      if (candidates.length === 0) return
      const row = oneOf(draw, candidates)
      const at = whole(draw, 0, row.takes.length - 1)
      const off = oneOf(draw, [-1, 1])
      const pin = row.takes[at]!
      if (pin.stitches + off === 0) return
      const slipped: ShortRow = { ...row, takes: row.takes.with(at, { ...pin, stitches: pin.stitches + off }) }
      const along = oneOf(draw, [true, false])
      const lines = rows.map((each) => {
        if (each !== row) return words(draw, each)
        return along ? words(draw, slipped) : words(draw, slipped).replace(/\(\d+\)$/, `(${made(row)})`)
      })
      expect(findings(lines.join('\n')), `${off} in row ${row.number}: ${lines.join('\n')}`).not.toEqual([])
      planted += 1
    }), { numRuns: 200, seed: 4_8 })
    expect(planted).toBeGreaterThan(120)
  })
})
