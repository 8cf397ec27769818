import type { Blocks } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import { isSpace } from './place.ts'
import type { Walk } from './walk.ts'

/** Chains of an open square, and stitches that fill a solid one between its posts. */
const fill = 2

/** Works squares of filet, or tiles that go from corner to corner. */
export function workBlocks(walk: Walk, item: Blocks): void {
  const count = inSize(item.count, walk.setting.size)
  for (let pass = 0; pass < count && !walk.overrun; pass += 1) {
    if (item.of === 'tile') tile(walk)
    else square(walk, item, item.of === 'solid')
  }
}

/** A square stands between two posts and shares each with its neighbour: its fill, over 2 stitches or over a space, and a post. */
function square(walk: Walk, item: Blocks, filled: boolean): void {
  const stitch = walk.made.find(({ turning }) => turning)?.kind ?? 'dc'
  const below = walk.place(walk.at)
  const overSpace = below !== undefined && isSpace(below)
  if (!filled) walk.makeChains(fill, undefined)
  for (let index = 0; index < (overSpace ? 1 : fill); index += 1) {
    const into = walk.place(walk.take(walk.at, item))
    for (let each = 0; filled && each < (overSpace ? fill : 1); each += 1) walk.make({ kind: stitch, into })
  }
  walk.make({ kind: stitch, into: walk.place(walk.take(walk.at, item)) })
  walk.groups.push({ name: 'square', size: fill + 1 })
}

/** A tile is 3 dc on a loop of 3 chains. A row of tiles goes along the whole edge, with a tile more or less than the row below. */
function tile(walk: Walk): void {
  walk.at = Math.max(walk.at, walk.end)
  walk.makeChains(3, undefined)
  for (let stitch = 0; stitch < 3; stitch += 1) walk.make({ kind: 'dc' })
}
