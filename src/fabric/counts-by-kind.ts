import type { Instruction, Work } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import { isSpace, isStitch } from './place.ts'
import type { Walk } from './walk.ts'

/** Two instructions whose places lie among one another, and the index behind the last of them. */
interface Mixed {
  readonly instructions: readonly [Work, Work]
  readonly limit: number
}

/** `Dc in each of next 9 tr and each of 2 ch-1 sps`: so many stitches and so many spaces, where the spaces lie among the stitches. */
export function countsByKind(walk: Walk, one: Instruction | undefined, other: Instruction | undefined): Mixed | undefined {
  if (walk.inPlace !== undefined || !one || !other || !isCounted(one) || !isCounted(other) || one.stitch !== other.stitch) return undefined
  const kinds = [one, other].map(({ target }) => target?.thing?.kind)
  if (!kinds.includes('stitch') || !kinds.includes('space')) return undefined
  const wants = new Map([one, other].map((item) => [item.target!.thing!.kind, inSize(item.target!.count!, walk.setting.size)]))
  const limit = behindBoth(walk, wants.get('stitch')!, wants.get('space')!)
  if (limit === undefined || walk.choose(`mixed ${one.start}`, ['the spaces lie among the stitches', 'the spaces come behind the stitches']) === 1) return undefined
  return { instructions: [one, other], limit }
}

function isCounted(item: Instruction): item is Work {
  return item.node === 'work' && item.target?.walk === 'next' && item.target.eachOf === true && item.target.count !== undefined
}

/** Index behind a stretch of so many stitches and spaces, of which at least one space has a stitch on either side. */
function behindBoth({ edge, at }: Walk, stitches: number, spaces: number): number | undefined {
  let [stitched, spaced, among] = [0, 0, false]
  for (let index = at; index < edge.length; index += 1) {
    const place = edge[index]!
    if (isSpace(place)) spaced += 1
    else if (isStitch(place)) {
      stitched += 1
      among ||= spaced > 0 && stitched > 1
    }
    if (stitched > stitches || spaced > spaces) return undefined
    if (stitched === stitches && spaced === spaces) return among ? index + 1 : undefined
  }
  return undefined
}
