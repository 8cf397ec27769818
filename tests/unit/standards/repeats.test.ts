import { describe, expect, test } from 'vitest'
import { workRows } from '../../support/work-rows.ts'

// The meaning of repeats. `rep from * N more times` is N + 1 (border handbook, zanotowane.pl 837 and 653: "four more times" is
// five); a bracket `N times` is N in all (a publisher's page on symbols, anniescatalog.com); `**` cuts the last repeat short and
// `ending last rep` replaces its end (the same handbook). `rep from * N times` is read both ways in the trade.

/** How often the one repeat of a row over so many stitches is worked. */
function timesOf(text: string, last: number): number {
  const row = workRows(`Row 1: Ch 1, turn, ${text}`, `last=${last}`).row('Row 1')
  expect(row.repeats).toHaveLength(1)
  return row.repeats[0]!.times
}

describe('how often', () => {
  test.each([
    ['*sc in next 3 sts, 2 sc in next st; rep from * four more times. (25)', 20, 5],
    ['*sc in next 3 sts, 2 sc in next st; rep from * 4 more times. (25)', 20, 5],
    ['*sc in next 3 sts, 2 sc in next st; rep from * once more. (10)', 8, 2],
    ['*sc in next 3 sts, 2 sc in next st; rep from * twice more. (15)', 12, 3],
    ['[sc in next 3 sts, 2 sc in next st] 4 times. (20)', 16, 4],
    ['(sc in next 3 sts, 2 sc in next st) 4 times. (20)', 16, 4],
    ['[sc in next 3 sts, 2 sc in next st] twice. (10)', 8, 2],
    ['*sc in next 3 sts, 2 sc in next st; rep from * across. (35)', 28, 7],
    ['*sc in next 3 sts, 2 sc in next st; rep from * to end. (35)', 28, 7],
    ['*sc in next 3 sts, 2 sc in next st; rep from * to last 2 sts, sc in last 2 sts. (37)', 30, 7],
  ])('%s', (text, last, times) => {
    expect(timesOf(text, last)).toBe(times)
  })

  test('rep from * 5 times: the stitches decide between 6 and 5', () => {
    expect(timesOf('*sc in next 3 sts, 2 sc in next st; rep from * 5 times. (30)', 24)).toBe(6)
    expect(timesOf('*sc in next 3 sts, 2 sc in next st; rep from * 5 times. (25)', 20)).toBe(5)
  })

  test('rep from * 5 times over a number that neither reading fits is an error', () => {
    const { diagnostics, row } = workRows('Row 1: Ch 1, turn, *sc in next 3 sts, 2 sc in next st; rep from * 5 times. (35)', 'last=28')
    expect(row('Row 1').verdict).not.toBe('adds-up')
    expect(diagnostics.filter(({ severity }) => severity === 'error')).toHaveLength(1)
  })

  test('ending last rep at **: the last is cut short', () => {
    // 5 in the whole repeat and 4 in the last: 3 x 5 + 4 = 19 over; 3 x 3 + 3 = 12 sc, 3 dc, 4 spaces.
    const { row, diagnostics } = workRows(
      'Rnd 1: *Sc in next 3 sts, ch 2, skip next st**, dc in next st; rep from * around, ending last rep at **. (12 sc, 3 dc, 4 ch-2 sps)', 'lastround=19')
    const { worksOver, kinds, spaces } = row('Rnd 1')
    expect({ worksOver, kinds, spaces }).toEqual({ worksOver: 19, kinds: { sc: 12, dc: 3 }, spaces: { 'ch-2': 4 } })
    expect(diagnostics).toEqual([])
  })

  test('a block between two stars', () => {
    const { row, diagnostics } = workRows('Row 1: Ch 1, turn, *sc in next 3 sts, dc in next st*; rep from * to * 4 more times. (20)', 'last=20')
    expect([row('Row 1').worksOver, row('Row 1').kinds, diagnostics]).toEqual([20, { sc: 15, dc: 5 }, []])
  })

  test('a group in one place is no repeat', () => {
    const { row, diagnostics } = workRows('Row 1: Ch 1, turn, sc in next 2 sts, (dc, ch 2, dc) in next st, sc in next 2 sts. (6 sts, 1 ch-2 sp)', 'last=5')
    expect([row('Row 1').worksOver, row('Row 1').makes, diagnostics]).toEqual([5, 6, []])
  })

  test('nested: the innermost first', () => {
    // American publisher's page on brackets: 2 x (2 + 2 x 2) = 12 over, 2 x (2 + 2 x 3) = 16 made.
    const { row, diagnostics } = workRows('Row 1: Ch 1, turn, [sc in next 2 sts, (sc in next st, 2 sc in next st) twice] twice. (16)', 'last=12')
    expect([row('Row 1').worksOver, row('Row 1').makes, diagnostics]).toEqual([12, 16, []])
  })
})

describe('rows again', () => {
  // cnas.ca: "rep Rows 2-5" works 2, 3, 4, 5, 2, 3, 4, 5 … and Row 1 only once.
  test('a block of rows is worked in its order, and Row 1 only once', () => {
    const rows = [
      'Row 1: Ch 1, turn, sc in each st across. (9)',
      'Row 2: Ch 1, turn, hdc in each st across. (9)',
      'Row 3: Ch 2 (does not count as a st), turn, dc in each st across. (9)',
      'Row 4: Ch 1, turn, esc in each st across. (9)',
      'Row 5: Ch 3 (does not count as a st), turn, tr in each st across. (9)',
      'Rows 6-13: Rep Rows 2-5.',
    ].join('\n')
    const { row, diagnostics } = workRows(rows, 'last=9')
    expect(diagnostics).toEqual([])
    expect([6, 7, 8, 9, 10, 11, 12, 13].map((number) => Object.keys(row(`Row ${number}`).kinds)[0])).toEqual(
      ['hdc', 'dc', 'esc', 'tr', 'hdc', 'dc', 'esc', 'tr'])
  })
})
