import type { Instruction } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import type { Walk } from './walk.ts'

/** Places that the instructions from `from` on will use; the sums are kept, so that each list is added up once. */
export function usesFrom(items: readonly Instruction[], from: number, walk: Walk): number {
  if (items.length - from < 4) return usesOf(items.slice(from), walk)
  let sums = walk.usesAfter.get(items)
  if (!sums) {
    sums = new Array<number>(items.length + 1).fill(0)
    for (let index = items.length - 1; index >= 0; index -= 1) sums[index] = sums[index + 1]! + usesOf(items.slice(index, index + 1), walk)
    walk.usesAfter.set(items, sums)
  }
  return chainFirst(items, from) ? usesOf(items.slice(from), walk) : sums[from]!
}

/** Stitches in a chain that is made between need the instructions read in their order. */
function chainFirst(items: readonly Instruction[], from: number): boolean {
  for (let index = from; index < Math.min(items.length, from + 12); index += 1) if (items[index]!.node === 'chain' && items[index + 1]?.node === 'work') return (items[index + 1] as { target?: { thing?: { kind: string } } }).target?.thing?.kind === 'chain'
  return false
}

/**
 * Places that instructions will use up, as far as the words alone tell. Instructions that go to the end use what is left and count
 * as 0. It is what a fill keeps back for the instructions after it.
 */
export function usesOf(items: readonly Instruction[], walk: Walk): number {
  let sum = 0
  let chained = false
  for (const item of items) {
    // Stitches in a chain that is made after this use places that are not there yet.
    if (item.node === 'chain') chained = true
    else if (!(chained && item.node === 'work' && item.target?.thing?.kind === 'chain')) sum += usesOfOne(item, walk)
  }
  return sum
}

function usesOfOne(item: Instruction, walk: Walk): number {
  const { size, lexicon } = walk.setting
  if (item.node === 'skip') {
    if (item.list) return item.list.reduce((sum, { count }) => sum + inSize(count, size), 0)
    return item.from === 'first' || item.from === 'same' ? 0 : inSize(item.count, size)
  }
  if (item.node === 'repeat') {
    const { times } = item
    const unit = usesOf(item.items, walk)
    if (times.kind === 'in-all') return unit * inSize(times.count, size)
    if (times.kind === 'more' || times.kind === 'either') return unit * (inSize(times.count, size) + 1)
    return times.kind === 'once' ? unit : 0
  }
  if (item.node === 'blocks') return item.of === 'tile' ? 0 : 3 * inSize(item.count, size)
  // What lies on another part is no place of this one.
  if ((item.node === 'group' || item.node === 'work') && item.target?.ofPart !== undefined && item.target.ofPart !== walk.onPart) return 0
  if (item.node === 'group') return targetUses(item.target, size)
  if (item.node !== 'work') return 0
  const each = item.stitch === 'inc' ? 1 : item.stitch === 'dec' ? (item.of ?? lexicon.stitch('dec')?.worksOver ?? 2) : (lexicon.stitch(item.stitch)?.worksOver ?? 1)
  if (item.over) return inSize(item.over, size) * (item.target ? 1 : item.count ? inSize(item.count, size) : 1)
  if (!item.target) return each * (item.count ? inSize(item.count, size) : 1)
  const uses = targetUses(item.target, size)
  return each > 1 && uses === 1 ? each : uses
}

function targetUses(target: Extract<Instruction, { node: 'group' }>['target'], size: number): number {
  if (target.walk === 'next' || target.walk === 'last') return target.count ? inSize(target.count, size) : 1
  return target.walk === 'nth' || target.walk === 'marked' ? 1 : 0
}
