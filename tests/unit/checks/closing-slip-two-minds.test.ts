import { expect, test } from 'vitest'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

// Common practice, no source: the slip stitch that closes a round is counted throughout a pattern or not at all. 7 sc, then 14 in every round.
test.each<readonly [total: string, told: boolean]>([
  ['14 sts', true],
  ['14 stitches', true],
  ['14 sc', false],
  ['14 sts, sl st not counted', false],
  ['15 sts: 14 sc and the closing sl st', false],
])('beside rounds that count it, a round of 14 that says (%s)', (total, told) => {
  expect(codesOf('(15 sts: 14 sc, 1 sl st)', `(${total})`)).toEqual(told ? ['closing-slip-two-minds'] : [])
})

test('where no round counts it, nothing is told', () => {
  expect(codesOf('(14 sts)', '(14 sts)')).toEqual([])
})

function codesOf(second: string, third: string): readonly string[] {
  const rows = ['Rnd 1: 7 sc in a magic ring; sl st in first sc to close. (7 sc)', `Rnd 2: Ch 1, 2 sc in each sc around; sl st in first sc to close. ${second}`, `Rnd 3: Ch 1, sc in each sc around; sl st in first sc to close. ${third}`]
  const text = `---\ntitle: Case\nterms: US\nconventions: { turning-chains: { sc: not counted } }\npieces:\n  - name: Case\n    rows: |\n${rows.map((row) => `      ${row}`).join('\n')}\n---\n`
  return checkPattern({ path: 'case.md', text }).diagnostics.map(({ code }) => code).filter((code) => code !== 'key-missing-to-publish')
}
