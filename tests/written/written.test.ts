import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { readEdgePage, type EdgeCase } from '../edges/read-edge-page.ts'

// Whole patterns as designers write them. The words are common practice, no source; the numbers were worked by hand, row by row and place
// by place, before a program read them. A right pattern must not be blamed for its words, and no slip may pass.

const pages = readdirSync('tests/written').filter((file) => file.endsWith('.md')).sort()

function findings({ pattern }: Pick<EdgeCase, 'pattern'>): string[] {
  return checkOnce({ path: 'written.md', text: `---\ntitle: Written\n${pattern}\n---\n` }).diagnostics
    .filter(({ code }) => code !== 'key-missing-to-publish')
    .map(({ code, message }) => `${code}: ${message}`)
}

describe.each(pages)('%s', (page) => {
  const cases = readEdgePage(`tests/written/${page}`)

  test('every pattern has three planted slips at least', () => {
    expect(cases.length).toBeGreaterThan(0)
    expect(cases.filter(({ planted }) => planted.length < 3).map(({ name }) => name)).toEqual([])
  })

  test.each(cases)('$name: comes out', ({ pattern }) => {
    expect(findings({ pattern })).toEqual([])
  })

  test.each(cases.flatMap(({ name, pattern, planted }) => planted.map((slip) => ({ name, pattern, ...slip }))))('$name: `$from` as `$to` is found', ({ pattern, from, to }) => {
    expect(pattern.split(from)).toHaveLength(2)
    expect(findings({ pattern: pattern.replace(from, () => to) })).not.toEqual([])
  })
})
