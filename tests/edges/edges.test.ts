import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { readEdgePage, type EdgeCase } from './read-edge-page.ts'

// Patterns as different designers word them, their sums worked by hand beside them, and for each the slips that were planted in it.
// Common practice, no source: what an edge offers, and in what order, is what a maker finds with the hook.

const pages = readdirSync('tests/edges').filter((file) => file.endsWith('.md')).sort()

function findings(text: string): string[] {
  return checkOnce({ path: 'edges.md', text }).diagnostics
    .filter(({ code }) => code !== 'key-missing-to-publish')
    .map(({ code, message }) => `${code}: ${message}`)
}

const asFile = ({ pattern }: Pick<EdgeCase, 'pattern'>): string => `---\ntitle: Edges\n${pattern}\n---\n`

describe.each(pages)('%s', (page) => {
  const cases = readEdgePage(`tests/edges/${page}`)

  test('has cases, and every case has three planted slips at least', () => {
    expect(cases.length).toBeGreaterThan(0)
    expect(cases.filter(({ planted }) => planted.length < 3).map(({ name }) => name)).toEqual([])
  })

  test.each(cases)('$name: comes out', ({ pattern }) => {
    expect(findings(asFile({ pattern }))).toEqual([])
  })

  test.each(cases.flatMap(({ name, pattern, planted }) => planted.map((slip) => ({ name, pattern, ...slip }))))('$name: `$from` as `$to` is found', ({ pattern, from, to }) => {
    // A slip is planted in one place, and only there.
    expect(pattern.split(from)).toHaveLength(2)
    expect(findings(asFile({ pattern: pattern.replace(from, () => to) }))).not.toEqual([])
  })
})
