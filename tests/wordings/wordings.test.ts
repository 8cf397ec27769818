import { describe, expect, test } from 'vitest'
import { workRows, type Worked } from '../support/work-rows.ts'
import type { BaseRow } from './base-row.ts'
import { corners } from './corners.ts'
import { flatRows } from './flat-rows.ts'
import { plainTalk } from './plain-talk.ts'
import { rounds } from './rounds.ts'
import { saidInPassing } from './said-in-passing.ts'
import { shapedRows } from './shaped-rows.ts'
import { stopsAndSteps } from './stops-and-steps.ts'
import { texturedRows } from './textured-rows.ts'
import { totalsInLabels } from './totals-in-labels.ts'
import { ukRows } from './uk-rows.ts'

const all: readonly BaseRow[] = [...flatRows, ...shapedRows, ...texturedRows, ...rounds, ...ukRows, ...plainTalk, ...saidInPassing, ...totalsInLabels, ...stopsAndSteps, ...corners]

function worked({ on = '', before = [] }: BaseRow, wording: string, total: number): Worked {
  return workRows([...before, wording.replace('@', `${total}`)].join('\n'), on, false)
}

/** What the last row came to, in the words in which the table has it. */
function facts({ rows, diagnostics }: Worked): object {
  const row = rows().at(-1)!
  return {
    over: row.worksOver, makes: row.makes, kinds: { ...row.kinds }, spaces: { ...row.spaces }, verdict: row.verdict,
    diagnostics: diagnostics.map(({ code, message }) => `${code}: ${message}`),
  }
}

describe('the table of wordings', () => {
  test('has fifty rows, ten wordings each, and adds up in itself', () => {
    expect(all.length).toBeGreaterThanOrEqual(50)
    for (const row of all) {
      expect(row.wordings, row.name).toHaveLength(10)
      expect(new Set(row.wordings).size, row.name).toBe(10)
      expect(row.wordings.filter((wording) => wording.split('@').length !== 2), row.name).toEqual([])
      expect(Object.values(row.kinds).reduce((sum, count) => sum + count, 0), row.name).toBe(row.makes)
    }
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length)
  })
})

describe.each(all)('$name', (row) => {
  const { over, makes, kinds, spaces = {} } = row

  test.each(row.wordings)('%s', (wording) => {
    expect(facts(worked(row, wording, makes)), wording).toEqual({ over, makes, kinds, spaces, verdict: 'adds-up', diagnostics: [] })
  })

  test.each(row.wordings)('one off is one error: %s', (wording) => {
    for (const said of [makes - 1, makes + 1]) {
      const { diagnostics, rows } = worked(row, wording, said)
      expect(diagnostics.map(({ code, severity }) => `${severity} ${code.replace(/^(total|kind)-/, 'count-')}`), `${said} for ${makes}: ${wording}`).toEqual(['error count-mismatch'])
      expect(rows().at(-1)!.verdict, wording).toBe('does-not')
    }
  })
})
