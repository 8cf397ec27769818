import { describe, expect, test } from 'vitest'
import type { RowLine } from '../../../src/booklet/booklet.ts'
import { makeBooklet } from '../../../src/booklet/make-booklet.ts'
import { checkPattern } from '../../../src/pattern/check-pattern.ts'

const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ')

function linesOf(rows: readonly string[], more: readonly string[] = []): readonly RowLine[] {
  const text = ['---', 'title: Piece', 'terms: US', 'version: 1.2.0', 'conventions: { turning-chains: { sc: not counted } }', ...more, 'pieces:', '  - name: Front', '    rows: |', ...rows.map((row) => `      ${row}`), '---', ''].join('\n')
  return makeBooklet(checkPattern({ path: 'piece.md', text })).parts.flatMap(({ lines }) => lines).filter((line): line is RowLine => line.kind === 'row')
}

// Sums by hand: 4 × (8 + 1) = 36 stitches over 40, and 3 after it.
const long = ['Foundation: Ch 44.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (43)']

describe('counts on the way through a row', () => {
  test('stand where work follows a repeat', () => {
    const [, row] = linesOf([...long, 'Row 2: Ch 1, turn, [sc in next 8 sts, sc2tog] 4 times, sc in last 3 sts. (39)'])
    expect(plain(row?.checkpoint)).toBe('After the repeat: 36.')
  })

  // 1 + 2 × 5 = 11; 11 + 3 + 4 × 5 = 34; 34 + 9 = 43.
  test('one for each repeat that is followed by more', () => {
    const [, row] = linesOf([...long, 'Row 2: Ch 1, turn, sc in first st, [sc in next 5 sts] twice, sc in next 3 sts, [sc in next 5 sts] 4 times, sc in last 9 sts. (43)'])
    expect(plain(row?.checkpoint)).toBe('After the 1st repeat: 11, after the 2nd: 34.')
  })

  test('none in a row that ends with its repeat, and none in a short one', () => {
    expect(linesOf([...long, 'Row 2: Ch 1, turn, sc in first 3 sts, *sc in next 8 sts, sc2tog; rep from * across. (39)'])[1]?.checkpoint).toBeUndefined()
    expect(linesOf(['Foundation: Ch 9.', 'Row 1: Sc in 2nd ch from hook and in each ch across. (8)', 'Row 2: Ch 1, turn, [sc in next 2 sts] 3 times, sc in last 2 sts. (8)'])[1]?.checkpoint).toBeUndefined()
  })
})

describe('a row that a version corrected', () => {
  const rows = [...long, 'Rows 2-4: Ch 1, turn, sc in each st across. (43)', 'Row 5: Ch 1, turn, sc in each st across. (43)']
  const changes = (what: string, version = '1.2.0') => ['changes:', `  - { version: ${version}, date: 2026-11-20, what: ${what} }`, '  - { version: 1.0.0, date: 2026-11-01, what: First release. }']

  test('says what it was, and no other row does', () => {
    expect(linesOf(rows, changes('"Front, Row 5: was 42."')).map(({ corrected }) => plain(corrected))).toEqual([undefined, undefined, 'Corrected in version 1.2.0: was 42.'])
  })

  test('a row of a range marks the range, and one sentence speaks of one row', () => {
    expect(linesOf(rows, changes('"Row 3: had no turn. Row 5: was 42."')).map(({ corrected }) => plain(corrected))).toEqual([
      undefined, 'Corrected in version 1.2.0: had no turn.', 'Corrected in version 1.2.0: was 42.',
    ])
  })

  test('older versions and the first release mark none', () => {
    expect(linesOf(rows, changes('"Row 5: was 42."', '1.1.0')).some(({ corrected }) => corrected !== undefined)).toBe(false)
    expect(linesOf(rows, ['changes:', '  - { version: 1.2.0, date: 2026-11-20, what: First release with Row 5. }']).some(({ corrected }) => corrected !== undefined)).toBe(false)
  })
})

// 8 × 2 of B and 8 × 1 of A, as the designer counts them.
test('stitches that are counted by yarn stand beside the count', () => {
  const rows = linesOf(['Rnd 1: With A, make an adjustable ring; 24 sc in ring, join with sl st in first sc. (24)',
    'Rnd 2: Ch 1, *with B, sc in next 2 sts; with A, sc in next st; rep from * around, join with sl st in first sc. (16 B, 8 A)'], ['materials: { yarns: [{ letter: A }, { letter: B }] }'])
  expect(rows[1]?.stitches).toEqual(['24'])
  expect(plain(rows[1]?.spaces)).toBe('16 B, 8 A')
})
