import { expect, test } from 'vitest'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

// 1 + 1 + 4 = 6 on 1 + 2 + 4 = 7. A total counts stitches worked together by what they are of (trade council's abbreviations: `tr2tog` is two treble together).
const pattern = (total: string) => `---\ntitle: Strap\nterms: UK\nconventions: { turning-chains: { tr: counted } }\nstitches:\n  - { abbr: tr2tog, name: treble two together, works-over: 2, makes: 1, how: two treble closed as one }\npieces:\n  - name: Strap\n    rows: |\n      Foundation: 9 ch.\n      Row 1: 1 tr in 4th ch from hook (missed ch count as 1 tr), 1 tr in each ch to end. (7 tr)\n      Row 2: 3 ch (counts as 1 tr), turn, miss first tr, tr2tog over next 2 tr, 1 tr in each of last 4 tr. (${total})\n---\n`
const codesOf = (total: string) => checkPattern({ path: 'strap.md', text: pattern(total) }).diagnostics.map(({ code }) => code).filter((code) => code !== 'key-missing-to-publish')

test('a pattern that explains tr2tog says what the trade says', () => {
  expect(codesOf('6 tr')).toEqual([])
  expect(codesOf('7 tr')).toContain('total-mismatch')
})
