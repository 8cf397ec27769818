import { alongEdges } from './edge-for.ts'
import { onOtherEdge } from './on-other-edge.ts'
import type { Edge } from './place.ts'
import type { RowSetting } from './row-setting.ts'
import type { RowToWork, RowTry } from './work-row.ts'

/** `Join with sl st in first sc to form a round`: a round on the top of flat rows, and not along all their edges. */
export function closedToTube(toWork: RowToWork, setting: RowSetting, edge: Edge): RowTry | undefined {
  if (!setting.round || edge.round || !toWork.edge.outline || alongEdges(toWork.items)) return undefined
  const found = onOtherEdge({ ...toWork, edge }, setting, [{ edge, words: 'the round is worked on the last row, and closes the rows to a tube' }])
  return found && { ...found, tube: true }
}

/** Flat rows that stand on a whole round have a top and two sides: a round of stitches alone goes over the top. */
export function onRound({ outline }: Edge): boolean {
  return outline?.stretches.every(({ edge }) => edge === 'top' || edge === 'row-ends') === true
}
