import type { Instruction, Work } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import { endOfSide, leftBefore } from './along-outline.ts'
import { findNext, isThing } from './find-place.ts'
import type { Walk } from './walk.ts'
import { inOnePlace } from './work-group.ts'

/**
 * `2 sc in the side of each dc row and 1 sc in the side of each sc row`: instructions that tell the ends of rows apart by their stitch are
 * worked together, row by row. Where so many are told and lie next to one another, each is worked after the other like any instruction.
 */
export function sideByRows(walk: Walk, items: readonly Instruction[], from: number): readonly Work[] {
  if (!walk.outline || walk.inPlace !== undefined) return []
  const works: Work[] = []
  for (let index = from; index < items.length; index += 1) {
    const item = items[index]!
    if (item.node !== 'work' || item.target?.thing?.rows === undefined) break
    works.push(item)
  }
  return works.length > 1 && !inOneRun(walk, works[0]!) ? works : []
}

/** Whether so many row-ends of that name come next, with no other between. */
function inOneRun(walk: Walk, { target }: Work): boolean {
  if (!target?.count) return false
  const first = findNext(walk, walk.at, target.thing)
  return walk.edge.slice(first, first + inSize(target.count, walk.setting.size)).every((place) => isThing(walk, place, target.thing))
}

/** Goes along the side from here to its end and works each row-end by the instruction that names its row. */
export function workSideByRows(walk: Walk, works: readonly Work[]): void {
  const from = findNext(walk, walk.at, { kind: 'row-end' })
  const end = endOfSide(walk, from)
  leftBefore(walk, from, works[0]!)
  walk.at = Math.max(walk.at, from)
  const done = new Map<Work, number>()
  for (let index = from; index < end; index += 1) {
    const item = works.find((work) => isThing(walk, walk.edge[index]!, work.target?.thing) && (done.get(work) ?? 0) < wanted(walk, work))
    if (!item) continue
    done.set(item, (done.get(item) ?? 0) + 1)
    walk.take(index, item)
    const { target: _, ...bare } = item
    inOnePlace(walk, [bare], index)
  }
  for (const work of works) {
    const offers = done.get(work) ?? 0
    if (work.target?.count && offers < wanted(walk, work)) walk.trouble({ kind: 'overrun', span: work, wants: wanted(walk, work), offers, what: 'row-end' })
    else if (offers === 0) walk.trouble({ kind: 'no-such-place', span: work, what: 'a row of that name' })
  }
}

const wanted = (walk: Walk, { target }: Work): number => (target?.count ? inSize(target.count, walk.setting.size) : Number.POSITIVE_INFINITY)
