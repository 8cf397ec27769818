import type { BorderEdge } from './border-edge.ts'
import type { RowText } from '../notation/row-text.ts'
import type { Instruction } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import { edgesUsed, gapIn } from './edges-used.ts'
import { passedInSilence, passedOver, stopsShort } from './along-outline.ts'
import { compareTotal, withJoin, saysOf, type Comparison, type Made } from './compare-total.ts'
import { isSpace, isStitch, type Edge, type Place } from './place.ts'
import { closesItsStep, leavesSlips, liesOn, withoutTravel, type Lies } from './lies-on.ts'
import type { HeldRun } from './held.ts'
import { joinNeighbours } from './join-neighbours.ts'
import { turnAfter } from './turns.ts'
import { leftOfPiece } from './older-row.ts'
import { nothingNeeded, passedAsElsewhere } from './passed-runs.ts'
import { tellOddOneOut } from './skipped-places.ts'
import { usesOf } from './uses.ts'
import type { ReadingPoint } from './noted.ts'
import type { RowSetting } from './row-setting.ts'
import { Walk } from './walk.ts'
import { beginWithCarried } from './work-chain.ts'
import { workItems } from './work-items.ts'
import { tallyOf } from './tally.ts'
import { joinedChain, whatWasMade } from './what-was-made.ts'
import { settleLoose } from './work-along-edge.ts'
import type { EdgeUse, Step, Trouble, WorkedRow } from './worked-row.ts'

/** One row worked in one reading. */
export interface RowTry {
  readonly offers: number
  readonly worksOver: number
  readonly leaves: number
  readonly makes: number
  readonly made: Made
  readonly comparison: Comparison
  readonly troubles: readonly Trouble[]
  readonly steps: readonly Step[]
  readonly repeats: readonly { readonly span: { readonly start: number; readonly end: number }; readonly times: number }[]
  readonly points: readonly ReadingPoint[]
  readonly assumed: readonly string[]
  readonly yarns: Walk['yarns']
  readonly stated: Walk['stated']
  /** Why it cannot be counted, when it cannot. */
  readonly undecided?: NonNullable<Walk['undecided']>
  readonly next: Edge
  /** All that the row made, slip stitches at its ends included, the places it left at its end, those before its first one, and those that were worked through both layers. */
  readonly row: { readonly made: readonly Place[]; readonly left: readonly Place[]; readonly before: readonly Place[]; readonly through: readonly Place[]; readonly turned: boolean }
  /** It works in an older row, or along a piece, whose count is in doubt. */
  readonly onDoubt: boolean
  /** The older row in which it works. */
  readonly onRow?: number
  /** The other piece on whose edge it went on. */
  readonly onPiece?: string
  /** Stitches that it passed over and that wait. */
  readonly holds: readonly HeldRun[]
  /** Of a border: how many places of each edge it used. */
  readonly along?: readonly EdgeUse[]
  /** The outline that it went along, from where its words fit. */
  readonly border?: BorderEdge
  readonly loose?: WorkedRow['loose']
  /** Letter of the yarn in hand at its end. */
  readonly yarn?: string | undefined
  /** It closes the flat rows below it to a tube. */
  readonly tube?: boolean
  /** How it lies on the fabric. */
  readonly lies: Lies
  /** Nothing is wrong with it. */
  readonly comesOut: boolean
}

export interface RowToWork {
  readonly text: RowText
  readonly items: readonly Instruction[]
  readonly edge: Edge
  readonly before: number | undefined
  /** A remark above it tells where the yarn is joined. */
  readonly joined?: boolean
}

/** Works a row on an edge in the reading that the setting asks for. */
export function workRow({ text, items, edge, before }: RowToWork, setting: RowSetting): RowTry {
  const walk = new Walk(edge, setting)
  if (edge.carry) beginWithCarried(walk, edge.carry, items)
  workItems(walk, items, { uses: 0, items: [] })
  tellOddOneOut(walk)
  settleSlips(walk)
  joinNeighbours(walk)
  const idle = !items.some((item) => item.node !== 'aside' && item.node !== 'turn' && item.node !== 'join' && item.node !== 'unreadable')
  const left = idle ? 0 : leftPlaces(walk, lastSpan(items, text))
  if (onlyLoop(items)) walk.leaves = true
  const looseBy = settleLoose(walk, saidBy(text, setting))
  if (left > 0 && left === keptBackAtEnd(items, setting.size)) walk.leaves = true
  if (left > 0 && (closesItsStep(walk, left) || leavesSlips(walk))) walk.leaves = true
  // A row along one edge of a piece leaves the others as they are; a round goes along all of them.
  // A flat row that is joined anew to a round is a strap or a flap: it takes the stitches that it names.
  const onRound = walk.onRow === undefined ? edge.round : setting.rowsBefore.get(walk.onRow)?.round === true
  if (onRound && !setting.round && items.some((item) => item.node === 'start' && item.target.walk !== 'layers')) walk.leaves = true
  // A tab on another piece, joined in the 8th stitch of its edge: what lies on either side is left (common practice, no source). One alone is a slip.
  if (left > 1 && setting.beginsPart && setting.hangsWith.size > 0 && !setting.round && items.some((item) => item.node === 'start' && (item.target.passing ?? 0) > 0)) walk.leaves = true
  if ((setting.beside || setting.takenUpLater) && !setting.round) walk.leaves = true
  if (walk.outline && !setting.round) {
    if (!walk.leaves && !endsEvenly(items)) stopsShort(walk, lastSpan(items, text), goesWholeWay(items))
    walk.leaves = true
  }
  if (left > 0 && !walk.leaves) walk.trouble({ kind: 'left-over', span: lastSpan(items, text), count: left })
  const made = joinedChain(walk, saidBy(text, setting)) ?? whatWasMade(walk)
  const totals = setting.conventions.joinsCount && items.some(({ node }) => node === 'join') ? withJoin(text.totals, made.stitches, setting.size) : text.totals
  const comparison = compareTotal(totals, made, setting.size, before, setting.conventions.chainsCount, setting.lexicon)
  const worksOver = walk.at - walk.opened - walk.missed
  const troubles = walk.troubles.map((trouble) => (trouble.kind === 'overrun' && trouble.what === undefined && trouble.wants === 0 ? { ...trouble, wants: Math.max(worksOver, usesOf(items, walk)), offers: walk.edge.length - walk.opened } : trouble))
  // A border that is turned first has its outline the other way round already; what counts is a turn at its end.
  // So it is with a round that closes flat rows to a tube.
  const turned = walk.outline ? turnAfter(items) === true || !setting.round : setting.round && !walk.onRing && !edge.chain ? turnAfter(items) === true : (walk.turned ?? !setting.round)
  const lays = !walk.worked && walk.laid > 0
  const makes = comparison.chainsCounted ? made.stitches + made.chains : made.stitches
  return {
    offers: lays ? 0 : (walk.edge.length - walk.opened) * walk.layers,
    worksOver: Math.max(0, worksOver) * walk.layers,
    leaves: lays ? 0 : Math.max(0, walk.edge.length - walk.at) + walk.missed,
    makes,
    made,
    comparison,
    troubles,
    steps: tallyOf(walk),
    repeats: walk.repeats,
    points: walk.points,
    assumed: [...walk.assumed, ...(comparison.chainsCounted && setting.conventions.chainsCount === undefined ? ['each chain counts as a stitch'] : [])],
    yarns: walk.yarns,
    yarn: walk.yarn,
    stated: walk.stated,
    ...(walk.undecided !== undefined && { undecided: walk.undecided }),
    next: { ...nextEdge(walk, setting, turned), ...(walk.carry && { carry: walk.carry }) },
    row: { made: walk.made, left: walk.edge.slice(walk.at), before: walk.edge.slice(0, Math.max(0, walk.edge.findIndex((place) => walk.made[0]?.into === place))), through: [...walk.throughBoth], turned },
    lies: liesOn(walk),
    holds: walk.holds,
    ...(walk.onRow !== undefined && { onRow: walk.onRow }),
    ...(walk.onPiece !== undefined && { onPiece: walk.onPiece.name }),
    onDoubt: walk.onRow !== undefined && setting.rowsBefore.get(walk.onRow)?.doubt === true || walk.onPiece !== undefined && setting.pieces.get(walk.onPiece.name.toLowerCase())?.sound === false,
    ...(walk.outline && { along: edgesUsed(walk), border: walk.outline }),
    ...(looseBy !== 0 && walk.loose && { loose: { span: walk.loose.span, by: looseBy, holds: made.stitches - looseBy } }),
    comesOut: troubles.length === 0 && comparison.totalAgrees && comparison.kindsAgree && comparison.changeAgrees,
  }
}

/** `Ch 12 for the hanging loop, sl st in same st. Fasten off.`: a row that makes nothing else goes no farther. */
function onlyLoop(items: readonly Instruction[]): boolean {
  const worked = items.filter(({ node }) => node !== 'aside' && node !== 'turn')
  const [chain, last] = worked
  return worked.length === 2 && chain?.node === 'chain' && (chain.count.values[0] ?? 0) >= 4 && (last?.node === 'join' || last?.node === 'work' && last.stitch === 'sl st' && last.target?.walk === 'same')
}

/** `evenly` leaves it to the maker how the places of an edge are used; of the edge at which the row ends that is said behind all others. */
function endsEvenly(items: readonly Instruction[]): boolean {
  const last = items.findLast((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat')
  return last?.node === 'work' && (last.target?.evenly === true || last.about === true)
}

/** `…, sc in each of 3 row-ends up to the top`: it says how far it goes. */
function goesWholeWay(items: readonly Instruction[]): boolean {
  const last = items.findLast((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat')
  return last?.node === 'work' && last.target?.wholeWay === true
}

function lastSpan(items: readonly Instruction[], text: RowText): { readonly start: number; readonly end: number } {
  const last = items.findLast((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat' || item.node === 'skip' || item.node === 'chain' || item.node === 'blocks')
  return last ? { start: last.start, end: last.end } : { start: text.start, end: text.end }
}

/** `Sc to last 4 sts, turn`: the row itself says that 4 are left. */
function keptBackAtEnd(items: readonly Instruction[], size: number): number | undefined {
  const last = items.findLast((item) => item.node === 'work' || item.node === 'group' || item.node === 'repeat' || item.node === 'skip')
  if ((last?.node === 'work' || last?.node === 'group') && last.target?.keepBack) return inSize(last.target.keepBack, size)
  return last?.node === 'repeat' && last.times.kind === 'to-end' && last.times.keepBack ? inSize(last.times.keepBack, size) : undefined
}

/** The count that a total states, of which along an edge the maker is told no other. */
function saidBy(text: RowText, { size }: RowSetting): number | undefined {
  const says = saysOf(text.totals, size)
  const kinds = Object.values(says?.kinds ?? {})
  return says?.count ?? (kinds.length > 0 ? kinds.reduce((sum, count) => sum + count, 0) : undefined)
}

/** The height of the step beside the join, or the end of a low row, is passed like those between stitches. */
function passLastRowEnds(walk: Walk, span: Span): void {
  if (walk.edge.slice(walk.at).some((place) => place.kind !== 'row-end')) return
  const { passed } = passedOver(walk, walk.at, walk.end)
  const begun = walk.at > 0 && walk.at < walk.end && walk.edge[walk.at - 1]!.kind === 'row-end' && walk.taken.has(walk.edge[walk.at - 1]!)
  if (passed <= passedInSilence && !begun) walk.at = walk.end
  else walk.trouble({ kind: 'row-ends-passed', span, count: Math.max(passed, walk.end - walk.at), ...gapIn(walk, walk.edge.slice(walk.at, walk.end), undefined, span) })
}

/** Slip stitches at the end of a flat row step in at that edge, as those at its start do. Whether they count is the pattern's matter. */
function settleSlips(walk: Walk): void {
  if (walk.setting.slipFabric || walk.setting.slipsFasten || walk.round) return
  let tail = walk.made.length
  while (tail > 0 && walk.made[tail - 1]!.kind === 'sl st' && !walk.made[tail - 1]!.travel) tail -= 1
  const trailing = tail > 0 && tail < walk.made.length
  if (!trailing && walk.travelled === 0) return
  const counts = walk.setting.conventions.slipStitchesCount
    ?? walk.choose('slip-stitches', ['slip stitches at the edges are not counted', 'slip stitches at the edges are counted']) === 1
  walk.made = walk.made.map((place, index) => {
    const edge = place.travel || trailing && index >= tail
    return edge ? { ...place, travel: !counts } : place
  })
}

/** Places that nothing was worked into and that nothing passes over as a matter of course. */
function leftPlaces(walk: Walk, span: Span): number {
  if (walk.outline && walk.round) passLastRowEnds(walk, span)
  if (walk.at >= walk.edge.length || !walk.worked && walk.laid > 0) return 0
  if (walk.onPiece !== undefined) return leftOfPiece(walk)
  if (nothingNeeded(walk, walk.at, walk.worksSpaces) || passedAsElsewhere(walk)) {
    walk.at = walk.edge.length
    return 0
  }
  // A row that works into spaces passes over the stitches after the last of them.
  if (walk.worksSpaces && walk.onSpace && !walk.edge.slice(walk.at).some((place) => isSpace(place)) && walk.round) {
    walk.at = walk.edge.length
    return 0
  }
  if (walk.lastMayWait && walk.at === walk.edge.length - 1) {
    // Its other side holds the stitches of the first corner: it is no place of its own then.
    walk.edge = walk.edge.slice(0, -1)
    return 0
  }
  let left = 0
  for (let index = walk.at; index < walk.edge.length; index += 1) {
    const place = walk.edge[index]!
    if (!place.travel && (isStitch(place) || walk.worksSpaces || walk.outline)) left += 1
  }
  return left
}

function nextEdge(walk: Walk, setting: RowSetting, turned: boolean): Edge {
  if (!walk.worked) {
    const ring = walk.ring && walk.edge[0]?.kind === 'ring'
    return { places: walk.edge, round: walk.closedChain || ring, chain: walk.chain && !ring, ...(walk.ring && !ring && { formsRing: true }), ...(walk.closedInFirst && { closedInFirst: true }), ...(walk.foundation && { foundation: walk.foundation }) }
  }
  const worked = withoutTravel(walk.made)
  const places = walk.closedByStitch ? [worked.at(-1)!, ...worked.slice(0, -1)] : worked
  if (!turned) return { places, round: setting.round, chain: false }
  const back = places.toReversed()
  const slips = setting.round ? 0 : walk.made.findIndex((place) => !place.travel)
  // After a join the turned round begins in the stitch of the join again.
  return { places: setting.round && back.length > 0 ? [back.at(-1)!, ...back.slice(0, -1)] : back, round: setting.round, chain: false, ...(setting.round && { turnedRound: true }), ...(slips > 0 && { slips }) }
}
