import type { Instruction } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import type { WorkedRow } from './worked-row.ts'

/** Where a row is joined at its end to the edge that it is worked sideways on to. */
export function joinedOf(items: readonly Instruction[], size: number): Pick<WorkedRow, 'joined'> {
  const join = items.findLast((item) => item.node === 'join' && item.along !== undefined)
  if (join?.node !== 'join' || !join.along) return {}
  const { piece, edge, count, hand, row } = join.along
  return { joined: { piece, edge, count: inSize(count, size), ...(hand && { hand }), ...(row && { row: inSize(row, size) }), span: { start: join.start, end: join.end } } }
}
