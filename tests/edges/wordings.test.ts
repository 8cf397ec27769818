import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { readEdgePage } from './read-edge-page.ts'
import { otherWords } from './wordings.ts'

// Every pattern of the pages in other words for the same edges: what was right stays right.

const patterns = readdirSync('tests/edges').filter((file) => file.endsWith('.md')).sort().flatMap((file) => readEdgePage(`tests/edges/${file}`))

test.each(otherWords)('$name', ({ from, to }) => {
  const reworded = patterns.map(({ name, pattern }) => ({ name, before: pattern, after: pattern.replace(from, to) })).filter(({ before, after }) => before !== after)
  expect(reworded.length).toBeGreaterThan(3)
  const blamed = reworded.flatMap(({ name, after }) => checkOnce({ path: 'edges.md', text: `---\ntitle: Edges\n${after}\n---\n` }).diagnostics
    .filter(({ code }) => code !== 'key-missing-to-publish')
    .map(({ code, message }) => `${name}: ${code} ${message}`))
  expect(blamed).toEqual([])
})
