import { expect, test } from 'vitest'
import type { RowLine } from '../../../src/booklet/booklet.ts'
import { spokenRow, spokenWords } from '../../../src/booklet/spoken-row.ts'

const words = spokenWords([
  { kind: 'stitch', us: 'sc', uk: 'dc', meaning: 'single crochet: hook in, draw up a loop' },
  { kind: 'stitch', us: 'inc', uk: 'inc', meaning: 'increase: 2 sc in one stitch' },
  { kind: 'word', us: 'st, sts', uk: 'st, sts', meaning: 'stitch, stitches' },
  { kind: 'word', us: 'ch-sp', uk: 'ch-sp', meaning: 'chain space: the gap under a chain' },
  { kind: 'sign', us: '×', uk: '×', meaning: 'times' },
], 'US')
const row = (text: string, repeat: boolean, repeats: string): RowLine => ({
  kind: 'row', id: 'a-1', label: '1', boxes: ['1'], text: [{ text, repeat }], repeats, change: '', stitches: ['6'], spaces: '', progress: 0,
})

// How a row is read aloud to somebody: stars and short words in whole words. Common practice, no source.
test.each([
  ['*Sc in next 4 sts, inc; rep from * around.', '6 ×', 'Single crochet in next 4 stitches, increase; repeat this around. The repeat is worked 6 times in all.'],
  ['Sc in next st, *inc, sc in next st; rep from * to end.', '3 (4) ×', 'Single crochet in next stitch, repeat begins: increase, single crochet in next stitch; repeat this to end. The repeat is worked 3 (4) times in all.'],
  ['[Sc, inc] 3 times.', '3 ×', 'Bracket, single crochet, increase, end of bracket, 3 times. The repeat is worked 3 times in all.'],
])('%s', (text, repeats, said) => {
  expect(spokenRow(row(text, true, repeats), words)).toBe(said)
})

test('a word inside another word is left alone', () => {
  expect(spokenRow(row('Fasten off; weave in scraps.', false, ''), words)).toBe('Fasten off; weave in scraps.')
})
