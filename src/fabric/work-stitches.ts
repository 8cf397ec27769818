import { isEndOfRow } from '../notation/end-of-row.ts'
import type { Stitch } from '../stitches/define.ts'
import type { Group, Work } from '../notation/syntax.ts'
import { inSize, type Target } from '../notation/target.ts'
import { findNext } from './find-place.ts'
import { nothingNeeded } from './passed-runs.ts'
import { placesOf } from './places-of.ts'
import type { Walk } from './walk.ts'
import { nextGroup, noteGroup } from './work-group.ts'
import type { Rest } from './work-items.ts'
import { tellRateOf, workAlongEdge } from './work-along-edge.ts'
import { workSlips } from './work-slips.ts'

/** What one stitch does here: its kind, how many places it uses and how many stitches it gives. */
export interface Doing {
  readonly kind: string
  readonly over: number
  readonly makes: number
  /** Chains in its middle, as a V-stitch has. */
  readonly chains: number
  readonly from: 'place' | 'nothing'
  readonly group?: string
}

/** Works stitches of one kind where their target says, or one after another into the next places. */
export function workStitches(walk: Walk, item: Work, rest: Rest): void {
  if (item.unknown) {
    walk.trouble({ kind: 'unknown-stitch', span: item.name ?? item, word: item.stitch })
  }
  if (item.yarn !== undefined) {
    walk.yarn = item.yarn
    walk.yarns.push({ yarn: item.yarn, span: { start: item.start, end: item.end } })
  }
  if (item.stitch === 'sl st' && !walk.setting.slipFabric) return workSlips(walk, item, rest)
  const doing = doingOf(walk, item)
  if (item.target?.walk === 'from-hook') skippedChains(walk, item, doing.kind)
  if (closesLoop(walk, item, rest) || item.lastOfThese && isMadeAlready(walk, item.target)) return
  if (doing.from === 'nothing' || beginsOnNothing(walk, item)) return fromNothing(walk, item, doing)
  if (item.target?.tiles) return alongTiles(walk, item, doing)
  if (item.target?.walk === 'edge' && !isEndOfRow(item.target)) return workAlongEdge(walk, item, doing, rest)
  // `12 sc along the First patch`, where its side comes next
  if (walk.outline && item.count && item.target?.ofPiece !== undefined && item.target.walk === 'each' && item.target.toEnd && !item.target.thing && walk.edge[walk.at]?.kind === 'row-end') return workAlongEdge(walk, { ...item, target: { walk: 'edge', edge: 'side', evenly: true, start: item.target.start, end: item.target.end } }, doing, rest)
  if (item.target?.rate && item.target.count && item.count) tellRateOf(walk, item, item.target.rate, inSize(item.target.count, walk.setting.size))
  takeWithChain(walk, item)
  const target = targetOf(walk, fewInAll(walk, item))
  const each = target.each
  const loop = item.loop ?? walk.setting.loop
  const { at: from } = walk
  const work = (index: number): void => (liesAlong(target.target) ? spreadAlong(walk, doing, each, placesFrom(walk, item, from, index), loop, rest.group) : intoPlace(walk, doing, each, index, loop, rest.group))
  placesOf(walk, target.target, item, rest, work, doing.over, walk.setting.lexicon.stitch(item.stitch)?.into === 'below' || /^spike|^sc$/.test(item.stitch))
}

/** `3 sc in the row-ends of Right band`, which has three: one in each. */
function fewInAll(walk: Walk, item: Work): Work {
  const { count, target } = item
  if (!count || !target?.fewInAll || walk.choose('few-row-ends', ['so many go into each row-end', 'so many are all of them along the row-ends']) === 0) return item
  const { count: _, ...one } = item
  return { ...one, target: { ...target, walk: 'next', count, eachOf: true } }
}

/** `dc in each of next 50 sts, last dc in top of tch`, where the fiftieth stands there and nothing is left. */
function isMadeAlready({ at, edge, last }: Walk, target: Target | undefined): boolean {
  return target?.thing?.kind === 'turning-chain' && at >= edge.length && last === edge.length - 1 && edge[last]?.turning === true
}

function doingOf(walk: Walk, item: Work): Doing {
  const { lexicon, base } = walk.setting
  const counted = item.counts?.stitch !== undefined && item.counts.stitch !== 'this' && item.target?.walk !== 'from-hook' ? item.counts.stitch : undefined
  if (item.stitch === 'st') return { kind: base, over: 1, makes: 1, chains: 0, from: 'place' }
  // A pattern that defines its `inc` says how many it makes; they are stitches like the others of the row.
  const own = lexicon.owns(item.stitch) ? lexicon.stitch(item.stitch) : undefined
  if (item.stitch === 'inc') return { kind: item.base ?? base, over: own?.worksOver ?? 1, makes: item.of ?? own?.makes ?? 2, chains: 0, from: 'place' }
  if (item.stitch === 'dec' && (own?.makes ?? 1) === 1) {
    const legs = item.of ?? (item.over && !item.count ? inSize(item.over, walk.setting.size) : (own?.worksOver ?? 2))
    return { kind: `${item.base ?? base}${legs}tog`, over: legs, makes: 1, chains: 0, from: 'place' }
  }
  const stitch = lexicon.stitch(item.stitch)
  const over = item.over && !item.target ? overSaid(walk, item, stitch) : (stitch?.worksOver ?? 1)
  if (!stitch) return { kind: item.stitch, over, makes: 1, chains: 0, from: 'place' }
  const several = stitch.makes > 1 && { group: lexicon.owns(stitch.us) || stitch.us === 'V-st' ? stitch.us : 'sh' }
  if (several && stitch.base) return { kind: stitch.base, over, makes: stitch.makes, chains: stitch.us === 'V-st' ? 1 : 0, from: 'place', ...several }
  return { kind: counted ?? stitch.us, over, makes: stitch.makes, chains: 0, from: stitch.into === 'nothing' || stitch.worksOver === 0 ? 'nothing' : 'place', ...several }
}

/** `cl over next 9 sts` uses 9; `sc2tog over next 2 sts` its own 2. */
function overSaid(walk: Walk, item: Work, stitch: Stitch | undefined): number {
  const said = inSize(item.over!, walk.setting.size)
  const own = item.legs ? 1 : (stitch?.worksOver ?? 1)
  if (own > 1 && said % own !== 0) walk.trouble({ kind: 'does-not-divide', span: item, room: said, each: own, before: 0, after: 0 })
  return own > 1 && said % own === 0 && said > own ? own : said
}

interface Placing {
  readonly target: Target
  /** How many go into each place. */
  readonly each: number
}

/** Numbers without a place mean one each; `2 sc in next st` means both in one. */
function targetOf(walk: Walk, item: Work): Placing {
  const { size } = walk.setting
  const span = { start: item.start, end: item.end }
  const count = item.count ? inSize(item.count, size) : 1
  // `13 sc around Leg 1` of 14: the stitch of the join is not worked again.
  if (item.target?.ofPiece !== undefined && item.count && !item.target.thing && !isEndOfRow(item.target)) return { target: { ...item.target, walk: 'next', count: item.count }, each: 1 }
  // `until there are 14 dc`: as many as are still to be made.
  if (item.target?.untilMade) return { target: { ...item.target, walk: 'next', count: { values: [Math.max(0, Math.ceil((inSize(item.target.untilMade, size) - walk.stitches()) / count))], ...span }, eachOf: true }, each: count }
  // `23 sc across` is 23 in all: no more and no fewer places than that.
  if (item.target && item.count && item.target.walk === 'each' && onlyReach(item.target) && count > 1 && reachCount(walk, item, count) === 1) {
    return { target: { walk: 'next', count: item.count, ...span }, each: 1 }
  }
  if (item.target && overSeveral(walk, item, count)) return { target: { ...item.target, together: true }, each: count }
  if (item.target && sameNumber(walk, item, count)) return { target: item.target, each: 1 }
  if (item.target) return { target: item.target, each: item.target.walk === 'each' && onlyReach(item.target) ? reachCount(walk, item, count) : count }
  if (walk.inPlace !== undefined) return { target: { walk: 'next', ...span }, each: count }
  if (item.over && count === 1) return { target: { walk: 'next', ...span }, each: 1 }
  if (walk.edge[walk.at]?.kind === 'ring' || walk.edge[0]?.kind === 'ring' && walk.edge.length === 1) return { target: { walk: 'ring', ...span }, each: count }
  if (walk.edge.length === 0) return { target: { walk: 'next', ...span }, each: count }
  const inOne = count > 1 && !item.numberLast && item.stitch !== 'inc' && item.stitch !== 'dec'
    && walk.choose(`number-first ${item.start}`, [`${count} ${item.stitch} are one in each of ${count} stitches`, `${count} ${item.stitch} are all in one stitch`]) === 1
  const values = inOne ? 1 : count
  const over = item.stitch === 'dec' || item.stitch === 'inc' ? (item.stitch === 'dec' ? (item.of ?? walk.setting.lexicon.stitch('dec')?.worksOver ?? 2) : 1) : (walk.setting.lexicon.stitch(item.stitch)?.worksOver ?? 1)
  return { target: { walk: 'next', count: { values: [values * over], ...span }, ...span }, each: inOne ? count : 1 }
}

/** `3 sc over next 2 row-ends`: 3 in each of them, or 3 over both. */
function overSeveral(walk: Walk, { target, start }: Work, count: number): boolean {
  if (count < 2 || target?.thing?.kind !== 'row-end' || target.walk !== 'next' || target.eachOf || target.evenly || !target.count) return false
  const ends = inSize(target.count, walk.setting.size)
  // `3 sc for every 2 row-ends along 24 row-ends` is 36 over all of them.
  if (target.rate) return true
  return ends > 1 && ends !== count && walk.choose(`over-several ${start}`, [`${count} stitches go into each of the ${ends} row-ends`, `${count} stitches go over the ${ends} row-ends together`]) === 1
}

/** `4 sc in next 4 sts`: 4 in each, or one in each of the 4. */
function sameNumber(walk: Walk, { target, stitch, numberLast }: Work, count: number): boolean {
  if (count < 2 || numberLast || !target?.count || target.eachOf || target.walk !== 'next' || inSize(target.count, walk.setting.size) !== count) return false
  return walk.choose('same-number', [`${count} ${stitch} go into each of the ${count}`, `${count} ${stitch} are one in each of the ${count}`]) === 1
}

/** `across`, `around`, `to last 2 sts` with no thing named. */
function onlyReach(target: Target): boolean {
  return target.thing === undefined && target.every === undefined
}

/** `23 sc across` is 23 stitches in all, not 23 in each. */
function reachCount(walk: Walk, item: Work, count: number): number {
  if (item.target?.ofPiece !== undefined) return 1
  if (!item.count || count === 1) return 1
  return walk.choose(`reach ${item.start}`, ['the number is that of the stitches in all', 'so many go into each stitch']) === 0 ? 1 : count
}

function intoPlace(walk: Walk, doing: Doing, each: number, index: number, loop: Work['loop'], inGroup: number | undefined): void {
  const into = walk.place(index)
  const several = each * doing.makes > 1 || doing.chains > 0
  const from = walk.made.length
  const group = inGroup ?? (several ? nextGroup(walk) : undefined)
  for (let stitch = 0; stitch < each * doing.makes; stitch += 1) {
    if (doing.chains > 0 && stitch % doing.makes === Math.floor(doing.makes / 2)) walk.makeChains(doing.chains, group)
    walk.make({ kind: doing.kind, into, ...(loop && { loop }), ...(group !== undefined && { group }) })
  }
  if (several && inGroup === undefined && group !== undefined) {
    walk.last = index
    noteGroup(walk, from, group)
  }
  if (doing.group) for (let group = 0; group < each; group += 1) walk.groups.push({ name: doing.group, size: doing.makes })
}

/** Over several row-ends together, or evenly along them: no corner is made there. */
const liesAlong = ({ evenly, together, thing }: Target): boolean => evenly === true || together === true && thing?.kind === 'row-end'

/** `15 sc evenly along 10 row-ends`: they lie side by side, and none of them together in one place. */
function spreadAlong(walk: Walk, doing: Doing, each: number, places: readonly number[], loop: Work['loop'], inGroup: number | undefined): void {
  for (let stitch = 0; stitch < each; stitch += 1) intoPlace(walk, doing, 1, places[Math.floor((stitch * places.length) / each)]!, loop, inGroup)
}

/** Indexes of the places that an instruction has taken, from one on as far as another. */
function placesFrom({ edge, taken }: Walk, { start }: Work, from: number, to: number): readonly number[] {
  const found: number[] = []
  for (let index = from; index <= to; index += 1) if (taken.get(edge[index]!)?.start === start) found.push(index)
  return found.length > 0 ? found : [to]
}

/** `Ch 2, dc in next st (counts as dc2tog)`: the chain stands in the first place, and both together are one stitch. */
function takeWithChain(walk: Walk, item: Work): void {
  const counted = item.counts?.stitch === undefined ? undefined : walk.setting.lexicon.stitch(item.counts.stitch)
  if (!counted || counted.worksOver < 2 || walk.made.length > 0 || item.target?.walk === 'from-hook') return
  for (let place = 1; place < counted.worksOver; place += 1) walk.take(walk.at, item)
}

/** `3 sc along the edge of each of next 6 tiles`: 18 in all; where on the tiles they lie, the words leave to the maker. */
function alongTiles(walk: Walk, { target, count }: Work, doing: Doing): void {
  const stitches = inSize(target!.tiles!, walk.setting.size) * (count ? inSize(count, walk.setting.size) : 1)
  for (let stitch = 0; stitch < stitches; stitch += 1) walk.make({ kind: doing.kind })
  walk.leaves = true
}

/** `Base row of 43 sc`, `Base row: *sc, ch 5; …`: stitches told before anything lies below them. */
function beginsOnNothing(walk: Walk, item: Work): boolean {
  return walk.edge.length === 0 && walk.inPlace === undefined && (item.target === undefined || item.target.walk === 'next' && item.target.ofPiece === undefined)
}

/** Foundation stitches, and the stitches of a row that has nothing below it. */
function fromNothing(walk: Walk, item: Work, doing: Doing): void {
  const count = item.count ? inSize(item.count, walk.setting.size) : item.target?.count ? inSize(item.target.count, walk.setting.size) : 1
  if (count > walk.setting.room) walk.made.length = 0
  for (let stitch = 0; stitch < count; stitch += 1) walk.make({ kind: doing.kind })
}

/** Heights of what is skipped: 3 chains for a dc. They are a stitch when the row or the pattern says so. */
export function skippedChains(walk: Walk, item: Work | Group, kind: string): void {
  const skipped = (item.target?.count ? inSize(item.target.count, walk.setting.size) : 1) - 1
  if (walk.at > 0 || skipped < 1) return
  const into = walk.place(0)
  if (item.counts) {
    if (item.counts.stitch !== undefined) walk.make({ kind: item.counts.stitch === 'this' ? kind : item.counts.stitch, into, turning: true })
    if (item.counts.chains) walk.makeChains(inSize(item.counts.chains, walk.setting.size), undefined)
    return
  }
  // The first chain skipped under a short stitch is never one (common practice, no source).
  if (skipped < 2) return
  const stitch = walk.setting.lexicon.stitch(kind)?.base ?? kind
  const height = walk.setting.lexicon.stitch(kind)?.height ?? 0
  const habit = stitch !== 'hdc' && stitch !== 'sc' && skipped >= height
  const { turningChains, denied } = walk.setting.conventions
  const declared = turningChains[stitch] ?? (stitch === 'sc' || !habit && denied?.has(stitch) ? false : undefined)
  const yes = `the ${skipped} skipped chains count as ${stitch}`
  const no = `the ${skipped} skipped chains are not a stitch`
  const counts = declared ?? (walk.choose(`turning-chain ${stitch}`, habit ? [yes, no] : [no, yes], item) === 0 ? habit : !habit)
  if (!counts) return
  walk.make({ kind: stitch, into, turning: true })
  if (skipped > height + 1) walk.makeChains(Math.floor((skipped - height) / 2), undefined)
}

/** `ending ch 2, dc in first sc`: a tall stitch that closes the last loop of a round is part of that loop and no stitch. */
function closesLoop(walk: Walk, item: Work, rest: Rest): boolean {
  if (!walk.round || rest.group !== undefined || walk.made.at(-1)?.kind !== 'space') return false
  const { target } = item
  if (item.joins && walk.left > 0) walk.at = walk.end
  const top = item.joins === true || target?.walk === 'first' && target.thing?.kind !== 'space' || target?.thing?.kind === 'turning-chain'
  if (!top || rest.items.some((next) => next.node === 'work' || next.node === 'group' || next.node === 'repeat')) return false
  if (findNext(walk, walk.at, undefined) < walk.end && !nothingNeeded(walk, walk.at, true) && !walk.worksSpaces) return false
  walk.at = Math.max(walk.at, walk.end)
  walk.joined = true
  walk.closedByStitch = true
  return true
}
