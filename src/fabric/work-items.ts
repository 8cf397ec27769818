import type { Instruction, Join, Leave } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import { endOfSide } from './along-outline.ts'
import { throughBoth } from './both-layers.ts'
import { workEnding } from './ends-in.ts'
import { indexAhead } from './find-place.ts'
import { isStitch } from './place.ts'
import { compareClosed, compareSewn } from './sewn.ts'
import { compareStated } from './stated-count.ts'
import { usesFrom } from './uses.ts'
import type { Walk } from './walk.ts'
import { workBlocks } from './work-blocks.ts'
import { entersRing, workChain } from './work-chain.ts'
import { eachByKind, workEachByKind } from './work-each-by-kind.ts'
import { workGroup } from './work-group.ts'
import { workRepeat } from './work-repeat.ts'
import { workShape } from './work-shape.ts'
import { sideByRows, workSideByRows } from './work-side-by-rows.ts'
import { workSkip } from './work-skip.ts'
import { workStart } from './work-start.ts'
import { workStitches } from './work-stitches.ts'
import { workTie } from './work-tie.ts'

/** What is still to come after an instruction, so that a fill can stop in time. */
export interface Rest {
  /** Places that the instructions after these will use. */
  readonly uses: number
  /** The instructions that come next, within the same sequence. */
  readonly items: readonly Instruction[]
  /** Inside a group in one place: its number. */
  readonly group?: number
  /** Whether steps are noted for the tally: only outside repeats and groups. */
  readonly quiet?: boolean
}

/** Works instructions one after another. */
export function workItems(walk: Walk, items: readonly Instruction[], rest: Rest): void {
  for (let index = 0; index < items.length; index += 1) {
    const item = items[index]!
    const together = eachByKind(walk, items, index)
    const side = sideByRows(walk, items, index)
    const next = together ? index + together.items.length : index + Math.max(1, side.length)
    walk.effort()
    const after = restAfter(walk, items, next, rest)
    if (item.node === 'repeat' && item.prefixed && index === 0 && items.length > 1 && item.times.kind === 'in-all' && multipliesAll(walk, item)) {
      const all: Instruction = { ...item, prefixed: false, items: [...item.items, ...items.slice(1)], end: items.at(-1)!.end }
      workItem(walk, all, rest)
      return
    }
    const before = { at: walk.at, made: countMade(walk) }
    if (side.length > 0) workSideByRows(walk, side)
    else if (together) workEachByKind(walk, together, after)
    else workItem(walk, item, after)
    index = next - 1
    if (!rest.quiet) noteStep(walk, item, items[index]!, before)
  }
}

/** `[2x inc, 3 sc] x 4`: two increases and 3 sc, or both of them twice. */
function multipliesAll(walk: Walk, item: Instruction): boolean {
  return walk.choose(`multiplies ${item.start}`, ['the number before multiplies the next stitch', 'the number before multiplies all that follows in the bracket']) === 1
}

/** What comes after the instructions up to `next`. Reckoned only when it is asked for, so that long rows cost no more than they have steps. */
function restAfter(walk: Walk, items: readonly Instruction[], next: number, rest: Rest): Rest {
  return {
    ...(rest.group !== undefined && { group: rest.group }),
    ...(rest.quiet && { quiet: rest.quiet }),
    get uses() {
      return usesFrom(items, next, walk) + rest.uses
    },
    get items() {
      return next < items.length ? items.slice(next, next + 24) : rest.items
    },
  }
}

function workItem(walk: Walk, item: Instruction, rest: Rest): void {
  if ((item.node === 'aside' || item.node === 'join') && item.neighbour) walk.fasten({ ...item.neighbour, at: walk.made.length, span: { start: item.start, end: item.end } })
  switch (item.node) {
    case 'work': return item.layers ? throughBoth(walk, item, () => workStitches(walk, item, rest)) : workStitches(walk, item, rest)
    case 'chain': return workChain(walk, item, rest)
    case 'skip': return workSkip(walk, item, rest)
    case 'group': return workGroup(walk, item, rest)
    case 'repeat': return workRepeat(walk, item, rest)
    case 'shape': return workShape(walk, item)
    case 'blocks': return workBlocks(walk, item)
    case 'start': return workStart(walk, item)
    case 'turn': {
      // A turn in the middle of a row would begin another one; only the last one tells how the row ends.
      walk.turned = item.turns
      return
    }
    case 'join': {
      walk.joined = true
      // A first row that begins on the edge that it is joined to leaves the rest of that for the rows that follow.
      if (item.along && walk.setting.standsOn !== undefined) walk.leaves = true
      if (item.ring || walk.chain && !walk.worked && entersRing(rest.items)) walk.ring = true
      closeFoundation(walk, item)
      return
    }
    case 'leave': {
      walk.leaves = true
      const left = leftHere(walk, item)
      const count = item.slips && left === 0 ? walk.slipsBehind : left
      if (item.slips && count === 0) return
      const wrong = [item.count, item.sum].flatMap((num) => (num ? [inSize(num, walk.setting.size)] : [])).find((said) => said !== count && !((item.rowEnds || item.chains) && said === leftOfStretch(walk)))
      if (wrong !== undefined) walk.trouble({ kind: 'left-over', span: item, count, said: wrong })
      return
    }
    case 'aside': {
      if (item.leaves) walk.leaves = true
      if (item.oneLayer) walk.pairs = 1
      if (item.picot) walk.groups.push({ name: 'picot', size: 0 })
      if (item.tie) workTie(walk, item.tie, { start: item.start, end: item.end })
      // Within a repeat it holds for one pass, and the words do not tell which.
      if (item.stated && !rest.quiet) compareStated(walk, item.stated, { start: item.start, end: item.end })
      if (item.sewn) compareSewn(walk, item.sewn, { start: item.start, end: item.end })
      if (item.closed) compareClosed(walk, item.closed, { start: item.start, end: item.end })
      if (item.endsIn) workEnding(walk, item.endsIn, { start: item.start, end: item.end })
      if (item.words) walk.said += ` ${item.words}`
      if (item.yarn !== undefined) {
        walk.yarns.push({ yarn: item.yarn, span: item })
        if (!/^(?:drop|cut|carry|break|fasten|leave)/.test(item.words ?? '')) walk.yarn = item.yarn
      }
      return
    }
    case 'unreadable': {
      if (item.why === 'cannot') walk.undecided ??= { reason: item.reason, span: { start: item.start, end: item.end } }
      else if (item.why !== 'quiet') walk.trouble({ kind: 'unreadable', span: item, reason: item.reason, ...(item.why === 'broken' && { broken: true }) })
    }
  }
}

/** Stitches that are left from here on, or as far as the corner that is told; of row-ends those of this side. */
function leftHere(walk: Walk, { rowEnds, before }: Leave): number {
  if (rowEnds) return endOfSide(walk) - walk.at
  const beyond = before ? indexAhead(walk, before) : -1
  const end = beyond < 0 ? walk.edge.length : beyond
  let left = 0
  for (let index = walk.at; index < end; index += 1) if (isStitch(walk.edge[index]!)) left += 1
  return left
}

/** Row-ends that are left before the next corner, be it that of a step. */
function leftOfStretch({ edge, at, outline }: Walk): number {
  const stretch = edge[at] && outline?.stretchOf.get(edge[at])
  const end = edge.findIndex((place, index) => index > at && outline?.stretchOf.get(place) !== stretch)
  return stretch === undefined ? 0 : (end < 0 ? edge.length : end) - at
}

/** `Ch 5, join`: a chain that is all there is becomes a ring to work into or round. */
function closeFoundation(walk: Walk, item: Join): void {
  if (!walk.chain || walk.worked) return
  walk.closedChain = true
  walk.closedInFirst = item.inFirst === true && !walk.ring
}

function countMade(walk: Walk): number {
  return walk.made.length
}

function noteStep(walk: Walk, first: Instruction, last: Instruction, before: { readonly at: number; readonly made: number }): void {
  if (first.node === 'turn' || first.node === 'join' || first.node === 'aside' || first.node === 'leave' || first.node === 'unreadable') return
  const worksOver = walk.at - before.at
  const nothing = worksOver === 0 && walk.made.slice(before.made).every(({ kind }) => kind === 'space')
  if (nothing && (first.node === 'chain' || first.node === 'start')) return
  const times = first.node === 'repeat' ? (walk.repeats.find(({ span }) => span === first.unit)?.times ?? 1) : 1
  walk.steps.push({ span: { start: first.start, end: last.end }, worksOver, times, from: before.made, to: walk.made.length })
}
