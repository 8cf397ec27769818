import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { DiagnosticCode } from '../../src/diagnostics/codes.ts'
import { workRows } from '../support/work-rows.ts'
import { readHandbookCase } from './read-handbook-case.ts'

// Worked examples of printed needlework books in the public domain, and a few of our own. Each header names its source and
// says what must come out; the counts in it were worked by hand from the printed rows.

const folder = 'tests/handbook'
const cases = readdirSync(folder).filter((name) => name.endsWith('.txt')).sort().map((name) => readHandbookCase(`${folder}/${name}`))

/** What a wrong count in these rows can be called. */
const countCodes: readonly DiagnosticCode[] = ['total-mismatch', 'kind-mismatch']
/** Old print states few totals: a row that changes the count without one is no fault of the example. */
const silent: readonly DiagnosticCode[] = ['count-missing']

test('the printed examples are there', () => {
  expect(cases).toHaveLength(23)
  expect(cases.filter(({ error }) => error !== undefined)).toHaveLength(7)
  expect(cases.flatMap(({ makes }) => makes).length).toBeGreaterThan(150)
})

describe.each(cases)('$file', ({ rows, makes, spaces, error }) => {
  const worked = workRows(rows)
  const spoken = worked.diagnostics.filter(({ code }) => !silent.includes(code))

  test('every row makes what was worked by hand', () => {
    const got = makes.map(({ label }) => ({ label, count: worked.row(label).makes }))
    expect(got).toEqual(makes)
  })

  test('every row makes the chain spaces that were worked by hand', () => {
    const got = spaces.map(({ label, kind }) => ({ label, kind, count: worked.row(label).spaces[kind] ?? 0 }))
    expect(got).toEqual(spaces)
  })

  if (error === undefined) {
    test('all its counts are true: there is nothing to say', () => {
      expect(spoken.map(({ code, line, message }) => ({ code, line, message }))).toEqual([])
      expect(worked.rows().filter(({ verdict }) => verdict === 'does-not').map(({ label }) => label)).toEqual([])
    })
  } else {
    test('its one wrong count is found, on its row, with its numbers', () => {
      const lines = rows.split('\n')
      const rowOfError = lines.findIndex((line) => line.startsWith(`${error.label}:`)) + 1
      expect(spoken.map(({ code, line, message }) => ({ code, line, message }))).toHaveLength(1)
      const [only] = spoken
      expect(countCodes).toContain(only!.code)
      expect(only!.severity).toBe('error')
      expect(only!.line).toBe(rowOfError)
      const numbers = new Set(only!.message.match(/\d+/g) ?? [])
      expect([...numbers]).toEqual(expect.arrayContaining([String(error.says), String(error.makes)]))
      expect(lines[only!.line - 1]!.slice(only!.column - 1, only!.endColumn - 1)).toContain(String(error.says))
      expect(worked.rows().filter(({ verdict }) => verdict === 'does-not').map(({ label }) => label)).toEqual([error.label])
    })
  }
})
