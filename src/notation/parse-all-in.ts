import { takeTarget } from './parse-target.ts'
import type { Reader } from './reader.ts'
import type { Instruction, Work } from './syntax.ts'

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
  const begin = before.slice(other + 1).findIndex(({ node }) => node === 'work')
  return begin < 0 || last?.node !== 'work' ? undefined : other + 1 + begin
}

/** `1 sc, ch 2, 1 sc`: stitches on both sides of a chain, with no place of their own. */
export function isMirrored(items: readonly Instruction[]): boolean {
  const [first, middle, last] = items
  if (items.length !== 3 || first?.node !== 'work' || middle?.node !== 'chain' || last?.node !== 'work') return false
  return first.stitch === last.stitch && first.count !== undefined && first.count.values.join() === last.count?.values.join() && !first.target && !first.over
}

/** `1 sc, ch 2, 1 sc in the corner sp`, `one sc, two chains and one sc in the last st`: of a corner, all of it in that place. Gives the instructions before it with the corner in one. */
export function parseCornerList(before: readonly Instruction[]): readonly Instruction[] | undefined {
  const list = before.slice(-3)
  const last = list[2]
  const target = last?.node === 'work' ? last.target : undefined
  const corner = target && !target.count && target.walk !== 'each' && (target.thing?.where === 'corner' || /^(?:first|last)$/.test(target.walk))
  if (!corner || !isMirrored(list)) return undefined
  const { target: _, ...inCorner } = last as Work
  return [...before.slice(0, -3), { node: 'group', items: [list[0]!, list[1]!, inCorner], target, start: list[0]!.start, end: last!.end }]
}
