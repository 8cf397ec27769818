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

test('the same words with another meaning are read anew', () => {
  const row = 'Row 1: 2 gl in next st.'
  const reads = ([1, 2] as const).map((makes) => readRows(row, { start: 0, end: row.length }, lexicon('US', [{ abbr: 'gl', worksOver: 1, makes }], 1, [])))
  const without = readRows(row, { start: 0, end: row.length }, lexicon('US', [], 1, []))
  expect(reads[0]).toEqual(reads[1])
  expect(without).not.toEqual(reads[0])
})

function wordsOf({ terms, stitches, sizes, materials, pieces }: Pattern) {
  return lexicon(terms, stitches, Math.max(1, sizes.length), (materials?.yarns ?? []).flatMap(({ letter }) => letter ?? []), pieces.map(({ name }) => name))
}
