import { expect, test } from 'vitest'
import { closingSummary } from '../../../src/build/closing-summary.ts'
import type { WorkedRow } from '../../../src/fabric/worked-row.ts'
import { finding, madeUpChecked, madeUpPiece, madeUpRow } from './made-up-checked.ts'

// Counts below are of rows that the test itself puts in; the words are the subject.

const source = { path: 'skiff.md', text: 'Row 1: sc.' }

function rows(count: number, told: Partial<WorkedRow> = {}): readonly WorkedRow[] {
  return Array.from({ length: count }, () => madeUpRow(source, 'Row 1', told))
}

test('what was counted, when all of it comes out', () => {
  const pieces = ['Small', 'Large'].flatMap((size) => [madeUpPiece('Front', rows(40), size), madeUpPiece('Back', rows(20), size), madeUpPiece('Border', rows(4), size)])
  expect(closingSummary([madeUpChecked(source, pieces, [], ['Small', 'Large'])])).toBe('skiff.md: 3 pieces, 2 sizes, 64 rows: all add up\n')
  expect(closingSummary([madeUpChecked(source, [madeUpPiece('Front', rows(1))])])).toBe('skiff.md: 1 piece, 1 row: all add up\n')
})

test('sizes may have different numbers of rows', () => {
  const pieces = [madeUpPiece('Front', rows(40), 'S'), madeUpPiece('Front', rows(46), 'L')]
  expect(closingSummary([madeUpChecked(source, pieces, [], ['S', 'L'])])).toBe('skiff.md: 1 piece, 2 sizes, 40 to 46 rows: all add up\n')
})

test('rows that do not come out are never called well, and a row wrong in two sizes is one', () => {
  const wrong = finding(source, 'sc', 'total-mismatch')
  const mind = finding(source, 'Row', 'count-missing')
  const pieces = ['S', 'L'].map((size) => madeUpPiece('Front', [...rows(5), ...rows(1, { verdict: 'does-not' }), ...rows(2, { verdict: 'cannot-tell' })], size))
  expect(closingSummary([madeUpChecked(source, pieces, [wrong, mind, mind], ['S', 'L'])])).toBe(
    'skiff.md: 1 piece, 2 sizes, 8 rows: 1 row does not add up, 2 rows cannot be counted, 1 error, 2 warnings\n',
  )
  expect(closingSummary([madeUpChecked(source, [madeUpPiece('Front', rows(3))], [mind])])).toBe('skiff.md: 1 piece, 3 rows: all add up, 1 warning\n')
})

test('a file in which nothing could be counted says no more than that', () => {
  expect(closingSummary([madeUpChecked(source, [], [finding(source, 'sc', 'front-matter-missing')])])).toBe('skiff.md: 1 error\n')
  expect(closingSummary([madeUpChecked(source, [madeUpPiece('Front', [])])])).toBe('skiff.md: no rows\n')
})

test('several files end in one line for all', () => {
  const good = madeUpChecked(source, [madeUpPiece('Front', rows(2))])
  const bad = madeUpChecked({ ...source, path: 'dinghy.md' }, [madeUpPiece('Front', rows(2))], [finding(source, 'sc', 'yarn-not-listed')])
  expect(closingSummary([good, bad])).toBe('skiff.md: 1 piece, 2 rows: all add up\ndinghy.md: 1 piece, 2 rows: all add up, 1 error\n2 files: 1 error\n')
  expect(closingSummary([good, good]).split('\n')[2]).toBe('2 files: nothing to mend')
})
