import { expect, test } from 'vitest'
import { makeBooklet } from '../../../src/booklet/make-booklet.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

/** A pattern of two fronts, the second told as the first with its shaping reversed. */
const pattern = (rows: string): string => `---
title: Two Fronts
summary: For the words of reversed rows.
designer: Saltmarsh Yarnworks
version: 1.0.0
date: 2026-11-25
terms: US
level: easy
made-for: home
conventions: { turning-chains: { sc: not counted }, slip-stitches: not counted }
gauge: { stitch: sc, sts: 16, rows: 18, over: 10 cm, hook: 4 mm, after: as worked }
materials: { yarns: [{ weight: 4, fibre: cotton, ball: { grams: 50, metres: 85 }, needs: 50 g }], hooks: [4 mm] }
pieces:
  - name: Left front
    rows: |
      Foundation: Ch 21.
      Row 1 (RS): Sc in 2nd ch from hook and in each ch across. (20)
${rows.split('\n').map((line) => `      ${line}`).join('\n')}
  - name: Right front
    rows: |
      Rows 1-${rows.split('\n').length + 1}: As for Left front, reversing shaping.
---
`

function words(rows: string): readonly string[] {
  const booklet = makeBooklet(checkPattern({ path: 'fronts.md', text: pattern(rows) }))
  const part = booklet.parts.find(({ name }) => name === 'Right front')
  return (part?.lines ?? []).flatMap((line) => (line.kind === 'row' ? [line.text.map(({ text }) => text).join('').replaceAll('\u00a0', ' ')] : []))
}

// Trade custom, common practice, no source: reversed shaping does at the end of a row what the first piece does at its start.
test('what leads in at the start is left at the end, and the other way round', () => {
  expect(words('Row 2: Turn, sl st in first 4 sts, ch 1, sc in next 16 sts. (16)')[1]).toBe('Ch 1, turn, sc in next 16 sts, leave last 4 sts unworked.')
  expect(words('Row 2: Ch 1, turn, sc in next 16 sts, leave last 4 sts unworked. (16)')[1]).toBe('Turn, sl st in first 4 sts, ch 1, sc in next 16 sts.')
})

test('a decrease goes to the other end', () => {
  expect(words('Row 2: Ch 1, turn, sc2tog, sc in each st across. (19)')[1]).toBe('Ch 1, turn, sc in each st to last 2 sts, sc2tog.')
  expect(words('Row 2: Ch 1, turn, sc in each st to last 2 sts, sc2tog. (19)')[1]).toBe('Ch 1, turn, sc2tog, sc in each st across.')
})

test('an increase goes to the other end', () => {
  expect(words('Row 2: Ch 1, turn, 2 sc in first st, sc in each st across. (21)')[1]).toBe('Ch 1, turn, sc in each st to last st, 2 sc in last st.')
})

test('a row with nothing to turn round keeps its words', () => {
  expect(words('Row 2: Ch 1, turn, sc in each st across. (20)')).toEqual(['Sc in 2nd ch from hook and in each ch across.', 'Ch 1, turn, sc in each st across.'])
})

test('a row that is not simple is read from its end', () => {
  expect(words('Row 2: Ch 1, turn, (sc2tog, sc in next 3 sts) 2 times, sc in each st across. (18)')[1]).toBe('As row 2 of Left front, with its shaping reversed: what stands at its start is worked at its end.')
})
