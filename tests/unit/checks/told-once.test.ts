import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../../src/pattern/check-pattern.ts'

// One slip, one finding, where a border and a seam or a second border meet the same side. Counted by hand: a piece of 4 rows has 4
// row-ends a side, where its border asks for 5.

const told = (pieces: string): readonly string[] => checkOnce({ path: 'page.md', text: `---\ntitle: Panels\nterms: US\nconventions: { turning-chains: { sc: not counted }, slip-stitches: not counted }\n${pieces}---\n` }).diagnostics
  .map(({ code }) => code).filter((code) => code !== 'key-missing-to-publish')

const panel = (name: string, last: number): string => `  - name: ${name}
    rows: |
      Foundation: Ch 13.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (12)
      Rows 2-${last}: Ch 1, turn, sc in each st across. (12)
`
const border = `  - name: Border
    on: Back
    rows: |
      Row 1 (RS): Do not turn. Ch 1, sc in each of next 5 row-ends, 3 sc in corner ch, sc in each of next 10 ch, 3 sc in corner ch, sc in each of next 5 row-ends. (26)
`
const band = `  - name: Band
    on: Back
    rows: |
      Row 1 (RS): With RS facing, join yarn with sl st in first st of Row 5, ch 1, sc in same st, sc in each of next 11 sts. (12)
`
const seam = `seams:
  - { join: [right side of Front, left side of Back], by: mattress stitch }
`

describe('a piece that is a row short', () => {
  test('is right with all its rows', () => {
    expect(told(`pieces:\n${panel('Front', 5)}${panel('Back', 5)}${border}${band}${seam}`)).toEqual([])
  })

  test('is told at its border', () => {
    expect(told(`pieces:\n${panel('Back', 4)}${border}`)).toEqual(['row-overruns'])
  })

  test('is told at one of two borders', () => {
    expect(told(`pieces:\n${panel('Back', 4)}${border}${band}`)).toEqual(['row-overruns'])
  })

  test('is told at the seam of its sides and at its border, since each may have a slip of its own', () => {
    expect(told(`pieces:\n${panel('Front', 5)}${panel('Back', 4)}${border}${seam}`)).toEqual(['row-overruns', 'seam-mismatch'])
  })

  test('and a border that has a slip of another kind are two findings', () => {
    expect(told(`pieces:\n${panel('Front', 5)}${panel('Back', 4)}${border.replaceAll('next 5 row-ends', 'next 4 row-ends').replace('(26)', '(25)')}${seam}`)).toEqual(['total-mismatch', 'seam-mismatch'])
  })
})

describe('a step that is one off', () => {
  const stepped = (first: number, left: number): string => `  - name: Mat
    rows: |
      Foundation: Ch 21.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (20)
      Row 2: Ch 1, turn, sc in each st across. (20)
      Row 3: Turn, sl st in each of first 4 sts, ch 1, sc in each of next ${first} sts, leave last ${left} sts unworked. (${first})
`
  const edging = `  - name: Edging
    on: Mat
    rows: |
      Row 1 (RS): Do not turn. Ch 1, sc in next row-end, sc in each of next 4 unworked sts of Row 2, sc in each of next 2 row-ends, sc in each of next 20 ch. (27)
`

  test('is right where its sides match', () => {
    expect(told(`pieces:\n${stepped(12, 4)}${edging}`)).toEqual([])
  })

  test('is told by itself, and at its border', () => {
    expect(told(`pieces:\n${stepped(13, 3)}`)).toEqual(['step-lopsided'])
    expect(told(`pieces:\n${stepped(13, 3)}${edging}`)).toEqual(['step-lopsided', 'row-overruns'])
  })
})
