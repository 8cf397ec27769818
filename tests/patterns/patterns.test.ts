import { readdirSync } from 'node:fs'
import { expect, test } from 'vitest'
import { casesOf, runMarkdown } from '../support/markdown-spec.ts'

// The errors that published patterns have most often, a page each: a wrong pattern with one planted error and its nearest right
// neighbour. The classes are those that editors and correction lists name; the patterns are our own.

const folder = 'tests/patterns'
const pages = readdirSync(folder).filter((name) => name.endsWith('.md')).sort().map((name) => `${folder}/${name}`)

for (const page of pages) runMarkdown(page)

test('every page has one wrong pattern with one error, and one right pattern', () => {
  expect(pages.length).toBeGreaterThan(30)
  const odd = pages.filter((page) => {
    const asked = casesOf(page).map((one) => (one.kind === 'fence' ? one.expected.length : -1))
    return asked.join() !== '1,0'
  })
  expect(odd).toEqual([])
})
