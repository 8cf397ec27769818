import { chainAtFarEnd } from '../notation/separate-chain.ts'
import type { Instruction } from '../notation/syntax.ts'
import type { RealRow, WrittenEntry } from './real-rows.ts'

/** `Note: With right side facing, rejoin yarn at the lower edge.` above a row: where it begins the row itself does not tell. */
export function joinedAbove({ headed, heading = '' }: WrittenEntry): boolean {
  return headed === true && /\b(?:re)?(?:join|attach)(?:ing)?\s+(?:an?\s+|the\s+|new\s+|main\s+|second\s+)*(?:yarn|thread|ball|colou?r|[a-f])\b|\b(?:yarn|thread) (?:is )?(?:re)?(?:joined|attached)\b/.test(heading)
}

/** `skip 18 sts after the first flap`, `skip next 20 unworked hdc`: it begins on what another part has left. */
export function beginsBehind(items: readonly Instruction[]): boolean {
  return items.some((item) => item.node === 'aside' && item.behind === true || item.node === 'skip' && item.unworked === true)
}

/** `skip next 14 sts of Row 25, rejoin yarn`: counted from where the part before it ended. */
export function skipsFirst(items: readonly Instruction[]): boolean {
  const first = items.find(({ node }) => node !== 'aside' && node !== 'turn')
  return first?.node === 'skip' && first.from === 'next'
}

/** `Rejoin yarn in first unworked sc of Rnd 4`: in what others have left. */
export function joinsInLeft(items: readonly Instruction[]): boolean {
  const start = items.findIndex(({ node }) => node === 'start')
  return start > 0 && items.slice(0, start).some((item) => item.node === 'aside' && /\b(?:(?:re)?join|(?:re)?attach)\w*\b.*\b(?:unworked|free|unused|remaining)\b/.test(item.words ?? ''))
}

/** It skips stitches that others have left, and the yarn is joined behind them. */
export function rejoinsFartherOn(items: readonly Instruction[]): boolean {
  return skipsFirst(items) && items.some(({ node }) => node === 'start')
}

/** What an entry tells of its row, where a remark over it joins the yarn included. */
export function wordsOf({ opening = [], read }: WrittenEntry): readonly Instruction[] {
  return [...opening, ...read.items]
}

/** The row with what the remark over it tells of its beginning. */
export function withOpening(row: RealRow): RealRow {
  return row.opening ? { ...row, items: chainAtFarEnd([...row.opening, ...row.items]) } : row
}

/** The row joins the yarn itself, or begins with what it skips. */
export function tellsItsBeginning(items: readonly Instruction[]): boolean {
  return items.some((item) => item.node === 'start' || item.node === 'join' && item.piece === true) || skipsFirst(items)
}
