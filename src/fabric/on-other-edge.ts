import { saidCount, type OtherEdge } from './after-slip.ts'
import { asUsual, everyReading } from './readable.ts'
import type { RowSetting } from './row-setting.ts'
import type { RowToWork, RowTry } from './work-row.ts'

/** The row on the first of other edges on which it comes out. */
export function onOtherEdge(toWork: RowToWork, setting: RowSetting, others: readonly OtherEdge[]): RowTry | undefined {
  for (const other of others) {
    const { usual, others: readings } = everyReading({ ...toWork, edge: other.edge }, setting)
    const found = usual?.comesOut ? usual : readings[0]
    if (found) return because(found, other)
  }
  return undefined
}

/** How many places a row asks for, or stitches it says to make, where its edge has fewer; else 0. */
export function wantsMore({ troubles, comparison, makes }: RowTry): number {
  const overrun = troubles.find(({ kind }) => kind === 'overrun')
  const said = saidCount(comparison.says) ?? 0
  return overrun?.kind === 'overrun' ? Math.max(1, overrun.wants, said) : said > makes ? said : 0
}

/** On how many of the larger edges that a row comes nearest to its other readings are tried. */
const mostNear = 3

/**
 * A row that asks for more than its own edge has, on the first of larger edges on which it comes out. Where there is none, and its own
 * edge runs out, it is worked on the one that it comes nearest to: what is wrong is told by that.
 */
export function onLargerEdge(toWork: RowToWork, setting: RowSetting, chosen: RowTry, others: readonly OtherEdge[]): RowTry | undefined {
  const tries = others.flatMap((other) => {
    const tried = asUsual({ ...toWork, edge: other.edge }, setting)
    return tried ? [{ other, tried }] : []
  })
  const out = tries.find(({ tried }) => tried.comesOut)
  if (out) return because(out.tried, out.other)
  const near = tries.toSorted((one, two) => offBy(one.tried) - offBy(two.tried)).slice(0, mostNear)
  const found = onOtherEdge(toWork, setting, near.map(({ other }) => other))
  if (found || !near[0] || !chosen.troubles.some(({ kind }) => kind === 'overrun')) return found
  return because(near[0].tried, near[0].other)
}

/** By how many places a row misses the end of its edge. */
function offBy({ troubles }: RowTry): number {
  return troubles.reduce((sum, trouble) => sum + (trouble.kind === 'overrun' ? Math.abs(trouble.wants - trouble.offers) : trouble.kind === 'left-over' ? trouble.count : 1), 0)
}

const because = (tried: RowTry, { words }: OtherEdge): RowTry => ({ ...tried, assumed: [words, ...tried.assumed] })
