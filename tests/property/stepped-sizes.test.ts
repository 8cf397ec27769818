import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { pencilLine, sectionsOf, type Line } from '../support/squared-paper.ts'
import { oneOf, whole, type Draw } from './random-rows.ts'
import { borderWords } from './random-steps.ts'

// The pencil draws the piece once for every size, each on its own sheet; the numbers of the three sheets stand side by side in the rows.

const sizes = ['S', 'M', 'L'] as const

/** What a row does, the same in every size but for its numbers. */
interface Shaping {
  readonly start: number
  readonly end: number
  readonly more: 0 | 1
  readonly way: number
}

/** The lines of one size in words: rows of a half, then its border. */
function inSize(width: number, shapings: readonly Shaping[], turned: boolean, size: number): string {
  const lines: Line[] = [{ from: 0, to: width, toRight: true }]
  const rows = [`Foundation: Ch ${width + 1}.`, `Row 1: Sc in 2nd ch from hook and in each ch across. (${width})`]
  for (const { start, end, more, way } of shapings) {
    const { from, to, toRight } = lines.at(-1)!
    const [stepIn, left] = [start && start + more * size, end && end + more * size]
    const over = to - from - stepIn - left
    lines.push(toRight ? { from: from + left, to: to - stepIn, toRight: false } : { from: from + stepIn, to: to - left, toRight: true })
    const leave = [`, leave last ${left} sts unworked`, ', leave rem sts unworked', `, leave rem ${left} sts unworked`][way]!
    rows.push(`Row ${lines.length}: ${stepIn > 0 ? `Turn, sl st in first ${stepIn} sts, ch 1, ` : 'Ch 1, turn, '}sc in next ${over} sts${left > 0 ? leave : ''}. (${over})`)
  }
  const sections = sectionsOf(pencilLine(lines, turned))
  const border = borderWords({ turned, sections }, sections.reduce((sum, { count }) => sum + count, 0))
  return [...rows.map((row) => `      ${row}`), '  - name: Border', '    on: Half', '    rows: |', `      ${border}`].join('\n')
}

/** The texts of all sizes as one: where their numbers differ they stand as `4 (5, 6)`. */
function together(words: string, numbers: readonly (readonly string[])[]): string {
  let at = -1
  const rows = words.replace(/\d+/g, () => {
    at += 1
    const values = numbers.map((each) => each[at]!)
    return new Set(values).size === 1 ? values[0]! : `${values[0]} (${values.slice(1).join(', ')})`
  })
  return `---
title: Sizes
terms: US
sizes: [${sizes.join(', ')}]
conventions: { turning-chains: { sc: not counted }, slip-stitches: not counted }
pieces:
  - name: Half
    rows: |
${rows}
---
`
}

/** The words of a piece in three sizes, and the numbers of each; nothing where a step of one row meets another's in one size only. */
function piece(draw: Draw): { readonly words: string; readonly numbers: readonly (readonly string[])[] } | undefined {
  const width = whole(draw, 30, 50)
  const turned = oneOf(draw, [true, false])
  const shapings = Array.from({ length: whole(draw, 2, 7) }, (): Shaping => ({
    start: oneOf(draw, [0, 0, whole(draw, 2, 4)]), end: oneOf(draw, [0, 0, whole(draw, 2, 4)]), more: oneOf(draw, [0, 1] as const), way: whole(draw, 0, 2),
  }))
  const texts = sizes.map((_, size) => inSize(width + 6 * size, shapings, turned, size))
  const words = texts.map((text) => text.replace(/\d+/g, '#'))
  return new Set(words).size === 1 ? { words: texts[0]!, numbers: texts.map((text) => text.match(/\d+/g) ?? []) } : undefined
}

const found = (text: string): readonly string[] => checkOnce({ path: 'sizes.md', text }).diagnostics
  .filter(({ code }) => code !== 'key-missing-to-publish' && code !== 'step-lopsided')
  .map(({ code, message, sizes: held }) => `${held?.join() ?? 'all'}: ${code} ${message}`)

describe('a stepped piece in three sizes', () => {
  test('comes out in each', () => {
    fc.assert(fc.property(fc.gen(), (draw) => {
      const made = piece(draw)
      if (!made) return
      const text = together(made.words, made.numbers)
      expect(found(text), text).toEqual([])
    }), { numRuns: 80, seed: 4_20 })
  })

  test('is found where one number of one size is off, and in that size', () => {
    let planted = 0
    fc.assert(fc.property(fc.gen(), (draw) => {
      const made = piece(draw)
      if (!made) return
      const size = whole(draw, 0, 2)
      const before = made.words.split(/\d+/)
      // Numbers of rows, of chains from the hook and of chains that are no stitches are no counts.
      const counts = made.numbers[size]!.flatMap((value, at) => (/(?:Row |Rnd |Ch |ch |in )$/.test(before[at]!) || Number(value) < 3 ? [] : [at]))
      const at = oneOf(draw, counts)
      const off = oneOf(draw, [-1, 1])
      const numbers = made.numbers.map((each, index) => (index === size ? each.with(at, `${Number(each[at]) + off}`) : each))
      const text = together(made.words, numbers)
      expect(found(text).some((line) => line.startsWith(`${sizes[size]}: `) || line.includes('size-list')), `${off}: ${text}\n${found(text).join('\n')}`).toBe(true)
      planted += 1
    }), { numRuns: 120, seed: 4_21 })
    expect(planted).toBeGreaterThan(90)
  })
})
