import type { Group, Instruction } from '../notation/syntax.ts'
import { isStitch } from './place.ts'
import type { Walk } from './walk.ts'
import { skippedChains } from './work-stitches.ts'
import { workItems, type Rest } from './work-items.ts'
import { placesOf } from './places-of.ts'

/** `(2 dc, ch 2, 2 dc) in next ch-2 sp`: everything in one place, and so again for each place. */
export function workGroup(walk: Walk, item: Group, rest: Rest): void {
  const first = item.items.find(({ node }) => node === 'work')
  if (item.target.walk === 'from-hook' && first?.node === 'work') skippedChains(walk, item, first.stitch)
  placesOf(walk, item.target, item, rest, (index) => inOnePlace(walk, item.items, index))
}

/** Works instructions into the place at `index`, all of them. */
export function inOnePlace(walk: Walk, items: readonly Instruction[], index: number): void {
  const { at } = walk
  const from = walk.made.length
  const group = nextGroup(walk)
  walk.last = index
  walk.inPlace = index
  workItems(walk, items, { uses: 0, items: [], group, quiet: true })
  walk.inPlace = undefined
  walk.at = at
  walk.last = index
  noteGroup(walk, from, group)
}

/** A number of its own for each group, over the whole piece. */
export function nextGroup(walk: Walk): number {
  walk.groupCount += 1
  return walk.setting.rowIndex * 1_000_000 + walk.groupCount
}

/** Notes the group for counts by group, and its spaces between stitches as corners. */
export function noteGroup(walk: Walk, from: number, group: number): void {
  let stitches = 0
  for (let index = from; index < walk.made.length; index += 1) if (isStitch(walk.made[index]!)) stitches += 1
  // Spaces made in a ring lie between groups of the same ring: no corner differs from the others.
  if (walk.place(walk.last)?.kind === 'ring') return
  const before = walk.made[from - 1]
  // A counted beginning chain stands in the same place as the stitches that follow in it.
  const withChain = before?.turning && before.into !== undefined && before.into === walk.place(walk.last) ? 1 : 0
  if (stitches + withChain > 1) walk.groups.push({ name: 'group', size: stitches + withChain })
  for (let index = from; index < walk.made.length; index += 1) {
    const place = walk.made[index]!
    const inside = place.kind === 'space' && place.group === group && (index > from || withChain > 0) && index < walk.made.length - 1
    if (inside) walk.made[index] = { ...place, corner: true }
  }
}
