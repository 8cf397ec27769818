import type { Part } from './laid-row.ts'
import type { Opening } from './opening.ts'

/** So many row-ends of a folded piece, from the row that it began with on. */
export interface FoldedPortion {
  readonly count: number
  readonly open: boolean
}

/** The openings of a piece that is folded side to side and closed in part: up the one side and down the other, with the seam at either end. */
export function openInFold(ring: readonly Part[], portions: readonly FoldedPortion[]): readonly Opening[] {
  const [one, other, ...more] = sidesOf(ring)
  const told = portions.reduce((sum, { count }) => sum + count, 0)
  if (!one || !other || more.length > 0 || one.length !== told || other.length !== told) return []
  const [up, down] = goesUp(one) ? [one, other] : [other, one]
  let from = 0
  return portions.flatMap(({ count, open }): readonly Opening[] => {
    const [begins, ends] = [from, (from += count)]
    const { row } = up.at(-1)!
    const seam: Part = { edge: 'seam', row, places: [] }
    return open && count > 0 ? [{ below: [seam, ...up.slice(begins, ends), seam, ...down.slice(told - ends, told - begins)], row }] : []
  })
}

/** Runs of row-ends between tops and undersides, each in the order of the ring. */
function sidesOf(ring: readonly Part[]): readonly (readonly Part[])[] {
  const first = ring.findIndex(({ edge }) => edge !== 'row-ends')
  const sides: Part[][] = []
  let before: Part['edge'] | undefined
  for (const part of [...ring.slice(first), ...ring.slice(0, Math.max(0, first))]) {
    if (part.edge === 'row-ends' && before !== 'row-ends') sides.push([])
    if (part.edge === 'row-ends') sides.at(-1)!.push(part)
    before = part.edge
  }
  return sides
}

const goesUp = (side: readonly Part[]): boolean => (side[0]?.row.number ?? 0) < (side.at(-1)?.row.number ?? 0)
