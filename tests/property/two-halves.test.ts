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

describe('two stepped halves', () => {
  test('meet when the second is the mirror image of the first', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = mirrorable(draw, 2, 8)
      const [first, second] = [border(piece.lines, false), border(mirrored(piece.lines), true)]
      const text = pattern(piece.rows, borderWords(first, sum(first)), secondHalf(draw, piece), borderWords(second, sum(second)))
      expect(findings(text), text).toEqual([])
    }), { numRuns: 120, seed: 4_9 })
  })

  test('do not meet when one border has a stitch more, however right its own total is', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const piece = mirrorable(draw, 2, 8)
      const [first, second] = [border(piece.lines, false), border(mirrored(piece.lines), true)]
      const top = second.sections[0]!.count
      const right = borderWords(second, sum(second) + 1)
      const changed = right.replace(`sc in next ${top} sts`, `2 sc in next st, sc in next ${top - 1} sts`)
      expect(changed).not.toBe(right)
      const text = pattern(piece.rows, borderWords(first, sum(first)), secondHalf(draw, piece), changed)
      expect(findings(text), text).toContain('seam-mismatch')
    }), { numRuns: 120, seed: 4_10 })
  })
})
