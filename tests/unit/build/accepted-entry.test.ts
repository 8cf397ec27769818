import { expect, test } from 'vitest'
import { collectPattern } from '../../../src/build/collect-patterns.ts'
import { fullEntry, listedEntry } from '../../../src/build/to-entry.ts'

// What the ledger must show is what the file itself says; of a pattern that is sold the public site may know none of it.

const text = ['---', 'title: Limpet mat', 'terms: US', 'accepted:', '  - { code: count-missing, row: Rnd 2, why: it is drawn }', 'pieces:', '  - name: Mat', '    rows: |',
  '      Rnd 1: 6 sc in magic ring. (6)', '      Rnd 2: 2 sc in each st around.', '---', ''].join('\n')

test('a warning that is accepted reaches the ledger with its line and the reason, and no public page of what is sold', () => {
  const collected = collectPattern({ path: 'patterns/mat.md', bytes: Buffer.from(text) })
  expect(fullEntry(collected, []).accepted).toEqual([{ code: 'count-missing', message: expect.stringContaining('round 2 makes 12 stitches') as string, line: 10, why: 'it is drawn' }])
  expect(JSON.stringify(listedEntry(collected, []))).not.toContain('it is drawn')
})
