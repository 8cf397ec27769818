import type { Chain, Instruction } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import type { Place } from './place.ts'
import { TooLarge } from './limits.ts'
import type { Walk } from './walk.ts'
import type { Rest } from './work-items.ts'

/**
 * A chain is a foundation, a turning chain, the start of more stitches at the row's edge, or a space, by where it stands.
 */
/** A chain that the row below made at its end, before the turn: it belongs to this row, unless this row makes its own. */
export function beginWithCarried(walk: Walk, item: Chain, items: readonly Instruction[]): void {
  if (items.find(({ node }) => node !== 'aside' && node !== 'turn')?.node === 'chain') return
  workChain(walk, item, { uses: 0, items })
}

export function workChain(walk: Walk, item: Chain, rest: Rest): void {
  const count = inSize(item.count, walk.setting.size)
  if (count > walk.setting.room) throw new TooLarge()
  // Before the first of several pieces that a band joins a chain is its tail, and no way from one to another.
  if (walk.edge.length === 0 && !walk.worked && entersPiece(rest.items)) return walk.makeChains(count, undefined)
  if (walk.edge.length === 0 && !walk.worked && rest.group === undefined) return item.counts && entersRing(rest.items) ? standInRing(walk, item) : layFoundation(walk, count)
  if (joinsPiece(rest.items, walk, count)) {
    walk.bridge = count
    return
  }
  const starts = rest.group === undefined && !walk.begun
  if (starts && !walk.chain && entersItsOwnChain(rest.items)) return addAtStart(walk, count)
  if (starts && (!item.counts && isCord(walk, count, rest.items) || isLoop(rest.items, count))) return walk.makeChains(count, undefined)
  if (starts) return beginRow(walk, item, count, rest)
  if (beforeTurn(rest.items) || endsFlatRow(walk, rest)) {
    walk.carry = item
    return
  }
  if (rest.group === undefined && walk.left === 0 && walk.edge.length > 0 && entersChains(rest.items)) return addAtEnd(walk, count)
  walk.makeChains(count, rest.group)
}

/** `Ch 3 (counts as dc), 11 dc in magic ring`: the chain begins the round in a ring that is made with it. */
function standInRing(walk: Walk, item: Chain): void {
  walk.edge = [{ kind: 'ring', row: walk.setting.rowIndex }]
  walk.ring = true
  const stitch = item.counts?.stitch
  if (stitch !== undefined) takeFirst(walk, stitch === 'this' ? walk.setting.base : stitch, item)
}

/** Whether stitches go into a ring. */
export function entersRing(items: readonly Instruction[]): boolean {
  return items.some((item) => (item.node === 'work' || item.node === 'group') && item.target?.walk === 'ring' || item.node === 'repeat' && entersRing(item.items))
}

function layFoundation(walk: Walk, count: number): void {
  const chain: Place[] = Array.from({ length: count }, () => ({ kind: 'ch', row: walk.setting.rowIndex, piece: walk.setting.piece }))
  walk.edge = chain
  walk.foundation = chain
  walk.chain = true
  walk.laid = count
}

/** `Ch 8, turn; sc in 2nd ch from hook`: the chain lengthens the edge. */
function addAtStart(walk: Walk, count: number): void {
  const chain: Place[] = Array.from({ length: count }, () => ({ kind: 'ch', row: walk.setting.rowIndex, piece: walk.setting.piece }))
  walk.edge = [...chain, ...walk.edge]
  walk.prefixed += count
  walk.chain = true
}

/** `Ch 14; dc in each of 14 ch` when no place is left: the chain goes on from the edge. */
function addAtEnd(walk: Walk, count: number): void {
  const chain: Place[] = Array.from({ length: count }, () => ({ kind: 'ch', row: walk.setting.rowIndex, piece: walk.setting.piece }))
  walk.edge = [...walk.edge, ...chain]
  walk.appended += count
  walk.noneFrom.clear()
}

/** `Ch 20, sc in each of 15 sts of next pennant`, in a repeat or not. */
function entersPiece(items: readonly Instruction[]): boolean {
  const next = items.find((item) => item.node !== 'aside')
  return next?.node === 'work' && next.target?.ofPiece !== undefined || next?.node === 'repeat' && entersPiece(next.items)
}

/** `Ch 4, join to Leg 1`: the chain lies between two pieces. */
function joinsPiece(items: readonly Instruction[], walk: Walk, count: number): boolean {
  const next = items.find((item) => item.node !== 'aside')
  // `Ch 3, sc in each of 15 sts of first leg`: the join goes without saying; one chain is a turning chain. Along an outline the piece lies on the way,
  // and on the piece that the row stands on nothing is joined.
  if (count > 1 && next?.node === 'work' && next.target?.ofPiece !== undefined && next.target.ofPiece.toLowerCase() !== walk.setting.standsOn && walk.made.length === 0 && !walk.outline) return true
  // A motif that is fastened to a space of the one beside it goes on round itself.
  return next?.node === 'join' && next.piece === true && next.neighbour?.space !== true
}

function entersChains(items: readonly Instruction[]): boolean {
  const next = items.find((item) => item.node !== 'aside')
  return next?.node === 'work' && next.target?.thing?.kind === 'chain'
}

function entersItsOwnChain(items: readonly Instruction[]): boolean {
  for (const item of items) {
    if (item.node === 'turn' || item.node === 'aside' || item.node === 'join') continue
    return item.node === 'work' && item.target?.walk === 'from-hook' || item.node === 'skip' && item.thing?.kind === 'chain'
  }
  return false
}

/** A turning chain said at the end of a row belongs to the next one. */
function beforeTurn(items: readonly Instruction[]): boolean {
  const next = items.find((item) => item.node !== 'aside')
  return next?.node === 'turn' && !items.some((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat')
}

/** `… sc in last st, ch 1.` at the end of a flat row is the next row's turning chain, turned or not. */
function endsFlatRow(walk: Walk, rest: Rest): boolean {
  return !walk.round && rest.group === undefined && !rest.quiet && walk.left === 0 && rest.items.every(({ node }) => node === 'aside' || node === 'turn')
}

/** Stitch whose turning chain has so many chains: the trade's heights. */
const heights: Readonly<Record<number, string>> = { 2: 'hdc', 3: 'dc', 4: 'tr', 5: 'dtr', 6: 'trtr' }

function beginRow(walk: Walk, item: Chain, count: number, rest: Rest): void {
  if (item.notCounted) {
    const below = nextStitch(walk, rest.items)
    if (count > 1 && below) stateFor(walk, walk.setting.lexicon.stitch(below)?.base ?? below, count, false)
    return
  }
  const stitch = item.counts?.stitch === 'this' ? (nextStitch(walk, rest.items) ?? heights[count] ?? 'dc') : item.counts?.stitch
  if (item.counts) {
    if (stitch !== undefined) {
      takeFirst(walk, stitch, item)
      if (count > 1) stateFor(walk, stitch, count, true)
    }
    const chains = item.counts.chains
    if (chains) walk.makeChains(inSize(chains, walk.setting.size), undefined)
    return
  }
  if (joinsNextStitch(rest.items)) return
  if (liesOverSkipped(walk, count, rest.items)) return walk.makeChains(count, undefined)
  // At the head of a repeat a chain is a space like those of the other passes.
  if (rest.quiet) return walk.makeChains(count, undefined)
  // A ch-1 turning chain is no stitch unless the row says so (common practice, no source).
  if (count <= 1 && walk.setting.conventions.turningChains['sc'] !== true) return
  const next = nextStitch(walk, rest.items)
  unsaid(walk, item, count, next)
}

/** What a row says of its chain holds for later ones. */
function stateFor(walk: Walk, stitch: string, count: number, counts: boolean): void {
  walk.stated[stitch] = counts
  walk.stated[ofLength(stitch, count)] = counts
}

const ofLength = (stitch: string, count: number): string => `${stitch} of ${count}`

/** `Rnd 19: Ch 16, skip next 16 sts`: an opening at the round's start, and no turning chain, which is never so long; for sc it is one chain. */
function liesOverSkipped(walk: Walk, count: number, items: readonly Instruction[]): boolean {
  const next = items.find(({ node }) => node !== 'aside')
  if (next?.node !== 'skip' || inSize(next.count, walk.setting.size) <= 2) return false
  return count > tallest || count > 2 && nextStitch(walk, items.slice(items.indexOf(next) + 1)) === 'sc'
}

/**
 * `Ch 40, sc in next 37 sts, ch 41.` of a flat row: a cord on either side of it. No turning chain with the space beside it is so long (common
 * practice, no source); and before the first stitch on another piece nothing was turned, least of all for single crochet along an underside.
 */
function isCord(walk: Walk, count: number, items: readonly Instruction[]): boolean {
  const longest = walk.setting.standsOn === undefined ? 2 * tallest : scAlongUnderside(items) ? 2 : tallest
  return !walk.round && !walk.chain && count > longest
}

function scAlongUnderside(items: readonly Instruction[]): boolean {
  const next = items.find(({ node }) => node !== 'aside')
  return next?.node === 'work' && next.stitch === 'sc' && next.target?.edge === 'underside'
}

/** `Ch 12 for the hanging loop, sl st in same st.`: nothing stands beside the chain that it could turn for, but what is worked round it at once. */
function isLoop(items: readonly Instruction[], count: number): boolean {
  const [last, ...more] = items.filter(({ node }) => node !== 'aside' && node !== 'turn')
  const [round] = more
  const about = round?.node === 'work' && round.target?.thing?.kind === 'space' && round.target.thing.chains?.values[0] === count
  return (more.length === 0 || about) && last?.node === 'work' && last.stitch === 'sl st' && last.target?.walk === 'same'
}

/** Chains of the tallest turning chain, that of a treble treble. */
const tallest = 6

/** `Ch 2, 2-dc cl in same sp (counts as 3-dc cl)`: the chain is part of the stitch that follows. */
function joinsNextStitch(items: readonly Instruction[]): boolean {
  const next = items.find((item) => item.node !== 'aside' && item.node !== 'turn')
  return next?.node === 'work' && next.counts?.stitch !== undefined && next.target?.walk !== 'from-hook'
}

/** The chain's meaning is not said in the row: the pattern's convention decides, or both readings are kept. */
function unsaid(walk: Walk, item: Chain, count: number, next: string | undefined): void {
  const usual = heights[count]
  const lexicon = walk.setting.lexicon
  const height = next === undefined ? undefined : lexicon.stitch(next)?.height
  const chainStitch = height !== undefined && (height === count || count === height - 1 || count === 1) ? next : (height !== undefined && count > height ? next : usual)
  const stitch = chainStitch === undefined ? usual : (lexicon.stitch(chainStitch)?.base ?? chainStitch)
  if (stitch === undefined) return
  const { turningChains } = walk.setting.conventions
  // The pattern's convention speaks of the usual chain of a stitch; what a row said of another length holds for that length.
  const declared = (heights[count] === stitch ? undefined : turningChains[ofLength(stitch, count)]) ?? turningChains[stitch]
  const beyond = height !== undefined ? count - height : 0
  const habit = countsByHabit(stitch, count)
  const counts = declared ?? (walk.choose(`turning-chain ${stitch}`, readingsFor(stitch, count), item) === 0 ? habit : !habit)
  if (!counts) return
  takeFirst(walk, stitch, item)
  // A longer chain is one stitch and the chains beyond its height: ch 4 under dc is dc and ch 1.
  if (beyond > 0) walk.makeChains(beyond, undefined)
}

/** Whether the trade usually counts it when nothing is said: dc and taller yes; hdc, and a chain shorter than its stitch, no. */
function countsByHabit(stitch: string, count: number): boolean {
  return stitch !== 'hdc' && stitch !== 'sc' && count > 2
}

function readingsFor(stitch: string, count: number): readonly string[] {
  const counted = `the ch-${count} turning chain counts as ${stitch}`
  const not = `the ch-${count} turning chain is not a stitch`
  return countsByHabit(stitch, count) ? [counted, not] : [not, counted]
}

/** The first stitch that the row works after its beginning chain. */
function nextStitch(walk: Walk, items: readonly Instruction[]): string | undefined {
  for (const item of items) {
    if (item.node === 'work') return item.stitch === 'inc' || item.stitch === 'dec' ? walk.setting.base : item.stitch
    if (item.node === 'repeat' || item.node === 'group') return nextStitch(walk, item.items)
    if (item.node === 'chain') return undefined
  }
  return undefined
}

/** A counted turning chain is a stitch and takes the place of the first stitch below. */
function takeFirst(walk: Walk, stitch: string, item: Chain): void {
  const onSlip = standsOnSlip(walk, item)
  const place = walk.edge[onSlip ? walk.last : walk.at]
  if (place?.kind === 'ring' || onSlip) {
    if (!onSlip) walk.last = walk.at
    walk.tookFirst = onSlip
  } else {
    walk.take(walk.at, item)
    walk.tookFirst = true
  }
  walk.make({ kind: stitch, into: place, turning: true })
}

/** `Sl st in first 5 sts, ch 3 (counts as dc)`: the chain rises from the stitch that the last slip stitch went into. */
function standsOnSlip(walk: Walk, { counts }: Chain): boolean {
  return !walk.round && walk.travelled > 0 && walk.made.length === walk.travelled && walk.last === walk.at - 1
    && (counts?.onSlip === true || walk.choose('chain-on-slip', ['the turning chain stands on the last slip stitch', 'the turning chain takes the stitch after the slip stitches']) === 0)
}
