import { describe, expect, test } from 'vitest'
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../src/fabric/worked-row.ts'
import type { CheckedPattern } from '../../src/pattern/checked-pattern.ts'
import { withoutCaretLines } from '../support/caret-lines.ts'
import { differingDiagnostics, differingRows } from '../support/compare-case.ts'
import { cellsOf } from '../support/expected-rows.ts'
import { fenceAttributes } from '../support/fence-attributes.ts'
import { readCases, type FenceCase } from '../support/read-cases.ts'

// The runner is what every spec page trusts, so it is tried on made-up findings of a made-up engine.

const page = [
  '---', 'code: total-mismatch', '---', '',
  '## One short', '',
  '```rows last=20', 'Row 2: Sc in each st across. (19)', '                             ^^^^ total-mismatch', '```', '',
  '| row | works over | makes |', '| --- | --- | --- |', '| Row 2 | 20 | 20 |', '',
  '## Single rows', '',
  '| last row | row | works over | makes |', '| --- | --- | --- | --- |', '| 6 | \\*sc, inc; rep from \\* across | 6 | 9 |',
].join('\n')

const [first, second] = readCases(page, 'page.md') as [FenceCase, ReturnType<typeof readCases>[number]]

function finding(text: string, code: Diagnostic['code'] = 'total-mismatch', from = 0, to = text.length): Diagnostic {
  const start = first.wrapped.source.text.indexOf(text) + from
  return { code, message: 'made up', primary: { span: { start, end: start + to - from }, text: '' }, secondary: [] }
}

function differences(got: readonly Diagnostic[], uncounted = false): string[] {
  return differingDiagnostics(got, first.expected, first.wrapped, uncounted)
}

describe('reading a page', () => {
  test('a heading names the case, the caret line is taken out of the rows, the table is kept', () => {
    expect(first.name).toBe('One short')
    expect(first.line).toBe(7)
    expect(first.wrapped.source.text).toContain('      Base row of 20 sc.\n      Row 2: Sc in each st across. (19)\n---')
    expect(first.expected).toEqual([{ line: 1, column: 30, endColumn: 34, code: 'total-mismatch' }])
    expect(first.tables).toHaveLength(1)
  })

  test('a table of single rows is a case of its own, and its escapes are undone', () => {
    expect(second.kind === 'single-rows' && second.table.rows[0]?.get('row')).toBe('*sc, inc; rep from * across')
  })

  test('cells are split at bars that are not escaped', () => {
    expect(cellsOf('| `a \\| b` | \\*c |')).toEqual(['a | b', '*c'])
  })

  test.each([
    ['an attribute that does not exist', () => fenceAttributes('lasst=4')],
    ['a convention that is neither', () => fenceAttributes('slip=maybe')],
    ['a code that does not exist', () => withoutCaretLines('Row 1: sc.\n       ^^ total-wrong')],
    ['a caret line without a code', () => withoutCaretLines('Row 1: sc.\n       ^^')],
    ['a table with a column that nothing compares', () => readCases(page.replace('works over | makes |\n| --- | --- | ---', 'works ovr | makes |\n| --- | --- | ---'), '')],
    ['a table line that lacks a cell', () => readCases(page.replace('| Row 2 | 20 | 20 |', '| Row 2 | 20 |'), '')],
    ['a table without a fence', () => readCases('## A\n\n| row | makes |\n| --- | --- |\n| Row 1 | 4 |', '')],
  ])('%s is refused', (_, reading) => {
    expect(reading).toThrow()
  })
})

describe('diagnostics are compared both ways', () => {
  test('the one that was asked for, at its place, is no difference', () => {
    expect(differences([finding('(19)')])).toEqual([])
  })

  test('one column off, another code, another line, one too many, none at all: each is a difference', () => {
    expect(differences([finding('(19)', 'total-mismatch', 1)])).toHaveLength(2)
    expect(differences([finding('(19)', 'total-mismatch', 0, 3)])).toHaveLength(2)
    expect(differences([finding('(19)', 'row-overruns')])).toHaveLength(2)
    expect(differences([finding('Base')])).toHaveLength(2)
    expect(differences([finding('(19)'), finding('Sc in')])).toHaveLength(1)
    expect(differences([])).toEqual(['did not come: line 1, columns 30-33 total-mismatch'])
  })

  test('a total that is not stated is let pass only where the fence says so; what publishing lacks always is', () => {
    expect(differences([finding('(19)'), finding('Row 2', 'count-missing')])).toHaveLength(1)
    expect(differences([finding('(19)'), finding('Row 2', 'count-missing')], true)).toEqual([])
    expect(differences([finding('(19)'), finding('title', 'key-missing-to-publish')])).toEqual([])
  })
})

describe('worked rows are compared with the table', () => {
  const row = {
    label: 'Row 2', offers: 20, worksOver: 20, leaves: 0, makes: 20, kinds: { sc: 20, dc: 0 }, spaces: {}, verdict: 'adds-up', assumed: ['read as one each'],
  } as unknown as WorkedRow
  const checked = (...rows: readonly WorkedRow[]) => ({ pieces: [{ piece: { name: 'Case' }, rows }] }) as unknown as CheckedPattern
  const table = (header: string, line: string) => ({
    line: 1, header: cellsOf(header), rows: [new Map(cellsOf(header).map((word, index) => [word, cellsOf(line)[index] ?? '']))],
  })

  test('every column that is the same is no difference', () => {
    const all = table('row | offers | works over | leaves | makes | kinds | spaces | verdict | assumed', 'Row 2 | 20 | 20 | 0 | 20 | 20 sc | none | adds-up | one each')
    expect(differingRows(checked(row), all)).toEqual([])
  })

  test.each(['offers | 21', 'works over | 19', 'leaves | 1', 'makes | 21', 'kinds | 20 dc', 'spaces | 1 ch-2', 'verdict | does-not', 'assumed | all in one'])('another value is: %s', (cells) => {
    const [column = '', cell = ''] = cells.split(' | ')
    expect(differingRows(checked(row), table(`row | ${column}`, `Row 2 | ${cell}`))).toHaveLength(1)
  })

  test('a row that was not worked is a difference', () => {
    expect(differingRows(checked(), table('row | makes', 'Row 2 | 20'))).toHaveLength(1)
  })
})
