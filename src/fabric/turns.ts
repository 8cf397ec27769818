import type { Instruction } from '../notation/syntax.ts'

/** A turn said before the row's first stitch: true, or false for `do not turn`; undefined where nothing is said. */
export function turnBefore(items: readonly Instruction[]): boolean | undefined {
  for (const item of items) {
    if (item.node === 'turn') return item.turns
    if (item.node !== 'chain' && item.node !== 'aside') return undefined
  }
  return undefined
}

/** The same, said after the row's last stitch: `turn`, also before what is left (`turn, leaving the 4 sl sts unworked`). */
export function turnAfter(items: readonly Instruction[]): boolean | undefined {
  const last = items.findLast((item) => item.node !== 'aside' && item.node !== 'chain' && item.node !== 'leave')
  return last?.node === 'turn' && items.length > 1 ? last.turns : undefined
}
