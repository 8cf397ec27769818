import type { Instruction } from '../notation/syntax.ts'
import type { RealRow } from './real-rows.ts'

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

/** `Rows 15-18: Ch 1, turn, sc in each st across. Do not turn.`: that is said of the last of them. */
export function turnedOn(items: readonly Instruction[], last: boolean): readonly Instruction[] {
  return !last && items.some((item) => item.node === 'turn' && item.turns) ? items.filter((item) => item.node !== 'turn' || item.turns) : items
}

/**
 * The side that faces the maker while a row is worked: as it says, or from the row before once one was said. Flat rows are turned unless
 * words before this one or behind that one say not; a border as it meets its outline; a round is `turned` or not.
 */
export function sideOf({ side, items, round }: RealRow, before: { readonly side?: RealRow['side']; readonly stays: boolean }, turned: boolean, border?: { readonly turned: boolean }): RealRow['side'] {
  if (side || !before.side) return side
  const turns = border ? border.turned : round ? turned : (turnBefore(items) ?? !before.stays)
  return turns ? (before.side === 'RS' ? 'WS' : 'RS') : before.side
}
