import { describe, expect, test } from 'vitest'
import { workRows } from '../../support/work-rows.ts'

// Foundation-chain arithmetic. A first stitch in chain k leaves C - k + 1 worked stitches; the k - 1 skipped chains are one more
// stitch only when they count.

describe('printed foundation chains', () => {
  // The English pattern of a Japanese blog (note.com, tweed stitch): ch 16, 15 sc.
  test('ch 16, sc in the 2nd, is 15 sc', () => {
    const { row, diagnostics } = workRows('Ch 16.\nRow 1: Sc in 2nd ch from hook and in each ch across. (15 sc)')
    const { offers, worksOver, makes, kinds } = row('Row 1')
    expect({ offers, worksOver, makes, kinds }).toEqual({ offers: 16, worksOver: 16, makes: 15, kinds: { sc: 15 } })
    expect(diagnostics).toEqual([])
  })

  // Yarn-company leaflet CAC0129-010202M: "ch 2 does not count as hdc".
  test.each([[32, 30], [34, 32], [36, 34], [38, 36], [42, 40]])('ch %i, hdc in the 3rd, ch 2 not counted, is %i hdc', (chains, stitches) => {
    const rows = `Ch ${chains}.\nRow 1: Hdc in 3rd ch from hook and in each ch across. (${stitches} hdc)`
    const { row, diagnostics } = workRows(rows, 'turning=hdc:not')
    expect(row('Row 1').makes).toBe(stitches)
    expect(diagnostics).toEqual([])
  })

  // The same leaflet, with its list for five sizes: Ch 32 (34-36-38-42), 30 (32-34-36-40) hdc.
  test('the leaflet in its five sizes', () => {
    const rows = 'Ch 32 (34-36-38-42).\nRow 1: Hdc in 3rd ch from hook and in each ch across. (30 (32-34-36-40) hdc)'
    const { row, diagnostics } = workRows(rows, 'sizes=a,b,c,d,e turning=hdc:not')
    expect(['a', 'b', 'c', 'd', 'e'].map((size) => row('Row 1', size).makes)).toEqual([30, 32, 34, 36, 40])
    expect(diagnostics).toEqual([])
  })
})

describe('foundation chains by the law', () => {
  // Derived: worked = C - k + 1, and one more when the skipped chains count.
  test.each([
    ['ch 10, sc in the 2nd', 10, 'Sc in 2nd ch from hook and in each ch across.', 9],
    ['ch 12, dc in the 4th, the skipped 3 count', 12, 'Dc in 4th ch from hook (3 skipped ch count as dc) and in each ch across.', 10],
    ['ch 12, dc in the 4th, the skipped 3 do not count', 12, 'Dc in 4th ch from hook (3 skipped ch do not count as a st) and in each ch across.', 9],
    ['ch 14, tr in the 5th, counts', 14, 'Tr in 5th ch from hook (skipped ch count as tr) and in each ch across.', 11],
    ['ch 15, dtr in the 6th, counts', 15, 'Dtr in 6th ch from hook (skipped ch count as dtr) and in each ch across.', 11],
  ])('%s', (_, chains, text, stitches) => {
    const { row, diagnostics } = workRows(`Ch ${chains}.\nRow 1: ${text} (${stitches})`)
    const { worksOver, makes, verdict } = row('Row 1')
    expect({ worksOver, makes, verdict }).toEqual({ worksOver: chains, makes: stitches, verdict: 'adds-up' })
    expect(diagnostics).toEqual([])
  })

  // toruyuri.com: ch 10 and the turning chain; the base stitch is skipped when the chain counts: 10 stitches each time.
  test.each([
    ['Ch 11.', 'Sc in 2nd ch from hook and in each ch across.'],
    ['Ch 11.', 'Hdc in 3rd ch from hook (skipped ch count as hdc) and in each ch across.'],
    ['Ch 12.', 'Dc in 4th ch from hook (skipped ch count as dc) and in each ch across.'],
  ])('%s %s makes 10', (foundation, text) => {
    const { row, diagnostics } = workRows(`${foundation}\nRow 1: ${text} (10)`)
    expect(row('Row 1').makes).toBe(10)
    expect(diagnostics).toEqual([])
  })

  // Derived from a printed multiple (zanotowane.pl 719/2970): multiple of 3 + 2, add 1 for the base chain: 5 repeats are 17 and 18.
  test('a multiple of 3 + 2, add 1: 5 repeats', () => {
    const rows = [
      'Ch 18.',
      'Row 1: Sc in 2nd ch from hook and in each ch across. (17 sc)',
      'Row 2: Ch 1, turn, sc in first st, *sc in next 2 sts, hdc in next st; rep from * to last st, sc in last st. (12 sc, 5 hdc)',
    ].join('\n')
    const { row, diagnostics } = workRows(rows)
    expect([row('Row 1').makes, row('Row 2').kinds]).toEqual([17, { sc: 12, hdc: 5 }])
    expect(diagnostics).toEqual([])
  })

  test('one off is an error', () => {
    expect(workRows('Ch 16.\nRow 1: Sc in 2nd ch from hook and in each ch across. (16 sc)').diagnostics.map(({ code }) => code)).toEqual(['total-mismatch'])
    expect(workRows('Ch 16.\nRow 1: Sc in 2nd ch from hook and in each ch across. (14 sc)').diagnostics.map(({ code }) => code)).toEqual(['total-mismatch'])
  })
})

describe('starting rounds', () => {
  // Yarn-company leaflet RHC0101-021719M: Rnd 1 ch 5 counts as tr (so it calls its dtr), 19 more, 20; Rnd 2 ch 8 is a stitch and ch 3.
  test('a printed doily: 20 stitches, then 20 spaces', () => {
    const rows = [
      'Ch 6, join with sl st in first ch to form a ring.',
      'Rnd 1: Ch 5 (counts as dtr), 19 dtr in ring, join in top of ch-5. (20 dtr)',
      'Rnd 2: Ch 8 (counts as dtr and ch 3), *dtr in next st, ch 3; rep from * around, join in 5th ch of ch-8. (20 dtr, 20 ch-3 sps)',
    ].join('\n')
    const { row, diagnostics } = workRows(rows)
    expect([row('Rnd 1').makes, row('Rnd 2').makes, row('Rnd 2').spaces]).toEqual([20, 20, { 'ch-3': 20 }])
    expect(diagnostics).toEqual([])
  })
})
