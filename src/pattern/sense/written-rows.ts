import type { PieceFacts } from '../../checks/facts.ts'
import type { WrittenEntry } from '../../fabric/real-rows.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import type { Instruction } from '../../notation/syntax.ts'

/** The written row whose words a real row works: its own, or those of the row that it copies. */
export function wordsOf({ entries }: PieceFacts, row: WorkedRow): WrittenEntry | undefined {
  const start = row.written.copies ?? row.written.span.start
  return entries.find(({ span }) => span.start === start)
}

/** Whether a round is closed by a join. */
export function joins(items: readonly Instruction[]): boolean {
  return items.some((item) => item.node === 'join' || item.node === 'work' && item.joins === true)
}
