import type { Instruction } from './syntax.ts'

const separate = /\b(?:separate|spare|extra|another|new|second|2nd|short) (?:length|strand|ball|piece|end|bit|oddment)\b|\b(?:spare|separate) (?:yarn|thread)\b/
const ended = /\b(?:fasten(?:ed)? off|fo|cut|break|end off|set aside|leave it)\b/

/** `Join with sl st in first st of Row 12`: a slip stitch that only fastens the strand. */
const joins = (item: Instruction): boolean => item.node === 'start' || item.node === 'join' || item.node === 'work' && item.stitch === 'sl st'

/** Whether words make such a chain and nothing else. */
export function makesSeparateChain(items: readonly Instruction[]): boolean {
  const ends = items.some((item) => item.node === 'aside' && ended.test(item.words ?? ''))
  return ends && items.some((item) => item.node === 'aside' && separate.test(item.words ?? '')) && items.filter(({ node }) => node === 'chain').length === 1
    && items.every((item) => item.node === 'aside' || item.node === 'chain' || joins(item))
}

/**
 * `With a separate length of yarn, join with sl st in first hdc (the far end), ch 12, fasten off.` before the row itself: the chain lies where
 * the row comes to it at its end, and is made there: `hdc in each of the 12 ch`.
 */
export function chainAtFarEnd(items: readonly Instruction[]): readonly Instruction[] {
  const from = items.findIndex((item) => item.node === 'aside' && separate.test(item.words ?? ''))
  const chain = items.findIndex((item, index) => index > from && item.node === 'chain')
  const end = items.findIndex((item, index) => index > chain && item.node === 'aside' && ended.test(item.words ?? ''))
  if (from < 0 || chain < 0 || end < 0) return items
  const made = items.slice(from, end + 1)
  const plain = made.every((item, index) => item.node === 'aside' || joins(item) || from + index === chain) && items.slice(0, from).every(({ node }) => node === 'aside')
  const into = items.findLastIndex((item) => item.node === 'work' && item.target?.thing?.kind === 'chain' && item.target.count !== undefined)
  const worksBefore = items.slice(end, into).some(({ node }) => node === 'work')
  if (!plain || !worksBefore) return items
  return [...made.filter(({ node }) => node === 'aside'), ...items.slice(end + 1, into), items[chain]!, ...items.slice(into)]
}

/**
 * `Sc in each sc across. With a spare length of yarn, join with a sl st in the first sc of this row, ch 5, and fasten off. With the working yarn, ch 6 and
 * turn.`: the spare chain is one of the next row, which works along it.
 */
export function separateAtEnd(items: readonly Instruction[]): { readonly own: readonly Instruction[]; readonly next: readonly Instruction[] } {
  const from = items.findIndex((item) => item.node === 'aside' && separate.test(item.words ?? ''))
  const worked = items.findLastIndex(({ node }) => node === 'work' || node === 'group' || node === 'repeat')
  const end = items.findIndex((item, index) => index > from && item.node === 'aside' && ended.test(item.words ?? ''))
  if (from < 0 || worked < 0 || worked > from && !joins(items[worked]!) || items.slice(0, from).every(({ node }) => node !== 'work' && node !== 'group' && node !== 'repeat') || end < 0 || !makesSeparateChain(items.slice(from, end + 1))) return { own: items, next: [] }
  return { own: [...items.slice(0, from), ...items.slice(end + 1)], next: items.slice(from, end + 1) }
}
