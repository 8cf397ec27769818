import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { mirrored, pencilLine, sectionsOf, type Line } from '../support/squared-paper.ts'
import { oneOf, type Draw } from './random-rows.ts'
import { borderWords, mirrorable, type Border, type SteppedPiece } from './random-steps.ts'

// Two halves with borders worked in opposite directions, sewn with their wrong sides together: the one lies flipped on the other, so
// the second must be the mirror image of the first. What each border works is drawn by a pencil on squared paper.

const sum = ({ sections }: Border): number => sections.reduce((all, { count }) => all + count, 0)
const border = (lines: readonly Line[], turned: boolean): Border => ({ turned, sections: sectionsOf(pencilLine(lines, turned)) })
const block = (lines: readonly string[]): string => lines.map((line) => `      ${line}`).join('\n')

const pattern = (front: readonly string[], frontBorder: string, back: readonly string[], backBorder: string): string => `---
title: Two halves
terms: US
conventions: { turning-chains: { sc: not counted }, slip-stitches: not counted }
pieces:
  - name: Front
    rows: |
${block(front)}
  - name: Front border
    on: Front
    rows: |
${block([frontBorder])}
  - name: Back
    rows: |
${block(back)}
  - name: Back border
    on: Back
    rows: |
${block([backBorder])}
seams:
  - { join: [Front border, Back border], by: whip stitch, wrong-sides: together }
---
`

const findings = (text: string): string[] => checkOnce({ path: 'halves.md', text }).diagnostics
  .filter(({ code }) => code !== 'key-missing-to-publish' && code !== 'step-lopsided')
  .map(({ code }) => code)

/** The second half: its rows written out, or told from the first. */
function secondHalf(draw: Draw, { rows, mirroredRows }: SteppedPiece & { readonly mirroredRows: readonly string[] }): readonly string[] {
  return oneOf(draw, [mirroredRows, [`Rows 1-${rows.length - 1}: As for Front, reversing shaping.`]])
}

/** Stitches left free on the left and on the right of a line by the one on it. */
const stepsOf = (below: Line, line: Line): readonly [number, number] => [line.from - below.from, below.to - line.to]

/** The same piece from a line upwards one square farther to the left. */
const shifted = (lines: readonly Line[], at: number): readonly Line[] => lines.map((line, row) => (row < at ? line : { ...line, from: line.from - 1, to: line.to - 1 }))

/** Plain words for lines that only step in. */
function rowsOf(lines: readonly Line[]): readonly string[] {
  const width = lines[0]!.to - lines[0]!.from
  return [`Foundation: Ch ${width + 1}.`, ...lines.map((line, row) => {
    if (row === 0) return `Row 1: Sc in 2nd ch from hook and in each ch across. (${width})`
    const [left, right] = stepsOf(lines[row - 1]!, line)
    const [start, end] = line.toRight ? [left, right] : [right, left]
    const over = line.to - line.from
    return `Row ${row + 1}: Turn, ${start === 0 ? '' : `sl st in first ${start === 1 ? 'st' : `${start} sts`}, `}ch 1, sc in next ${over} sts${end === 0 ? '' : `, leave rem ${end === 1 ? 'st' : `${end} sts`} unworked`}. (${over})`
  })]
}

describe('two stepped halves', () => {
  test('meet when the second is the mirror image of the first', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = mirrorable(draw, 2, 8)
      const [first, second] = [border(piece.lines, false), border(mirrored(piece.lines), true)]
      const text = pattern(piece.rows, borderWords(first, sum(first)), secondHalf(draw, piece), borderWords(second, sum(second)))
      expect(findings(text), text).toEqual([])
    }), { numRuns: 120, seed: 4_9 })
  })

  test('do not meet when one border has a stitch more or fewer, however right its own total is', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = mirrorable(draw, 2, 8)
      const [first, second] = [border(piece.lines, false), border(mirrored(piece.lines), true)]
      const top = second.sections[0]!.count
      const more = oneOf(draw, [true, false])
      const right = borderWords(second, sum(second) + (more ? 1 : -1))
      const changed = right.replace(`sc in next ${top} sts`, more ? `2 sc in next st, sc in next ${top - 1} sts` : `sc2tog, sc in next ${top - 2} ${top === 3 ? 'st' : 'sts'}`)
      expect(changed).not.toBe(right)
      const text = pattern(piece.rows, borderWords(first, sum(first)), secondHalf(draw, piece), changed)
      expect(findings(text), text).toContain('seam-mismatch')
    }), { numRuns: 120, seed: 4_10 })
  })

  test('do not meet when a step of one lies a stitch farther in and its fellow a stitch farther out', () => {
    let planted = 0
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = mirrorable(draw, 3, 8)
      const at = piece.lines.findIndex((line, row) => row > 0 && stepsOf(piece.lines[row - 1]!, line).every((step) => step > 0))
      if (at < 0) return
      const other = shifted(piece.lines, at)
      const outline = (lines: readonly Line[]): string => sectionsOf(pencilLine(lines, false)).map(({ side, count }) => `${count} ${side}`).join()
      if ([piece.lines, mirrored(piece.lines)].some((lines) => outline(lines) === outline(other))) return
      const [first, second] = [border(piece.lines, false), border(other, true)]
      expect(sum(second)).toBe(sum(first))
      const text = pattern(piece.rows, borderWords(first, sum(first)), rowsOf(other), borderWords(second, sum(second)))
      expect(findings(text), text).toEqual(['seam-mismatch'])
      planted += 1
    }), { numRuns: 200, seed: 4_19 })
    expect(planted).toBeGreaterThan(40)
  })
})
