import { expect, test } from 'vitest'
import { jsonReport } from '../../../src/build/json-report.ts'
import { finding, madeUpChecked, madeUpPiece, madeUpRow } from './made-up-checked.ts'

// The oracle is the published shape of the report, written down before the program: keys, 1-based places, null for what there is none of.

const text = ['---', 'rows: |', '  Row 1: sc 50. (50)', '  Row 2: dec. (42 sts)', '---'].join('\n')
const source = { path: 'skiff.md', text }

test('a file as other programs read it', () => {
  const row = madeUpRow(source, 'Row 2: dec. (42 sts)', {
    label: 'Row 2', offers: 50, worksOver: 50, leaves: 0, makes: 42, kinds: { hdc2tog: 8, hdc: 34 }, spaces: { 'ch-2': 0 },
    says: { span: { start: 0, end: 0 }, count: 42, kinds: {}, spaces: {} },
  })
  const wrong = finding(source, '(42 sts)', 'total-mismatch', { message: 'm', hint: { text: 'h' }, sizes: ['Small', 'Large'] })
  expect(jsonReport([madeUpChecked(source, [madeUpPiece('Front', [row], 'Small')], [wrong], ['Small', 'Large'])])).toEqual({
    files: [{
      path: 'skiff.md', errors: 1, warnings: 0,
      pieces: [{ name: 'Front', size: 'Small', rows: [{
        label: 'Row 2', line: 4, offers: 50, worksOver: 50, leaves: 0, makes: 42, kinds: { hdc2tog: 8, hdc: 34 }, spaces: { 'ch-2': 0 },
        says: 42, verdict: 'adds-up', reason: null, assumed: [],
      }], edges: [] }],
      diagnostics: [{
        code: 'total-mismatch', severity: 'error', size: 'Small, Large', line: 4, column: 15, endLine: 4, endColumn: 23,
        message: 'm', note: null, hint: 'h', changes: [],
      }],
      accepted: [],
    }],
    notCheckedByMachine: [
      { number: 1, what: expect.stringContaining('agreed') as string },
      { number: 75, what: expect.stringContaining('Pictures') as string },
      { number: 78, what: expect.stringContaining('Charts') as string },
    ],
  })
})

test('what there is none of is null, and survives being written and read as JSON', () => {
  const row = madeUpRow(source, 'Row 1: sc 50.', { verdict: 'cannot-tell', reason: 'why', uncounted: true, offers: 50, makes: 42, assumed: ['a'] })
  const report = jsonReport([madeUpChecked(source, [madeUpPiece('Front', [row])], [finding(source, 'sc', 'row-not-checked')])])
  expect(JSON.parse(JSON.stringify(report))).toEqual(report)
  expect(report.files[0]).toMatchObject({
    errors: 0, warnings: 1,
    pieces: [{ size: null, rows: [{ line: 3, offers: 50, makes: null, worksOver: null, leaves: null, says: null, reason: 'why', assumed: ['a'] }] }],
    diagnostics: [{ severity: 'warning', size: null, hint: null, line: 3, column: 10, endColumn: 12 }],
  })
})

test('kinds that are stated without a sum are the total', () => {
  const says = (kinds: Record<string, number>, count?: number) => {
    const row = madeUpRow(source, 'Row 1', { says: { span: { start: 0, end: 0 }, kinds, spaces: { 'ch-2': 5 }, ...(count === undefined ? {} : { count }) } })
    return jsonReport([madeUpChecked(source, [madeUpPiece('Front', [row])])]).files[0]?.pieces[0]?.rows[0]?.says
  }
  expect(says({ dc: 17, sc: 2 })).toBe(19)
  expect(says({ dc: 17 }, 22)).toBe(22)
  expect(says({})).toBeNull()
})

test('errors stand before warnings, each by their place; a finding over two lines ends on the second', () => {
  const findings = [finding(source, 'Row 1', 'count-missing'), finding(source, '(42', 'total-mismatch'), finding(source, '50. (50)\n  Row', 'row-overruns')]
  expect(jsonReport([madeUpChecked(source, [], findings)]).files[0]?.diagnostics.map(({ code, line, endLine, endColumn }) => [code, line, endLine, endColumn])).toEqual([
    ['row-overruns', 3, 4, 6], ['total-mismatch', 4, 4, 18], ['count-missing', 3, 3, 8],
  ])
})

test('changes that were tried have their place; what the designer accepts stands apart with the reason', () => {
  const at = text.indexOf('(50)')
  const wrong = finding(source, '(50)', 'total-mismatch', {
    hint: { text: 'h', edit: { span: { start: at, end: at + 4 }, replacement: '(49)' } },
    otherHints: [{ text: 'o', edit: { span: { start: at - 1, end: at - 1 }, replacement: ', sc in last st' } }],
  })
  const accepted = [{ diagnostic: finding(source, 'Row 2', 'count-missing'), why: 'it is drawn', span: { start: 0, end: 1 } }]
  const [file] = jsonReport([{ ...madeUpChecked(source, [], [wrong]), accepted }]).files
  expect(file?.diagnostics[0]?.changes).toEqual([
    { text: 'h', line: 3, column: 17, endLine: 3, endColumn: 21, replacement: '(49)' },
    { text: 'o', line: 3, column: 16, endLine: 3, endColumn: 16, replacement: ', sc in last st' },
  ])
  expect(file).toMatchObject({ errors: 1, warnings: 0, accepted: [{ code: 'count-missing', severity: 'warning', line: 4, column: 3, why: 'it is drawn' }] })
})
