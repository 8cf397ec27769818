import type { PieceFacts } from '../../checks/facts.ts'
import type { WrittenEntry } from '../../fabric/real-rows.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import type { Instruction } from '../../notation/syntax.ts'

/** The written row whose words a real row works: its own, or those of the row that it copies. */
export function wordsOf({ entries }: PieceFacts, row: WorkedRow): WrittenEntry | undefined {
  const start = row.written.copies ?? row.written.span.start
  return entries.find(({ span }) => span.start === start)
}

/** A turn said before the row's first stitch: true, or false for `do not turn`. */
export function turnBefore(items: readonly Instruction[]): boolean | undefined {
  for (const item of items) {
    if (item.node === 'turn') return item.turns
    if (item.node !== 'chain' && item.node !== 'aside') return undefined
  }
  return undefined
}

/** A turn said after the row's last stitch. */
export function turnAfter(items: readonly Instruction[]): boolean | undefined {
  const last = items.findLast((item) => item.node !== 'aside' && item.node !== 'chain')
  return last?.node === 'turn' && items.length > 1 ? last.turns : undefined
}

/** Whether a round is closed by a join. */
export function joins(items: readonly Instruction[]): boolean {
  return items.some((item) => item.node === 'join' || item.node === 'work' && item.joins === true)
}
