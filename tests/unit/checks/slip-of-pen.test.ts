import { expect, test } from 'vitest'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

// What a person who reads along would say: a word with a letter too few is a slip of the pen, a word that merely is not known is none.
// Levenshtein's distance finds the word; the row must then be read whole.

const findingsOf = (row: string) => checkPattern({ path: 'mat.md', text: `---\ntitle: Mat\nterms: US\nconventions: { turning-chains: { sc: not counted } }\npieces:\n  - name: Mat\n    rows: |\n      Foundation: Ch 21.\n      Row 1: Sc in 2nd ch from hook and in each ch across. (20)\n      Row 2: Ch 1, turn, ${row}\n---\n` })
  .diagnostics.filter(({ code }) => code !== 'key-missing-to-publish')

test.each([
  ['sc in nxt 3 sts, sc in next 17 sts. (20)', 'did you mean `next`?'],
  ['sc accross. (20)', 'did you mean `across`?'],
  ['skpi next st, sc in next 19 sts. (19)', 'did you mean `skip`?'],
  ['sc in frist st, sc in next 19 sts. (20)', 'did you mean `first`?'],
])('%s', (row, hint) => {
  expect(findingsOf(row).map(({ code, hint: told }) => [code, told?.text])).toEqual([['row-unreadable', hint]])
})

test.each(['[sc in next 3 sts, sc in next 17 sts. (20)', 'sc in next 3 sts], sc in next 17 sts. (20)'])('a bracket too many or too few is an error: %s', (row) => {
  expect(findingsOf(row).map(({ code }) => code)).toEqual(['row-unreadable'])
})

// `chair` is one letter from `chain`, and `spare` from `space`, and both are words of their own.
test.each(['sc in next 12 sts, over the spare chain. (20)', 'sc in next 3 sts, around the bend 17 sts. (20)', 'sc in next 3 sts, around the chair 17 sts. (20)'])('what is not known is not called wrong: %s', (row) => {
  expect(findingsOf(row).map(({ code }) => code)).toEqual(['row-not-checked'])
})
