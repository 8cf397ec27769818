import type { Instruction } from '../notation/syntax.ts'
import type { Readings } from './readable.ts'
import type { RowToWork, RowTry } from './work-row.ts'

/**
 * `*sc in next 9 sc, 2 sc in next sc; rep from * 5 times more; 66 sc.`: where the row is at its end without the last number, that is its
 * total, and else work to do. A copy takes over the work alone.
 */
export function withItsTotal(row: RowToWork, isCopy: boolean, work: (row: RowToWork) => Readings): RowToWork {
  const at = row.items.findLastIndex((item) => item.node === 'work' && item.maybeTotal)
  const last = row.items[at]
  if (last?.node !== 'work' || !last.count) return row
  const totals = isCopy ? row.text.totals : [...row.text.totals, { kinds: [{ kind: last.stitch, count: last.count }], spaces: [], groups: [], start: last.start, end: last.end }]
  const without: RowToWork = { ...row, items: row.items.toSpliced(at, 1), text: { ...row.text, totals } }
  const { usual, others } = work(without)
  return usual && [usual, ...others].some((tried) => isAtItsEnd(tried, without.items)) ? without : row
}

/** Nothing is left to work, and nothing more was worked than there is. Along an edge nobody works so many stitches without a place. */
function isAtItsEnd({ leaves, troubles, along, comesOut }: RowTry, items: readonly Instruction[]): boolean {
  if (along || comesOut) return true
  return !troubles.some(({ kind }) => kind === 'left-over' || kind === 'overrun' || kind === 'does-not-divide') && (leaves === 0 || items.some(({ node }) => node === 'leave'))
}
