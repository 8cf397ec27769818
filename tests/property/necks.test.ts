import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { pencilLine, sectionsOf, type Line } from '../support/squared-paper.ts'
import { oneOf, whole, type Draw } from './random-rows.ts'
import { borderWords, patternOf, type Border, type SteppedPiece } from './random-steps.ts'

// A piece divided at the neck: two shoulders stand side by side on one row, the second joined anew. A pencil on squared paper draws
// round them; it shares nothing with the engine.

function neckPiece(draw: Draw): SteppedPiece {
  const [first, neck, second] = [whole(draw, 3, 12), whole(draw, 2, 14), whole(draw, 3, 12)]
  const width = first + neck + second
  const height = whole(draw, 1, 6)
  const lines: Line[] = Array.from({ length: height }, (_, level) => ({ from: 0, to: width, toRight: level % 2 === 0, level }))
  const rows = [`Foundation: Ch ${width + 1}.`, `Row 1: Sc in 2nd ch from hook and in each ch across. (${width})`]
  for (let row = 2; row <= height; row += 1) rows.push(`Row ${row}: Ch 1, turn, sc in each st across. (${width})`)
  // The first shoulder begins where the last whole row ended, the second beyond the neck.
  const fromRight = height % 2 === 1
  const shoulders = [
    { wide: first, from: fromRight ? width - first : 0 },
    { wide: second, from: fromRight ? 0 : width - second },
  ]
  for (const [index, { wide, from }] of shoulders.entries()) {
    const high = whole(draw, 1, 5)
    for (let step = 0; step < high; step += 1) {
      lines.push({ from, to: from + wide, toRight: fromRight === (step % 2 === 1), level: height + step })
      const number = lines.length
      if (step > 0) rows.push(`Row ${number}: Ch 1, turn, sc in ${oneOf(draw, ['each st across', `next ${wide} sts`])}. (${wide})`)
      else if (index === 0) rows.push(`Row ${number}: Ch 1, turn, sc in next ${wide} sts, ${oneOf(draw, ['leave rem sts unworked', `leave rem ${neck + second} sts unworked`])}. (${wide})`)
      else {
        const skip = oneOf(draw, [`skip next ${neck} unworked sts of Row ${height}`, `sk next ${neck} unworked sts of Row ${height}`])
        rows.push(`Row ${number}: ${skip[0]!.toUpperCase()}${skip.slice(1)}, join yarn in next st, ch 1, sc in same st, sc in next ${wide - 1} sts. (${wide})`)
      }
    }
    if (index === 0) rows.push(rows.pop()!.replace(/ \((\d+)\)$/, ' Fasten off. ($1)'))
  }
  return { lines, rows, slips: 'not counted', worked: { stitch: 'sc', chainCounts: false } }
}

const sum = ({ sections }: Border): number => sections.reduce((all, { count }) => all + count, 0)

const borderOf = (draw: Draw, { lines }: SteppedPiece): Border => {
  const turned = oneOf(draw, [true, false])
  return { turned, sections: sectionsOf(pencilLine(lines, turned)) }
}

const findings = (text: string): string[] => checkOnce({ path: 'neck.md', text }).diagnostics
  .filter(({ code }) => code !== 'key-missing-to-publish' && code !== 'step-lopsided')
  .map(({ code, message }) => `${code} ${message}`)

describe('a border round a neck', () => {
  test('comes out when it works the edges that a pencil finds', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = neckPiece(draw)
      const border = borderOf(draw, piece)
      const text = patternOf(piece, borderWords(border, sum(border)))
      expect(findings(text), text).toEqual([])
    }), { numRuns: 120, seed: 4_22 })
  })

  test('is found when one of its numbers is one off, whether or not the total goes with it', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = neckPiece(draw)
      const border = borderOf(draw, piece)
      const at = whole(draw, 0, border.sections.length - 1)
      const section = border.sections[at]!
      const off = section.count === 1 ? 1 : oneOf(draw, [-1, 1])
      const slipped = { ...border, sections: border.sections.with(at, { ...section, count: section.count + off }) }
      const along = section.side !== 'row-end' && oneOf(draw, [true, false])
      const text = patternOf(piece, borderWords(slipped, along ? sum(slipped) : sum(border)))
      expect(findings(text), `${off} in part ${at + 1}: ${text}`).not.toEqual([])
    }), { numRuns: 120, seed: 4_23 })
  })
})
