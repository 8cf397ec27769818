import type { Instruction } from './syntax.ts'

/** What a row may begin with before its first stitch. */
const leadsIn = (item: Instruction): boolean => item.node === 'aside' || item.node === 'start' || item.node === 'turn' || item.node === 'skip' || item.node === 'work' && item.stitch === 'sl st'

/**
 * `Sl st in next ch-2 sp, (ch 3, 2 dc, ch 2, 3 dc) in same sp`: the chain that stands for the first stitch is written inside the brackets by some and before
 * them by others. It begins the row in either case.
 */
export function chainBeforeGroup(items: readonly Instruction[]): readonly Instruction[] {
  const at = items.findIndex((item) => !leadsIn(item))
  const group = items[at]
  if (group?.node !== 'group' || !/^(?:same|next|first)$/.test(group.target.walk) || group.target.count !== undefined) return items
  const [chain, ...rest] = group.items
  const most = Math.max(0, ...(chain?.node === 'chain' ? chain.count.values : []))
  if (chain?.node !== 'chain' || most === 0 || most > 6 || !rest.some((item) => item.node === 'work' && item.stitch !== 'sl st')) return items
  return [...items.slice(0, at), chain, { ...group, items: rest }, ...items.slice(at + 1)]
}
