import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { lexicon } from '../../../src/fabric/lexicon.ts'
import { readRows } from '../../../src/fabric/real-rows.ts'
import { readPattern } from '../../../src/pattern/read-pattern.ts'
import type { Pattern } from '../../../src/pattern/pattern.ts'
import { casesOf } from '../../support/markdown-spec.ts'

// Outside oracle: a row that is read anew. What is remembered of it and moved must be the same in every part.

const pages = readdirSync('tests/spec').filter((file) => file.endsWith('.md')).map((file) => `tests/spec/${file}`)

test.each(pages)('%s: a row that was read before is read the same farther down the file', (page) => {
  const found = casesOf(page).flatMap((one) => (one.kind === 'fence' ? [one.wrapped.source.text] : []))
  expect(found.length).toBeGreaterThan(0)
  for (const text of found) {
    const { pattern } = readPattern({ path: 'case.md', text })
    for (const piece of pattern?.pieces ?? []) {
      const words = wordsOf(pattern!)
      const { key: _, ...forgetful } = words
      const ahead = '\n'.repeat(9)
      const block = { start: piece.rows.start + ahead.length, end: piece.rows.end + ahead.length }
      readRows(text, piece.rows, words)
      expect(readRows(ahead + text, block, words)).toEqual(readRows(ahead + text, block, forgetful))
    }
  }
})

test('a row is read anew where its pattern has other words', () => {
  const row = 'Row 1: 2 gl in next st.'
  const readWith = (stitches: Parameters<typeof lexicon>[1]) => readRows(row, { start: 0, end: row.length }, lexicon('US', stitches, 1, [])).entries[0]!.read.items[0]
  expect(readWith([{ abbr: 'gl', worksOver: 1, makes: 1 }])).toMatchObject({ node: 'work', stitch: 'gl' })
  expect(readWith([])).not.toMatchObject({ node: 'work', stitch: 'gl', unknown: undefined })
  expect(readWith([{ abbr: 'gl', worksOver: 1, makes: 1 }])).toMatchObject({ node: 'work', stitch: 'gl' })
})

function wordsOf({ terms, stitches, sizes, materials, pieces }: Pattern) {
  return lexicon(terms, stitches, Math.max(1, sizes.length), (materials?.yarns ?? []).flatMap(({ letter }) => letter ?? []), pieces.map(({ name }) => name))
}
