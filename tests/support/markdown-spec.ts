import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { describe, expect, test } from 'vitest'
import { reportText } from '../../src/diagnostics/report.ts'
import { checkPattern } from '../../src/pattern/check-pattern.ts'
import type { CheckedPattern } from '../../src/pattern/checked-pattern.ts'
import { differingDiagnostics, differingRows } from './compare-case.ts'
import { fenceAttributes } from './fence-attributes.ts'
import { readCases, type FenceCase, type SingleRowsCase, type SpecCase } from './read-cases.ts'
import { writeReport } from './write-report.ts'
import { wrapRows } from './wrap-rows.ts'

const casesByFile = new Map<string, readonly SpecCase[]>()

/** The cases of a Markdown file, read from disk once. */
export function casesOf(file: string): readonly SpecCase[] {
  const cases = casesByFile.get(file) ?? readCases(readFileSync(file, 'utf8'), basename(file))
  casesByFile.set(file, cases)
  return cases
}

/**
 * Works every `rows` and `pattern` fence of a Markdown file and compares what comes with the carets, tables and reports
 * that stand beside it. Gives the number of cases, so that the caller can insist on some.
 */
export function runMarkdown(file: string): number {
  const cases = casesOf(file)
  describe(file, () => {
    test.for(named(cases))('$title', ({ one }) => {
      const differences = one.kind === 'fence' ? differencesOfFence(one) : differencesOfSingleRows(one)
      expect(differences, `${file}:${one.line}`).toEqual([])
    })
    for (const { title, one } of named(cases)) {
      if (one.kind !== 'fence') continue
      for (const report of one.reports) {
        test(`${title}: the report`, () => {
          const printed = reportOf(one)
          if (process.env['UPDATE_REPORTS'] === '1') writeReport(file, report.line, printed)
          else expect(`${report.text.trimEnd()}\n`, `${file}:${report.line}`).toBe(`${printed.trimEnd()}\n`)
        })
      }
    }
  })
  return cases.length
}

/** Several fences under one heading get a number each. */
function named(cases: readonly SpecCase[]): { title: string; one: SpecCase }[] {
  return cases.map((one) => {
    const under = cases.filter(({ name }) => name === one.name)
    return { title: under.length > 1 ? `${one.name} (${under.indexOf(one) + 1})` : one.name, one }
  })
}

/** What is printed of the diagnostics that the fence asks for; what else a fence lacks to be published is not its subject. */
function reportOf({ wrapped, expected }: FenceCase): string {
  const { diagnostics, source } = checkPattern(wrapped.source)
  return reportText(diagnostics.filter(({ code }) => expected.some((wanted) => wanted.code === code)), source)
}

function differencesOfFence({ wrapped, expected, uncounted, tables }: FenceCase): string[] {
  const checked = checkPattern(wrapped.source)
  return [
    ...differingDiagnostics(checked.diagnostics, expected, wrapped, uncounted),
    ...nothingWorked(checked),
    ...tables.flatMap((table) => differingRows(checked, table)),
  ]
}

/** A fence that works no row at all would pass every comparison: it is a slip of ours unless a diagnostic was asked for. */
function nothingWorked(checked: CheckedPattern): string[] {
  const rows = checked.pieces.flatMap((piece) => piece.rows)
  return rows.length > 0 || checked.diagnostics.length > 0 ? [] : ['no row was worked']
}

function differencesOfSingleRows({ table }: SingleRowsCase): string[] {
  return table.rows.flatMap((line) => {
    const text = line.get('row') ?? ''
    const wrapped = wrapRows(`Row 1: ${text}.`, fenceAttributes(`last=${line.get('last row') ?? ''}`))
    const checked = checkPattern(wrapped.source)
    const expectedRow = new Map([...line].filter(([column]) => column !== 'last row').map(([column, cell]) => (
      column === 'row' ? ['row', 'Row 1'] as const : [column, cell] as const
    )))
    return [
      ...differingDiagnostics(checked.diagnostics, [], wrapped, true),
      ...differingRows(checked, { line: table.line, header: table.header, rows: [expectedRow] }),
    ].map((difference) => `${text}: ${difference}`)
  })
}
