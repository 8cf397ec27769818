import { edgeOfPlaces } from '../notation/joined-places.ts'
import type { Instruction, JoinedPlaces } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import type { WorkedRow } from './worked-row.ts'

/** Where a row is joined at its end to the edge that it is worked sideways on to. */
export function joinedOf(items: readonly Instruction[], size: number): Pick<WorkedRow, 'joined'> {
  const join = items.findLast((item) => item.node === 'join' && item.along !== undefined)
  if (join?.node !== 'join' || !join.along) return {}
  const { piece, edge, count, hand, row } = join.along
  return { joined: { piece, edge, count: inSize(count, size), ...(hand && { hand }), ...(row && { row: inSize(row, size) }), span: { start: join.start, end: join.end } } }
}

/** Where the yarn is joined for a band: in a place of the edge that it is worked on to, so that what is joined next lies behind it, or elsewhere; undefined where it is not joined. */
export function startOf(items: readonly Instruction[], edge: JoinedPlaces['edge']): 'on it' | 'elsewhere' | undefined {
  const start = items.find(({ node }) => node === 'start')
  if (start?.node !== 'start') return undefined
  const { target } = start
  return edgeOfPlaces(target) === edge && target.passing === undefined && target.thing?.where === undefined ? 'on it' : 'elsewhere'
}
