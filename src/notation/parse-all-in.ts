import { takeTarget } from './parse-target.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/**
 * The place behind what is worked there, told for all of it:
 *
 *   5 tr all in next st   2 tr, 2 ch, 2 tr, all into same sp   (sc, ch 2, sc) all in corner sp
 *
 * Gives the instructions before it with those of that place in one; nothing where no such words come.
 */
export function parseAllIn(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const from = beginOfGroup(before)
  if (from === undefined || !/^(all|both)$/.test(reader.word())) return undefined
  const { at } = reader
  reader.at += 1
  reader.take('of', 'them|these|it|which')
  reader.take('worked|made|going|together')
  const target = /^(in|into)$/.test(reader.word()) ? takeTarget(reader) : undefined
  if (!target || target.count || target.walk === 'each' || target.thing === undefined && !/^(ring|same)$/.test(target.walk)) {
    reader.at = at
    return undefined
  }
  const first = before[from]!
  const items = first.node === 'repeat' ? first.items : before.slice(from).map((item) => (item.node === 'work' ? { ...item, numberLast: false } : item))
  return [...before.slice(0, from), { node: 'group', items, target, start: first.start, end: reader.end }]
}

/** Where the stitches and chains at the end begin that have no place yet; a chain before the first of them is none of theirs. */
function beginOfGroup(before: readonly Instruction[]): number | undefined {
  const last = before.at(-1)
  if (last?.node === 'repeat') return last.times.kind === 'once' ? before.length - 1 : undefined
  const other = before.findLastIndex((item) => item.node !== 'chain' && !(item.node === 'work' && !item.target && !item.over && !item.joins))
  const begin = before.findIndex((item, index) => index > other && item.node === 'work')
  return begin < 0 || last?.node !== 'work' ? undefined : begin
}
