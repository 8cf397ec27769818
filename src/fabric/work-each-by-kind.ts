import type { Chain, Group, Instruction, Work } from '../notation/syntax.ts'
import { inSize, type Target } from '../notation/target.ts'
import { cornersApart } from './along-outline.ts'
import { countsByKind } from './counts-by-kind.ts'
import { findNext, indexBefore, isThing } from './find-place.ts'
import { beforeInnerCorners } from './inner-corners.ts'
import { openAll } from './open-chains.ts'
import { compareCornerSize } from './out-of.ts'
import { goToPart } from './parts.ts'
import { isStitch, type Place } from './place.ts'
import type { Walk } from './walk.ts'
import { loosen, sumsOf } from './work-along-edge.ts'
import { inOnePlace } from './work-group.ts'
import { workItems, type Rest } from './work-items.ts'

type Each = Work | Group

/** Instructions for places by their kind, worked as the places come. */
export interface EachByKind {
  readonly items: readonly Instruction[]
  readonly instructions: readonly Each[]
  /** `ch 1 between all groups` */
  readonly between?: Chain
  /** Index before which they end, where their counts tell. */
  readonly limit?: number
}

/**
 * `Dc in each dc, (2 dc, ch 2, 2 dc) in each ch-2 sp`: two or more instructions that name different places are worked together, each
 * place in its turn. So is one that has chains between.
 */
export function eachByKind(walk: Walk, items: readonly Instruction[], from: number): EachByKind | undefined {
  const mixed = countsByKind(walk, items[from], items[from + 1])
  if (mixed) return { ...mixed, items: items.slice(from, from + 2) }
  const allOfOne = allAmongSpaces(walk, items.slice(from, from + 2))
  if (allOfOne) return { items: items.slice(from, from + 2), instructions: allOfOne }
  const instructions: Each[] = []
  let between: Chain | undefined
  let index = from
  for (; index < items.length; index += 1) {
    const item = items[index]!
    if (instructions.length > 0 && 'target' in item && partOf(item) !== partOf(instructions[0])) break
    const spaces = instructions.length > 0 && countedAmong(walk, item, items.slice(index + 1))
    if (spaces) instructions.push(spaces)
    else if (isEach(item) || instructions.length > 0 && isOneAmong(walk, item, items.slice(index + 1)) || instructions.length > 0 && stops(item) && namesEach(item) || isFillBefore(item, items[index + 1])) instructions.push(item as Each)
    else if (item.node === 'chain' && item.between && instructions.length > 0) between = item
    else if (item.node !== 'aside' || instructions.length === 0) break
    if (stops(item)) {
      index += 1
      break
    }
  }
  if (instructions.length === 0 || instructions.length === 1 && !between) return undefined
  return { items: items.slice(from, index), instructions, ...(between && { between }) }
}

/** `1 dc in each of the 66 dc and 3 dc in each ch-2 sp around`, `sc in each of the 72 sc, 3 sc in each corner st`: all the stitches that are left, told with their number, among the spaces or corners. */
function allAmongSpaces(walk: Walk, pair: readonly Instruction[]): readonly Each[] | undefined {
  const told = pair.find((item): item is Work => item.node === 'work' && item.target?.walk === 'next' && item.target.eachOf === true && item.target.thing?.kind === 'stitch')
  const spaces = pair.find((item): item is Each => isEach(item) && (item.target?.thing?.kind === 'space' || isCornerOf(item)))
  const { thing, count } = told?.target ?? {}
  if (!told || !spaces || !count || walk.inPlace !== undefined || walk.outline) return undefined
  const left = walk.edge.slice(walk.at)
  const among = isCornerOf(spaces) ? spaces : left.some(({ kind }, index) => kind === 'space' && index > 0 && index < left.length - 1)
  if (!among || left.filter((place) => isThing(walk, place, thing)).length !== inSize(count, walk.setting.size)) return undefined
  const { count: _, ...all } = told.target!
  return pair.map((item) => (item === told ? { ...told, target: { ...all, walk: 'each' as const } } : spaces))
}

/** Nothing is worked after it. */
const endsRow = (after: readonly Instruction[]): boolean => after.every(({ node }) => node === 'aside' || node === 'join' || node === 'turn')

const partOf = (item: Instruction | undefined): string | undefined => (item && 'target' in item ? item.target?.ofPart : undefined)

/** `dc in each dc around, working (2 dc, ch 2, 2 dc) in each of the 4 ch-2 sps`: the spaces by their number, which lie among the stitches. */
function countedAmong(walk: Walk, item: Instruction, after: readonly Instruction[]): Each | undefined {
  if (item.node !== 'work' && item.node !== 'group' || item.target?.walk !== 'next' || !item.target.count || item.target.thing?.kind !== 'space') return undefined
  const { thing } = item.target
  const rest = walk.edge.slice(walk.at)
  const first = rest.findIndex((place) => isThing(walk, place, thing))
  const among = first !== -1 && rest.slice(first).some((place) => isStitch(place) && !place.travel)
  return among && endsRow(after.filter((other) => !isInnerOf(other))) ? { ...item, target: { ...item.target, walk: 'each' } } : undefined
}

/** `sc in each sc and 4 sc in the ch-4 sp`, `…, and 1 sc in each of the 2 ch`, `…, and sc2tog at the inner corner`: the one space or chain, wherever it lies among the others. */
function isOneAmong(walk: Walk, item: Instruction, after: readonly Instruction[]): item is Each {
  if (item.node !== 'work' && item.node !== 'group' || item.target?.walk !== 'next') return false
  const { thing, count } = item.target
  if (isInnerOf(item)) return true
  if (!endsRow(after)) return false
  const rest = walk.edge.slice(walk.at)
  if (thing?.kind === 'chain' && count) return rest.filter(({ kind }) => kind === 'space').length === 1
  return thing?.kind === 'space' && !count && rest.filter((place) => isThing(walk, place, thing)).length === 1
}

/** `dc in each ch-1 sp and in each dc to ch-2 sp`, `… to last st`: all of them go as far as that. */
const stops = (item: Instruction): boolean => (item.node === 'work' || item.node === 'group') && (item.target?.until !== undefined || item.target?.keepBack !== undefined)

function isEach(item: Instruction): item is Each {
  return namesEach(item) && item.target?.keepBack === undefined
}

function namesEach(item: Instruction): item is Each {
  return (item.node === 'work' || item.node === 'group') && item.target?.walk === 'each' && item.target.thing !== undefined && !item.target.every && !isOneEdge(item.target)
}

/** `sc in each row-end down the side`: one edge is walked to its end, and not all of them. */
function isOneEdge({ edge, thing, toEnd }: Target): boolean {
  return edge !== undefined && edge !== 'all' || thing?.kind === 'row-end' && !toEnd
}

/** `Sc around, 3 sc in centre sc of each corner`, `sc across, placing 3 sc in each ch-3 sp`: the fill leaves the corners and spaces to what follows. */
function isFillBefore(item: Instruction, next: Instruction | undefined): boolean {
  const fill = item.node === 'work' && item.target !== undefined && (item.target.walk === 'each' && item.target.toEnd === true && item.target.thing === undefined || isLooseFill(item))
  return fill
    && next !== undefined && isEach(next) && (next.target?.thing?.where === 'corner' || next.target?.thing?.kind === 'space' && !isLooseFill(item))
}

/** `Sc evenly around`: one in each place of the outline, row-ends too. */
const isLooseFill = (item: Instruction): item is Work => item.node === 'work' && item.target?.walk === 'edge' && item.target.edge === 'all' && item.count === undefined

/** Corners and chains are told apart from the stitches that `each st` would take as well. */
const isNarrow = (item: Each): boolean => isCornerOf(item) || isInnerOf(item) || item.target?.thing?.kind === 'chain' || item.target?.thing?.ofGroup !== undefined
const isCornerOf = (item: Each): boolean => item.target?.thing?.where === 'corner'
const isInnerOf = (item: Instruction): boolean => (item.node === 'work' || item.node === 'group') && item.target?.thing?.where === 'inner'

/** `sc2tog at each of the 4 inner corners` of an edge with two steps and two slits: their number tells that those of the slits are meant as well. */
function withValleys(walk: Walk, item: Each): Each {
  const { thing, count } = item.target ?? {}
  const says = count && inSize(count, walk.setting.size)
  const all = beforeInnerCorners(walk.edge, true).size
  return thing && !thing.again && says === all && says !== beforeInnerCorners(walk.edge).size ? { ...item, target: { ...item.target!, thing: { ...thing, valleys: true } } } : item
}

/** Whether the corners are also those of steps: their number tells, or else the total. */
function stepsHaveCorners(walk: Walk, { target }: Each): boolean {
  const { corners, stepCorners } = walk.outline ?? {}
  if (!corners || !stepCorners || stepCorners.size === 0) return false
  if (target?.count) return inSize(target.count, walk.setting.size) > corners.size
  return walk.choose('step-corners', ['a step has no corner', 'a step has a corner where it juts out']) === 1
}

/** Walks the whole edge from here and works each place by the instruction that names it. */
export function workEachByKind(walk: Walk, { instructions: written, between, limit: said }: EachByKind, rest: Rest): void {
  const instructions = written.map((item) => (isInnerOf(item) ? withValleys(walk, item) : item))
  const part = partOf(instructions[0])
  if (part !== undefined) goToPart(walk, part, instructions[0]!)
  if (instructions.some(({ target }) => target?.thing?.kind === 'chain')) openAll(walk)
  const limit = said ?? endOfAll(walk, instructions, rest)
  const chains = between ? inSize(between.count, walk.setting.size) : 0
  const used = new Map<Each, number>()
  let groups = 0
  const filled: Place[] = []
  const apart = walk.outline && instructions.some(isCornerOf) && cornersApart(walk)
  const onSteps = !apart && instructions.some((item) => isCornerOf(item) && stepsHaveCorners(walk, item))
  const inOrder = apart ? instructions.filter((item) => !isCornerOf(item)) : instructions.toSorted((a, b) => Number(isNarrow(b)) - Number(isNarrow(a)))
  for (let index = walk.at; index < limit; index += 1) {
    const place = walk.edge[index]!
    const item = inOrder.find((each) => (isLooseFill(each) || isThing(walk, place, each.target?.thing) || isCornerOf(each) && onSteps && walk.outline!.stepCorners.has(place)) && !hasItsSome(walk, each, used))
    if (!item) continue
    if (groups > 0 && chains > 0) walk.makeChains(chains, undefined)
    walk.take(index, item)
    if (isCornerOf(item)) compareCornerSize(walk, item, place)
    used.set(item, (used.get(item) ?? 0) + 1)
    groups += 1
    if (isLooseFill(item)) filled.push(place)
    if (place.kind === 'space' || place.kind === 'gap') walk.worksSpaces = true
    const { target: _, ...bare } = item
    const inside: readonly Instruction[] = item.node === 'group' ? item.items : [bare as Work]
    if (item.node === 'group' || (item.count?.values[0] ?? 1) > 1) inOnePlace(walk, inside, index)
    else single(walk, inside, index)
    // The two that meet are worked together, or three.
    if (isInnerOf(item)) for (let more = item.target?.thing?.again ? 2 : 1; more > 0; more -= 1) walk.take(index += 1, item)
  }
  const fill = instructions.find(isLooseFill)
  if (fill) loosen(walk, [filled.length, ...sumsOf(walk, filled)], fill)
  if (walk.round && chains > 0 && groups > 0) walk.makeChains(chains, undefined)
  walk.at = Math.max(walk.at, limit)
  if (apart) for (const item of instructions.filter(isCornerOf)) fourCorners(walk, item, used)
  for (const item of instructions) {
    const wants = item.target?.count && inSize(item.target.count, walk.setting.size)
    const offers = used.get(item) ?? 0
    const what = isInnerOf(item) ? 'inner corner' : isCornerOf(item) ? 'corner' : 'chain space'
    if (wants !== undefined && wants > offers) walk.trouble({ kind: 'overrun', span: item, wants, offers, what })
    if (wants !== undefined && wants < offers) walk.trouble({ kind: 'left-over', span: item, count: offers - wants, named: { count: wants, what } })
    if (!used.has(item)) walk.trouble({ kind: 'no-such-place', span: item, what: isInnerOf(item) ? 'an inner corner' : item.target?.thing?.kind === 'space' ? 'a chain space' : 'a stitch of that name' })
  }
}

/** `3 sc in the 2 lower corners` of a border with four: the others are worked like any stitch. */
function hasItsSome(walk: Walk, item: Each, used: ReadonlyMap<Each, number>): boolean {
  const { thing, count } = item.target ?? {}
  return thing?.some === true && count !== undefined && (used.get(item) ?? 0) >= inSize(count, walk.setting.size)
}

function endOfAll(walk: Walk, instructions: readonly Each[], rest: Rest): number {
  const { until, keepBack } = instructions.at(-1)?.target ?? {}
  if (until) return Math.min(walk.edge.length, findNext(walk, walk.at, until))
  if (keepBack) return indexBefore(walk, inSize(keepBack, walk.setting.size), keepBack.of)
  // `…, last sc in top of tch`: the last of them is told apart.
  const next = rest.items.find(({ node }) => node !== 'aside')
  return next?.node === 'work' && (next.target?.walk === 'last' || next.target?.thing?.kind === 'turning-chain') ? indexBefore(walk, rest.uses) : walk.edge.length
}

/** The four corners of a rectangle, worked between its edges. */
function fourCorners(walk: Walk, item: Each, used: Map<Each, number>): void {
  const { target: _, ...bare } = item
  for (let corner = 0; corner < 4; corner += 1) inOnePlace(walk, item.node === 'group' ? item.items : [bare as Work], walk.last)
  used.set(item, 4)
}

function single(walk: Walk, items: readonly Instruction[], index: number): void {
  const { at } = walk
  walk.inPlace = index
  workItems(walk, items, { uses: 0, items: [], quiet: true })
  walk.inPlace = undefined
  walk.at = at
}
