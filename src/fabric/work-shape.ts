import type { Shape } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import type { Walk } from './walk.ts'

/** Shaping told by its sum: every place is used, and the row has so many stitches more or fewer. */
export function workShape(walk: Walk, item: Shape): void {
  const { size } = walk.setting
  const count = item.count ? inSize(item.count, size) : 1
  const change = (item.places === 'each-end' ? 2 * count : count) * (item.by === 'inc' ? 1 : -1)
  const room = walk.left
  if (room === 0) return afterFill(walk, change)
  const makes = item.to ? inSize(item.to, size) : room + change
  if (makes < 1 || item.by === 'dec' && room < 2 * count) {
    walk.trouble({ kind: 'overrun', span: item, wants: 2 * count, offers: room })
    return
  }
  if (item.to && item.count && makes !== room + change) walk.assumed.push(`${room} and ${Math.abs(change)} give ${room + change}, not ${makes}`)
  const from = walk.at
  walk.at = walk.edge.length
  walk.last = walk.edge.length - 1
  for (let stitch = 0; stitch < makes; stitch += 1) {
    walk.make({ kind: walk.setting.base, into: walk.place(from + Math.min(room - 1, Math.floor((stitch * room) / makes))) })
  }
}

/** `Sc around, inc 6 evenly`: the fill has used every place already; the shaping changes what it made. */
function afterFill(walk: Walk, change: number): void {
  if (change > 0) for (let stitch = 0; stitch < change; stitch += 1) walk.make({ kind: walk.setting.base, into: walk.place(walk.last) })
  else walk.made.length = Math.max(0, walk.made.length + change)
}
