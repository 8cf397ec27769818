import type { LaidOut, Placed, PlacedText, Tag } from '../../src/print/sheet/placed.ts'
import { isTag } from '../../src/print/sheet/placed.ts'

/** Every placed box of a part of the structure tree, in reading order. */
export function leaves(tag: Tag): readonly Placed[] {
  return tag.children.flatMap((child) => (isTag(child) ? leaves(child) : [child]))
}

/** Every tag of a type, in reading order. */
export function tagsOf(tag: Tag, type: Tag['type']): readonly Tag[] {
  return [...(tag.type === type ? [tag] : []), ...tag.children.filter(isTag).flatMap((child) => tagsOf(child, type))]
}

/** All that is placed on a page: what is read, what rules the page, what is repeated. */
export function onPage(laidOut: LaidOut, page: number): readonly Placed[] {
  const furniture = laidOut.pages[page]
  return [...leaves(laidOut.root).filter((one) => one.page === page), ...(furniture?.ruling ?? []), ...(furniture?.pagination ?? [])]
}

/** The words of a tag, its lines joined. */
export function wordsOf(tag: Tag): string {
  return leaves(tag).filter((one): one is PlacedText => one.kind === 'text').map(({ text }) => text).join('')
}

/** Edges in mm. */
export interface Frame {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

const mmPerPoint = 25.4 / 72

/** Where the ink of a placed box may be. Letters reach 0.72 em over the baseline and 0.22 em under it, as capitals and descenders do in most text faces. */
export function frameOf(placed: Placed): Frame {
  if (placed.kind === 'text') {
    const em = placed.size * mmPerPoint
    if (placed.turned) return { left: placed.x - 0.72 * em, right: placed.x + 0.22 * em, top: placed.y - placed.width, bottom: placed.y }
    return { left: placed.x, right: placed.x + placed.width, top: placed.y - 0.72 * em, bottom: placed.y + 0.22 * em }
  }
  const half = (placed.weight * mmPerPoint) / 2
  if (placed.kind === 'box') return { left: placed.x - half, right: placed.x + placed.side + half, top: placed.y - half, bottom: placed.y + placed.side + half }
  if (placed.kind === 'ellipse') {
    // A turned ellipse reaches as far as its two half axes, each seen from the side (Pythagoras).
    const [cos, sin] = [Math.cos(((placed.turn ?? 0) * Math.PI) / 180), Math.sin(((placed.turn ?? 0) * Math.PI) / 180)]
    const [wide, high] = [Math.hypot(placed.rx * cos, placed.ry * sin) + half, Math.hypot(placed.rx * sin, placed.ry * cos) + half]
    return { left: placed.x - wide, right: placed.x + wide, top: placed.y - high, bottom: placed.y + high }
  }
  const upright = placed.x1 === placed.x2
  return {
    left: Math.min(placed.x1, placed.x2) - (upright ? half : 0), right: Math.max(placed.x1, placed.x2) + (upright ? half : 0),
    top: Math.min(placed.y1, placed.y2) - (upright ? 0 : half), bottom: Math.max(placed.y1, placed.y2) + (upright ? 0 : half),
  }
}

/** What two boxes have in common, as the smaller of its sides in mm; 0 when they are apart. */
export function overlap(a: Frame, b: Frame): number {
  const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left)
  const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top)
  return Math.max(0, Math.min(wide, high))
}
