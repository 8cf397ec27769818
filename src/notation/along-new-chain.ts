import type { Instruction, Skip, Work } from './syntax.ts'
import type { Num } from './target.ts'

/**
 * Along a chain that the row has just made, the chains at the hook told apart from what is worked:
 *
 *   ch 6, skip first ch from hook, sc in each of the other 5 ch   ch 6, starting in 2nd ch from hook, sc in each of 5 ch   ch 6, sc 5, beginning in 2nd ch from hook
 *
 * Gives the instructions before it with the first stitch in its chain from the hook, and the others in the next ones.
 */
export function alongNewChain(items: readonly Instruction[]): readonly Instruction[] | undefined {
  const [chain, ...told] = lastWorked(items)
  const skip = told.find((item) => item.node === 'skip')
  const work = told.find((item) => item.node === 'work')
  const count = skip && work && chain?.node === 'chain' && isFromHook(skip) ? inChains(work, told[0] === work) : undefined
  if (!count) return undefined
  const { count: _, numberLast: __, ...stitch } = work as Work
  const span = { start: work!.start, end: work!.end }
  const nth = { ...skip!.count, values: skip!.count.values.map((value) => value + 1) }
  const first: Work = { ...stitch, target: { walk: 'from-hook', count: nth, ...span } }
  const others: Work = { ...stitch, target: { walk: 'next', count: { ...count, values: count.values.map((value) => value - 1) }, eachOf: true, thing: { kind: 'chain' }, ...span } }
  return [...items.filter((item) => item !== skip && item !== work), first, others]
}

/** The last three that are no asides. */
function lastWorked(items: readonly Instruction[]): readonly Instruction[] {
  const found: Instruction[] = []
  for (let index = items.length - 1; index >= 0 && found.length < 3; index -= 1) if (items[index]!.node !== 'aside') found.unshift(items[index]!)
  return found
}

const isFromHook = ({ thing, from, list, ofRow }: Skip): boolean => thing?.kind === 'chain' && /^(?:first|next)$/.test(from) && !list && ofRow === undefined

/** How many chains get a stitch, where it is one in each of several. */
function inChains({ target, count, stitch, over }: Work, bare: boolean): Num | undefined {
  const several = ({ values }: Num): boolean => values.every((value) => value > 1)
  if (over || /tog$|^(?:inc|dec)$/.test(stitch)) return undefined
  if (!target) return bare && count && several(count) ? count : undefined
  const each = target.walk === 'next' && target.thing?.kind === 'chain' && target.edge === undefined && target.count && (count === undefined || count.values.every((value) => value === 1))
  return each && several(target.count!) ? target.count : undefined
}
