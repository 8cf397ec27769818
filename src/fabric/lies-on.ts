import type { LaidRow } from './laid-row.ts'
import { legsOf, type Leg } from './over-pieces.ts'
import { crossing } from './parts.ts'
import type { Place } from './place.ts'
import type { Walk } from './walk.ts'

/** How a row lies on the fabric: what it covers, what hangs from it, what it holds out. */
export interface Lies extends Pick<LaidRow, 'over' | 'places' | 'startChains' | 'endChains' | 'foundation' | 'base' | 'closes' | 'crossings' | 'withSlips'> {
  /** Of a flat row on a flat row below: stitches that it steps in by at its start, and leaves at its end. */
  readonly steps?: { readonly start: number; readonly end: number }
  /** The pieces that it goes over, where these are more than one. */
  readonly legs?: readonly Leg[]
}

/** The row as it lies when it is done. */
export function liesOn(walk: Walk): Lies {
  const { edge, prefixed, appended } = walk
  const onChain = walk.foundation !== undefined && edge[0]?.kind === 'ch' && prefixed === 0
  const from = Math.max(prefixed, coveredFrom(walk))
  const to = Math.min(coveredTo(walk), edge.length - appended) - 1
  const first = edge[from]
  // What both layers are worked of is covered from end to end, and the places behind it with it.
  const last = (to === edge.length - 1 ? walk.behind.at(-1) : undefined) ?? edge[to]
  const stands = !onChain && first !== undefined && last !== undefined && first.kind !== 'ring' && to >= from
  const legs = stands ? legsOf(walk, to + 1) : []
  return {
    ...(stands && { over: { first, second: edge[Math.min(from + 1, to)]!, beforeLast: edge[Math.max(to - 1, from)]!, last } }),
    ...(stands && !walk.round && !walk.onRing && !walk.outline && walk.onRow === undefined && { steps: { start: from - prefixed, end: edge.length - appended - to - 1 } }),
    places: withoutSlips(walk),
    ...endsInSlips(walk),
    ...(legs.length > 1 && { legs }),
    ...(walk.closes && { closes: true }),
    ...(walk.crossings.length > 0 && { crossings: walk.round && first && last ? [...walk.crossings, crossing(walk, last, first)] : walk.crossings }),
    startChains: edge.slice(walk.firstChain, prefixed),
    endChains: appended > 0 ? edge.slice(edge.length - appended) : [...basesAtEnd(walk), ...cordAtEnd(walk)],
    foundation: foundationOf(walk),
    ...baseOf(walk, onChain),
  }
}

/** The chain under a turning chain that counts as the first stitch and was skipped. */
function baseOf({ round, made, foundation, edge, prefixed, firstChain }: Walk, onChain: boolean): Pick<Lies, 'base'> {
  const base = round || !made[0]?.turning ? undefined : onChain ? foundation?.[firstChain - 1] : prefixed > firstChain ? edge[firstChain - 1] : undefined
  return base ? { base } : {}
}

/** `6 fsc` at the end of a flat row: below each lies the chain that it made for itself. */
function basesAtEnd({ made, round }: Walk): readonly Place[] {
  const own = made.length - 1 - made.findLastIndex(({ into, kind }) => into !== undefined || kind === 'space' || kind === 'sl st')
  return round || own === made.length ? [] : made.slice(made.length - own).map(({ row }) => ({ kind: 'ch', row }))
}

/** `Ch 9, sc in the underside of each of the 15 ch`, and on the next row `sc in each of last 9 ch`: the chain hangs from the side where the row below began. */
function cordAtEnd({ cord, edge, at, round, foundation, setting }: Walk): readonly Place[] {
  const chains = cord > 0 && !round && !foundation && at >= edge.length ? edge.slice(-cord) : []
  return chains.every(({ kind }) => kind === 'ch') ? chains.map(() => ({ kind: 'ch', row: setting.rowIndex })) : []
}

/** Slip stitches that only lead in or out are no part of what a row holds out. */
export function withoutTravel(made: readonly Place[]): readonly Place[] {
  return made.some((place) => place.travel) ? made.filter((place) => !place.travel) : made
}

/** Slip stitches at a flat row's ends have no height, counted or not: the row ends at its first and last stitch between them. */
function withoutSlips(walk: Walk): readonly Place[] {
  if (walk.setting.slipFabric || walk.setting.slipsFasten || walk.round) return withoutTravel(walk.made)
  const from = walk.made.findIndex((place) => !isSlip(place))
  return from < 0 ? withoutTravel(walk.made) : walk.made.slice(from, walk.made.findLastIndex((place) => !isSlip(place)) + 1)
}

/** With the slip stitches at its ends, where these count and later rows can be worked into them. */
function endsInSlips({ edge, made, begunAt, at, prefixed, setting, round, outline, foundation }: Walk): Pick<Lies, 'withSlips'> {
  const [first, last] = [made[0], made.at(-1)]
  if (!first || !last || round || outline || foundation || setting.slipFabric || setting.slipsFasten || !isSlip(first) && !isSlip(last)) return {}
  const [from, to] = [Math.max(begunAt, prefixed), at - 1]
  if (to < from || !edge[to]) return {}
  return { withSlips: { places: withoutTravel(made), over: { first: edge[from]!, second: edge[Math.min(from + 1, to)]!, beforeLast: edge[Math.max(to - 1, from)]!, last: edge[to] } } }
}

const isSlip = ({ kind }: Place): boolean => kind === 'sl st'

/** Slip stitches at the start pass places by; the one that the first stitch stands on is covered. */
function coveredFrom({ made, edge, begunAt, setting, outline, taken }: Walk): number {
  if (setting.slipFabric || setting.slipsFasten) return begunAt
  // `join yarn at the right end of Row 6, sc in each of 24 sts`: the row-end is where the yarn comes in, and is not worked into.
  if (outline && edge[begunAt]?.kind === 'row-end' && !taken.has(edge[begunAt])) return edge.findIndex((place, at) => at >= begunAt && taken.has(place))
  const stitch = made.findIndex((place) => !isSlip(place))
  const slip = stitch > 0 ? made[stitch - 1]!.into : undefined
  if (!slip) return begunAt
  const at = edge.indexOf(slip)
  return made[stitch]!.into === slip ? at : at + 1
}

function coveredTo({ made, edge, at, setting }: Walk): number {
  if (setting.slipFabric || setting.slipsFasten) return at
  const stitch = made.findLastIndex((place) => !isSlip(place))
  const slip = made[stitch + 1]?.into
  return slip && stitch >= 0 ? edge.indexOf(slip) : at
}

/** Undersides of the chain that the row was worked into, or of stitches that made their own. */
function foundationOf({ foundation, worked, round, firstChain, shortened, lastMayWait, made }: Walk): readonly Place[] {
  if (!worked) return []
  if (lastMayWait) return []
  if (foundation) return round ? foundation.slice(shortened ? 1 : 0) : foundation.slice(firstChain)
  return made.every(({ into, kind }) => into === undefined && kind !== 'space') ? made.map(({ row }) => ({ kind: 'ch', row })) : []
}

/** `Sl st in first 7 sts, hdc in next 26 sts, sl st in next st`: the row ends as far from the end as it began from the start. */
export function closesItsStep({ made, setting, outline }: Walk, left: number): boolean {
  const start = made.findIndex(({ kind }) => kind !== 'sl st')
  const end = made.length - 1 - made.findLastIndex(({ kind }) => kind !== 'sl st')
  return !setting.round && !outline && start > 1 && left + end === start
}

/** What it leaves are the counted slip stitches by which the row below stepped in: a step, which needs no word (common practice, no source). */
export function leavesSlips({ edge, at, setting, outline }: Walk): boolean {
  const step = edge.findIndex(({ kind }) => kind === 'sl st')
  return !setting.round && !outline && step > 0 && step === at && edge.length - at > 1 && edge.slice(at).every(({ kind }) => kind === 'sl st')
}
