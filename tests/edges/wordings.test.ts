import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { placesInOtherWords } from './places-in-other-words.ts'
import { readEdgePage } from './read-edge-page.ts'
import { joiningRows, otherWords } from './wordings.ts'

// Every pattern of the pages in other words for the same edges: what was right stays right.

const patterns = readdirSync('tests/edges').filter((file) => file.endsWith('.md')).sort().flatMap((file) => readEdgePage(`tests/edges/${file}`))

function findings(pattern: string): string[] {
  return checkOnce({ path: 'edges.md', text: `---\ntitle: Edges\n${pattern}\n---\n` }).diagnostics
    .filter(({ code }) => code !== 'key-missing-to-publish')
    .map(({ code, message }) => `${code} ${message}`)
}

test.each(otherWords.map((words, nth) => ({ ...words, nth })))('$name', ({ from, to, nth }) => {
  const all = patterns.map(({ name, pattern }) => ({ name, before: pattern, after: pattern.replace(from, to) })).filter(({ before, after }) => before !== after)
  // Of common words every third pattern will do, or eight from all pages, and of the next ones others.
  const step = Math.max(3, Math.ceil(all.length / 8))
  const reworded = all.length < 20 ? all : all.filter((_, index) => index % step === nth % step)
  expect(reworded.length).toBeGreaterThan(3)
  const blamed = reworded.flatMap(({ name, after }) => findings(after).map((finding) => `${name}: ${finding}`))
  expect(blamed).toEqual([])
})

test.each(joiningRows)('%s', (words) => {
  const row = 'sc in each of 9 sc of second shoulder, ch 10, sc in each of 9 sc of first shoulder'
  const [joined = ''] = patterns.filter(({ pattern }) => pattern.includes(row)).map(({ pattern }) => pattern.slice(0, pattern.indexOf('  - name: Neckband')))
  const reworded = joined.replace(row, words)
  expect(reworded).toContain(words)
  expect(findings(reworded)).toEqual([])
  expect(findings(reworded.replace('(18 sc, 10 ch)', '(17 sc, 10 ch)'))).not.toEqual([])
  expect(findings(reworded.replace('ch 10', 'ch 11'))).not.toEqual([])
})

test.each(placesInOtherWords.flatMap(({ from, others }) => others.map((to) => ({ from, to }))))('$to', ({ from, to }) => {
  const [pattern] = patterns.filter((page) => page.pattern.includes(from)).map((page) => page.pattern)
  const others = (words: string): string[] => findings(pattern!.replace(from, words))
  expect(others(to)).toEqual([])
  // One more of what is told by its number is found.
  const number = /(?<=of the |into the |of |next )\d+(?= )/.exec(to)?.[0]
  if (number) expect(others(to.replace(`${number} `, `${Number(number) + 1} `))).not.toEqual([])
})
