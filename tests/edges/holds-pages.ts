import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { checkOnce } from '../../src/pattern/check-pattern.ts'
import { readEdgePage, type EdgeCase } from './read-edge-page.ts'

function findings({ pattern }: Pick<EdgeCase, 'pattern'>): string[] {
  return checkOnce({ path: 'page.md', text: `---\ntitle: Edges\n${pattern}\n---\n` }).diagnostics
    .filter(({ code }) => code !== 'key-missing-to-publish')
    .map(({ code, message }) => `${code}: ${message}`)
}

/** Every page of a folder: each pattern comes out, and each slip planted in it is found. */
export function holdsPages(folder: string): void {
  describe.each(readdirSync(folder).filter((file) => file.endsWith('.md')).sort())('%s', (page) => {
    const cases = readEdgePage(`${folder}/${page}`)

    test('has cases, and every case has three planted slips at least', () => {
      expect(cases.length).toBeGreaterThan(0)
      expect(cases.filter(({ planted }) => planted.length < 3).map(({ name }) => name)).toEqual([])
    })

    test.each(cases)('$name: comes out', ({ pattern }) => {
      expect(findings({ pattern })).toEqual([])
    })

    test.each(cases.flatMap(({ name, pattern, planted }) => planted.map((slip) => ({ name, pattern, ...slip }))))('$name: `$from` as `$to` is found', ({ pattern, from, to }) => {
      // A slip is planted in one place, and only there.
      expect(pattern.split(from)).toHaveLength(2)
      expect(findings({ pattern: pattern.replace(from, () => to) })).not.toEqual([])
    })
  })
}
