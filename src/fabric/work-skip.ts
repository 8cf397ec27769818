import type { Skip } from '../notation/syntax.ts'
import { inSize, type Thing } from '../notation/target.ts'
import { rowAt } from './border-edge.ts'
import { findNext, isThing } from './find-place.ts'
import { goToRow } from './older-row.ts'
import { openChains } from './open-chains.ts'
import { isSpace, isStitch, type Place } from './place.ts'
import type { Walk } from './walk.ts'
import { begin, cornerMeant, indexBehind } from './work-start.ts'
import type { Rest } from './work-items.ts'

/** Passes over places. A counted turning chain has passed the first one already, so `skip first st` then names the same place. */
export function workSkip(walk: Walk, item: Skip, rest: Rest): void {
  const first = walk.at === 0 && walk.made.length === 0
  const added = first && item.thing?.kind === 'chain' && walk.edge[0]?.kind === 'space' && inSize(item.count, walk.setting.size) < (walk.edge[0].chains ?? 1)
  // `…, 9 ch for the arm, turn.` and then `Miss 1 ch, dc in each of next 8 ch`: chains that the row below made at its end.
  if (added) {
    openChains(walk)
    walk.prefixed = walk.opened + 1
  }
  const begins = added || first && walk.edge[0]?.kind === 'ch' && (walk.foundation !== undefined || walk.prefixed > 0)
  skip(walk, item)
  // `Skip first 2 ch, sc in each ch across`: the chains that are missed at the beginning have no underside to work into.
  if (begins && item.thing?.kind === 'chain') walk.firstChain = Math.max(1, walk.at)
  if (item.thing === undefined || item.thing.kind === 'stitch') walk.skippedTo = walk.at
  holdSkipped(walk, item, rest)
}

/** A chain over so many stitches, or words that say what they wait for, make an opening. */
const opening = 4
const openingOnce = 2
const waitsFor = /sleeve|thumb|hold|held|later|armhole|underarm/

/** `Ch 8, skip next 36 sts (left sleeve)`: the stitches wait, and so does the underside of the chain. Spaces skipped on either side wait with them. */
function holdSkipped(walk: Walk, item: Skip, rest: Rest): void {
  const places = walk.skipped.flatMap((index) => walk.place(index) ?? [])
  const after = rest.items[0]?.node === 'aside' ? (rest.items[0].words ?? '') : ''
  const before = walk.place((walk.skipped[0] ?? 0) - 1)
  if (isOneSpace(places)) waitBeside(walk, places[0]!, before)
  if (places.length < (rest.quiet ? opening : openingOnce) && !waitsFor.test(after) || places.slice(1, -1).some(isSpace) || walk.holds.length > 200) return
  const tail = walk.made.at(-1)
  const next = rest.items.find((one) => one.node !== 'aside' && !(one.node === 'skip' && one.thing?.kind === 'space'))
  const chains = tail?.kind === 'space' && tail.group === undefined ? (tail.chains ?? 0) : next?.node === 'chain' ? inSize(next.count, walk.setting.size) : 0
  if (chains === 0 && !waitsFor.test(after)) return
  const lead = before && before === walk.spaceSkipped ? [before] : []
  walk.holds.push({ places: [...lead, ...places], bridge: Array.from({ length: chains }, () => ({ kind: 'ch', row: walk.setting.rowIndex })), words: after, span: { start: item.start, end: item.end } })
}

const isOneSpace = (places: readonly Place[]): boolean => places.length === 1 && isSpace(places[0]!)

/** `sk next ch-2 sp, sk next 30 hdc for sleeve, sk next ch-2 sp`: the corner spaces beside a sleeve. */
function waitBeside(walk: Walk, space: Place, before: Place | undefined): void {
  walk.spaceSkipped = space
  const last = walk.holds.at(-1)
  if (last && before && last.places.at(-1) === before) walk.holds[walk.holds.length - 1] = { ...last, places: [...last.places, space] }
}

/** `skip the 2 sl sts`: as many as the row below was joined with. `Skip the sl sts` tells no number. */
function compareJoins(walk: Walk, { start, end }: Skip, count: number): void {
  const { joinedBelow: joined } = walk.setting
  if (joined === undefined || count < 2 || count === joined) return
  walk.trouble(count > joined ? { kind: 'overrun', span: { start, end }, wants: count, offers: joined, what: 'stitch' } : { kind: 'left-over', span: { start, end }, count: joined - count })
}

function skip(walk: Walk, item: Skip): void {
  walk.skipped = []
  walk.skips = true
  if (item.after) goBehind(walk, item.after)
  const behind = behindSewn(walk, item)
  if (behind !== undefined) return begin(walk, behind, walk.round)
  if (item.ofRow !== undefined) goToRow(walk, { walk: 'next', ofRow: item.ofRow, start: item.start, end: item.end }, item)
  if (item.counts?.stitch !== undefined) {
    const stitch = item.counts.stitch === 'this' ? walk.setting.base : item.counts.stitch
    pass(walk, item, undefined, inSize(item.count, walk.setting.size))
    walk.make({ kind: stitch, into: walk.place(walk.at - 1), turning: true })
    if (item.counts.chains) walk.makeChains(inSize(item.counts.chains, walk.setting.size), undefined)
    return
  }
  if (item.list) {
    for (const [index, { count, thing }] of item.list.entries()) {
      // The counted turning chain has passed the first place already.
      if (index === 0 && item.from === 'first' && walk.tookFirst && walk.at > 0 && inSize(count, walk.setting.size) === 1) continue
      if (index > 0) passedBetween(walk, item, thing)
      pass(walk, item, thing, inSize(count, walk.setting.size))
    }
    return
  }
  const count = inSize(item.count, walk.setting.size)
  if (item.thing?.stitch === 'sl st') compareJoins(walk, item, count)
  if (item.from === 'first' || item.from === 'same') {
    const already = walk.tookFirst ? walk.at : 0
    if (walk.at > already && !walk.tookFirst) return pass(walk, item, item.thing, count)
    pass(walk, item, item.thing, Math.max(0, count - walk.at))
    return
  }
  pass(walk, item, item.thing, takesBase(walk) ? count - 1 : count)
}

/** `skip first 5 sts of Row 24 of Back, join yarn in next st` round a neck: those are sewn to a shoulder and no places of it. The index of the next one. */
function behindSewn(walk: Walk, { ofRow, count, from }: Skip): number | undefined {
  if (!walk.outline || ofRow === undefined || from !== 'first' || walk.made.length > 0 || walk.setting.sewn !== true) return undefined
  const [at, next] = walk.edge.flatMap((place, index) => (rowAt(walk.outline, place)?.number === ofRow && walk.outline!.stretchOf.get(place)?.edge !== 'row-ends' ? [index] : []))
  if (at === undefined || next === undefined) return undefined
  const { places } = rowAt(walk.outline, walk.edge[at]!)!
  const [first, second] = [places.indexOf(walk.edge[at]!), places.indexOf(walk.edge[next]!)]
  return (first < second ? first : places.length - 1 - first) === inSize(count, walk.setting.size) ? at : undefined
}

/** `skip 7 sc after the top right corner`: which corner of the border lies there, it does not tell. */
function goBehind(walk: Walk, after: NonNullable<Skip['after']>): void {
  const corner = walk.onRing ? cornerMeant(walk, after.thing) : undefined
  const index = corner === undefined ? indexBehind(walk, after) : (corner + 1) % walk.edge.length
  if (index < walk.edge.length) begin(walk, index, walk.onRing)
}

/** `skip ch-1 sp, 22 dc and ch-1 sp`: things in a list lie next to one another, and a stitch between them is left over. */
function passedBetween(walk: Walk, item: Skip, thing: Thing): void {
  const next = nextOf(walk, thing)
  const stitches = next < walk.end ? walk.edge.slice(walk.at, next).filter((place) => isStitch(place) && !place.travel).length : 0
  if (stitches === 0) return
  walk.missed += stitches
  walk.trouble({ kind: 'left-over', span: item, count: stitches })
}

/** `Ch 3 (counts as dc), turn, sk 1 st`: the stitch under the chain may be the one that is meant. */
function takesBase(walk: Walk): boolean {
  return walk.tookFirst && walk.at === 1 && walk.made.length === 1
    && walk.choose('skip-base', ['stitches are skipped after the one under the turning chain', 'the stitch under the turning chain is among those skipped']) === 1
}

function pass(walk: Walk, item: Skip, thing: Thing | undefined, count: number): void {
  // Slip stitches that fastened the row before to another edge are no places of this one.
  if (thing?.stitch === 'sl st' && walk.edge.every(({ kind }) => kind !== 'sl st')) return
  for (let left = count; left > 0; left -= 1) {
    const index = nextOf(walk, thing)
    // `skip next 2 ch` over a ch-2 space passes the whole space.
    if (thing?.kind === 'chain' && walk.edge[index]?.kind === 'space') left -= Math.min(left, walk.edge[index]!.chains ?? 1) - 1
    const { last } = walk
    walk.skipped.push(index)
    walk.take(index, item)
    walk.last = last
    if (walk.overrun) return
  }
}

/** A plain skip passes whatever comes next, spaces too; a named one goes to what it names. */
function nextOf(walk: Walk, thing: Thing | undefined): number {
  const here = walk.edge[walk.at]
  if (!thing || !here) return walk.at
  if (thing.kind === 'stitch' && thing.stitch === undefined) return isSpace(here) && walk.edge.slice(walk.at).some((place) => !isSpace(place)) && stitchesAsked(walk) ? findNext(walk, walk.at, thing) : walk.at
  return isThing(walk, here, thing) ? walk.at : findNext(walk, walk.at, thing)
}

/** `skip next 2 sts` where spaces lie between: they are passed with the stitches, or each counts as one. */
function stitchesAsked(walk: Walk): boolean {
  return walk.choose('skip-stitches', ['spaces are passed over with the stitches', 'a space that is skipped counts as a stitch']) === 0
}
