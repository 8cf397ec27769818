import { inSize, type Target, type Thing } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import { findNext, isThing } from './find-place.ts'
import { openChains } from './open-chains.ts'
import { isSpace } from './place.ts'
import type { WorkInto } from './places-of.ts'
import type { Walk } from './walk.ts'
import type { Rest } from './work-items.ts'

/** Takes `over` places from `index` on and works there. */
export function take(walk: Walk, index: number, span: Span, work: WorkInto, over: number, thing?: Thing): void {
  walk.take(index, span)
  for (let more = 1; more < over; more += 1) walk.take(findNext(walk, walk.at, thing), span)
  walk.last = index
  work(index)
  walk.last = walk.at - 1
}

/** `inc in every 3rd st`: the stitches between are plain. */
export function everyNth(walk: Walk, nth: number, limit: number, span: Span, work: WorkInto): void {
  const from = walk.at
  const room = limit - from
  if (room % nth !== 0) walk.trouble({ kind: 'does-not-divide', span, room, each: nth, before: from, after: walk.edge.length - limit })
  for (let index = from; index < limit; index += 1) {
    walk.take(index, span)
    if ((index - from + 1) % nth === 0) work(index)
    else walk.make({ kind: walk.setting.base, into: walk.place(index) })
  }
  walk.at = Math.max(walk.at, limit)
}

/** Between the posts: one place fewer than posts in a row, as many as posts in a round. */
export function gaps(walk: Walk, span: Span, work: WorkInto): void {
  const posts = walk.edge.length - walk.at
  const count = walk.round ? posts : posts - 1
  for (let gap = 0; gap < count; gap += 1) {
    walk.take(walk.at, span)
    work(walk.at - 1)
  }
  walk.at = walk.edge.length
}

export function fromHook(walk: Walk, span: Span, nthFromHook: number, work: WorkInto): void {
  // A chain that the row below made at its end: `…, ch 41.` and then `Turn, sc in 2nd ch from hook`.
  if (walk.edge[0]?.kind === 'space' && walk.at === 0) {
    openChains(walk)
    walk.prefixed = walk.opened + 1
  }
  if (walk.edge[0]?.kind !== 'ch') {
    walk.trouble({ kind: 'no-such-place', span, what: 'a foundation chain' })
    return
  }
  const index = nthFromHook - 1
  walk.firstChain = index
  if (walk.last === index && walk.at === index + 1) return work(index)
  take(walk, index, span, work, 1)
}

export function ring(walk: Walk, span: Span, work: WorkInto): void {
  if (walk.edge[0]?.kind !== 'ring') {
    walk.edge = [{ kind: 'ring', row: walk.setting.rowIndex }]
    walk.at = 0
    walk.foundation = undefined
    walk.chain = false
  }
  walk.ring = true
  if (walk.at === 0) walk.take(0, span)
  walk.last = 0
  work(0)
}

export function skipped(walk: Walk, span: Span, count: number, work: WorkInto): void {
  if (walk.skipped.length === 0) {
    walk.trouble({ kind: 'no-such-place', span, what: 'a skipped stitch' })
    return
  }
  const { at, last: before } = walk
  for (let index = 0; index < count; index += 1) work(walk.skipped.shift() ?? before)
  walk.at = at
}

/** A spike, and a drop into a loop below, take the top in front of them with them; a post stitch in a row below leaves it, so that the row must skip it, or takes it as well where the row says nothing of it. */
export function below(walk: Walk, span: Span, rest: Rest, count: number, work: WorkInto, spike: boolean): void {
  const skipsNext = rest.items.find((item) => item.node !== 'aside')?.node === 'skip'
  const skips = skipsNext || !spike && walk.choose('post-below', ['a stitch around a post below leaves the stitch behind it to be skipped', 'a stitch around a post below takes the place of the stitch behind it']) === 0
  for (let pass = 0; pass < count; pass += 1) {
    if (skips) work(walk.at)
    else take(walk, findNext(walk, walk.at, undefined), span, work, 1)
  }
}

/** Through both layers: a stitch takes one place of each. */
export function layers(walk: Walk, span: Span, work: WorkInto): void {
  const room = walk.left
  if (room % 2 !== 0) walk.trouble({ kind: 'does-not-divide', span, room, each: 2, before: walk.at, after: 0 })
  walk.closes = true
  const from = walk.at
  for (let pair = 0; pair < Math.floor(room / 2); pair += 1) work(from + pair)
  walk.at = walk.edge.length
}

/** `in 3rd ch of beg ch-4`: the turning chain of the row below where it counts, else the nth chain of the next space. */
export function nth(walk: Walk, target: Target, span: Span, work: WorkInto): void {
  for (let index = walk.at; index < walk.edge.length; index += 1) {
    const place = walk.edge[index]!
    if (place.turning || place.kind === 'space') {
      const turning = walk.edge.findIndex((other, at) => at >= index && other.turning === true)
      const chosen = target.thing?.kind === 'turning-chain' || turning !== -1 && onlySpacesBetween(walk, turning) ? Math.max(turning, index) : index
      return take(walk, chosen, span, work, 1)
    }
  }
  take(walk, findNext(walk, walk.at, undefined), span, work, 1)
}

function onlySpacesBetween(walk: Walk, turning: number): boolean {
  for (let index = walk.at; index < turning; index += 1) if (!isSpace(walk.edge[index]!)) return false
  return true
}

/** `in last ch-2 sp`: the last of its name, wherever the hook stands. */
export function lastSpace(walk: Walk, target: Target, span: Span, work: WorkInto): void {
  let index = walk.edge.length - 1
  while (index >= walk.at && !isThing(walk, walk.edge[index]!, target.thing)) index -= 1
  take(walk, index < walk.at ? walk.edge.length : index, span, work, 1)
}

/** Index behind the last of so many stitches from an index on. */
export function lastOf(walk: Walk, index: number, over: number): number {
  let at = index
  for (let more = 1; more < over; more += 1) at = findNext(walk, at + 1, undefined)
  return at + 1
}

/** How many chains come next. */
export function chainAhead(walk: Walk): number {
  let index = walk.at
  while (walk.edge[index]?.kind === 'ch') index += 1
  return index - walk.at
}

/** `2 sc in ch-2 sp` from below, as at the upper end of a slit: round the chain, whose places are used up by it. */
export function spaceFromBelow(walk: Walk, { thing }: Target, { start, end }: Span): Target | undefined {
  const chains = walk.outline && thing?.kind === 'space' && thing.chains ? inSize(thing.chains, walk.setting.size) : 0
  return chains > 0 && chainAhead(walk) === chains ? { walk: 'next', thing: { kind: 'chain' }, together: true, count: { values: [chains], start, end }, start, end } : undefined
}
