import type { Instruction, Repeat } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import { endOfEdge } from './along-outline.ts'
import { findNext, indexBefore } from './find-place.ts'
import { isStitch } from './place.ts'
import { comparePlacesTold } from './places-told.ts'
import { usesOf } from './uses.ts'
import type { Walk } from './walk.ts'
import { workItems, type Rest } from './work-items.ts'

/** Works a repeat: so many times, or until the places run out. */
export function workRepeat(walk: Walk, item: Repeat, rest: Rest): void {
  const { at } = walk
  workPasses(walk, item, rest)
  if (item.told) comparePlacesTold(walk, item.told, at)
}

function workPasses(walk: Walk, item: Repeat, rest: Rest): void {
  const times = timesOf(walk, item)
  if (times === undefined) return toEnd(walk, item, rest)
  for (let pass = 1; pass <= times; pass += 1) {
    const items = pass === times ? lastItems(walk, item) : item.items
    const uses = rest.uses + usesOf(item.items, walk) * (times - pass)
    const before = { at: walk.at, made: walk.made.length }
    workItems(walk, items, quietly(uses, rest))
    if (pass > 1 && walk.at === before.at && walk.made.length === before.made) {
      // Every place was used up by the passes before: this one has nothing to work into.
      walk.trouble({ kind: 'does-not-divide', span: item.body, room: 0, each: Math.max(1, usesOf(item.items, walk)), before: walk.at, after: 0 })
      break
    }
    // The row has run out long ago: how far it would go is told by its words.
    if (walk.overrun && walk.at > 2 * walk.edge.length + 2_000) return
  }
  finish(walk, item, rest)
  note(walk, item, times)
}

function quietly(uses: number, rest: Rest): Rest {
  return { uses, items: [], quiet: true, ...(rest.group !== undefined && { group: rest.group }) }
}

/** Passes in all; undefined when the repeat goes to the end. */
function timesOf(walk: Walk, item: Repeat): number | undefined {
  const { times } = item
  if (times.kind === 'once') return 1
  if (times.kind === 'to-end') return undefined
  const count = inSize(times.count, walk.setting.size)
  if (times.kind === 'in-all') return count
  if (times.kind === 'more') return count + 1
  // "rep from * 5 times" is 5 more after the first in print; some mean 5 in all.
  const words = [`rep from * ${count} times is ${count} more after the first`, `rep from * ${count} times is ${count} in all`]
  return walk.choose(`times ${item.start}`, words) === 0 ? count + 1 : count
}

/** The last pass may be shorter: `ending last rep at **`, `omitting last ch 3`, or an ending that takes its tail's place. */
function lastItems(walk: Walk, item: Repeat): readonly Instruction[] {
  return shortened(item) ?? (item.ending && endingReplaces(walk, item) ? withoutTail(item) : item.items)
}

/** The items of a last pass that the row itself cuts short; undefined when it does not. */
function shortened(item: Repeat): readonly Instruction[] | undefined {
  if (item.lastPass !== undefined) return item.items.slice(0, item.lastPass)
  return item.omit === undefined ? undefined : item.items.slice(0, Math.max(0, item.items.length - item.omit))
}

function endingReplaces(walk: Walk, item: Repeat): boolean {
  return walk.choose(`ending ${item.start}`, ['the ending comes after the last repeat', "the ending takes the place of the last repeat's tail"]) === 1
}

function withoutTail(item: Repeat): readonly Instruction[] {
  return item.items.slice(0, Math.max(0, item.items.length - Math.max(1, item.ending?.length ?? 1)))
}

function finish(walk: Walk, item: Repeat, rest: Rest): void {
  if (item.thenPass !== undefined) workItems(walk, item.items.slice(0, item.thenPass), { ...rest, quiet: true })
  if (item.ending) workItems(walk, item.ending, { ...rest, quiet: true })
}

/** Pass after pass, as long as a whole one fits before what is kept back for the rest of the row. */
function toEnd(walk: Walk, item: Repeat, rest: Rest): void {
  if (item.items.length === 0) return
  const kept = keptBack(walk, item, rest)
  const limit = (): number => walk.edge.length - kept
  const from = walk.at
  const room = limit() - from
  const last: (() => void)[] = []
  let times = 0
  let outcome: 'whole' | 'over' = 'whole'
  while (walk.at < limit()) {
    const back = walk.mark()
    const { at } = walk
    if (passFits(walk, item.items, kept, rest)) {
      times += 1
      last[0] = back
      if (walk.at === at) break
      continue
    }
    back()
    const cut = shortened(item)
    if (cut && passFits(walk, cut, kept, rest) && walk.at === limit()) {
      last.length = 0
      times += 1
      break
    }
    back()
    if (times > 0 && walk.round && fillsToEnd(item) && passFits(walk, item.items.slice(0, 1), kept, rest) && walk.at === limit()) {
      // On a ring the last side is worked on after its last corner, by the words that begin the repeat.
      last.length = 0
      break
    }
    back()
    if (!onlyPassedOver(walk, limit()) && !spannedByChain(walk, item, limit(), rest)) outcome = 'over'
    break
  }
  if (shortened(item)) dropTail(walk, item, last[0], kept, rest)
  else if (item.ending && endingReplaces(walk, item)) outcome = replaceTail(walk, item, outcome === 'over' ? undefined : last[0], rest)
  if (outcome === 'over' || times === 0 && room <= 0 && walk.edge.length > 0) {
    walk.trouble({ kind: 'does-not-divide', span: item.body, room: Math.max(0, room), each: eachPass(walk, item, rest), before: from, after: kept })
  } else if (onlyPassedOver(walk, limit())) walk.at = Math.max(walk.at, limit())
  finish(walk, item, rest)
  note(walk, item, times)
}

/** `*Dc in each dc to ch-2 sp, (2 dc, ch 2, 2 dc) in ch-2 sp; …`: it begins with a fill that a corner ends. */
function fillsToEnd({ items }: Repeat): boolean {
  const [first, second] = items
  return first?.node === 'work' && first.target?.walk === 'each' && (second?.node === 'group' || second?.node === 'work') && (second.target?.thing?.kind === 'space' || second.target?.thing?.where === 'corner')
}

/** Places at the end that are not the repeat's: for what the row works after it, or as it says itself. */
function keptBack(walk: Walk, item: Repeat, rest: Rest): number {
  const said = item.times.kind === 'to-end' && item.times.keepBack ? inSize(item.times.keepBack, walk.setting.size) : undefined
  if (item.times.kind === 'to-end' && item.times.until) return walk.edge.length - Math.min(walk.edge.length, findNext(walk, walk.at, item.times.until))
  const ending = item.ending && !endingReplaces(walk, item) ? usesOf(item.ending, walk) : 0
  const partial = item.thenPass === undefined ? 0 : usesOf(item.items.slice(0, item.thenPass), walk)
  // `rep from * across side`: the repeat ends where the edge ends.
  if (walk.outline && item.times.kind === 'to-end' && (item.times.edge || !walk.round)) return walk.edge.length - endOfEdge(walk, rest) + ending + partial
  return walk.edge.length - (said === undefined ? indexBefore(walk, rest.uses + ending + partial) : indexBefore(walk, said, item.times.kind === 'to-end' ? item.times.keepBack?.of : undefined))
}

/** Works one pass; false when it does not fit before what is kept back. */
function passFits(walk: Walk, items: readonly Instruction[], kept: number, rest: Rest): boolean {
  const troubles = walk.troubles.length
  workItems(walk, items, quietly(kept, rest))
  return walk.troubles.length === troubles && walk.at <= walk.edge.length - kept
}

/** Places one pass uses, measured by working one from the start of the edge where there is most room. */
function eachPass(walk: Walk, item: Repeat, rest: Rest): number {
  const back = walk.mark()
  const troubles = walk.troubles.length
  walk.at = 0
  workItems(walk, item.items, quietly(0, rest))
  const used = walk.at
  const fits = walk.troubles.length === troubles
  back()
  return fits && used > 0 ? used : usesOf(item.items, walk)
}

/** The ending stands for as many of the last pass's instructions as use the same places. `back` undoes the last whole pass. */
function replaceTail(walk: Walk, item: Repeat, back: (() => void) | undefined, rest: Rest): 'whole' | 'over' {
  back?.()
  const wanted = walk.edge.length - rest.uses - usesOf(item.ending ?? [], walk)
  for (let kept = 0; kept < item.items.length; kept += 1) {
    const again = walk.mark()
    if (passFits(walk, item.items.slice(0, kept), 0, rest) && walk.at === wanted) return 'whole'
    again()
  }
  return 'over'
}

/** Every pass was whole although the last one should be shorter: it is worked again without its tail. */
function dropTail(walk: Walk, item: Repeat, back: (() => void) | undefined, kept: number, rest: Rest): void {
  const cut = shortened(item)
  if (!back || !cut) return
  const { at } = walk
  const made = walk.made.slice()
  back()
  workItems(walk, cut, quietly(kept, rest))
  if (walk.at === at) return
  // The tail uses places, so the row would not end at the mark: it does not divide. What was worked stays.
  walk.at = at
  walk.made = made
  walk.trouble({ kind: 'does-not-divide', span: item.body, room: walk.edge.length - kept, each: usesOf(item.items, walk), before: 0, after: kept })
}

/** `*Ch 6, skip next 6 sts, sc in next st; rep from * around, ch 6, join`: the chain behind the repeat lies over what its passes skip. */
function spannedByChain(walk: Walk, { items }: Repeat, limit: number, rest: Rest): boolean {
  const [chain, skip] = items
  const [next, then] = rest.items.filter(({ node }) => node !== 'aside')
  if (!walk.round || chain?.node !== 'chain' || skip?.node !== 'skip' || skip.list || next?.node !== 'chain' || then?.node === 'skip') return false
  const stitches = walk.edge.slice(walk.at, limit).filter((place) => isStitch(place)).length
  if (stitches !== inSize(skip.count, walk.setting.size)) return false
  walk.at = limit
  return true
}

/** Only what no stitch of this repeat goes into is left: spaces on the way to the end, or stitches after the last space. */
function onlyPassedOver(walk: Walk, limit: number): boolean {
  for (let index = walk.at; index < limit; index += 1) {
    const place = walk.edge[index]!
    const space = place.kind === 'space' || place.kind === 'gap'
    if (space === walk.worksSpaces && !place.travel) return false
  }
  return true
}

function note(walk: Walk, item: Repeat, times: number): void {
  if (item.times.kind === 'once') return
  const known = walk.repeats.findIndex(({ span }) => span === item.unit)
  if (known === -1) walk.repeats.push({ span: item.unit, times })
}
