import { endsOf, type LaidRow, type Part, type Stretch } from './laid-row.ts'
import type { Outline } from './outline.ts'
import type { Crossing } from './parts.ts'
import type { Place } from './place.ts'

/** What a row enclosed when it went over from one part to another: a neck, a slit. */
export interface Opening {
  /** The edges of the parts and what lies between them, in the direction in which the row was worked. */
  readonly below: readonly Part[]
  /** The underside of the chain that closed it. */
  readonly above?: Part
  /** The row that closed it. */
  readonly row: LaidRow
}

/** An opening that a crossing closed over these stretches. */
export function openingUnder({ bridge }: Crossing, below: readonly Part[], row: LaidRow): Opening {
  return { below, row, ...(bridge.length > 0 && { above: { edge: 'underside', row, places: bridge.toReversed() } }) }
}

/**
 * All round an opening, in each way in which makers meet it: at the ends of the chain the row that made it has a side of its own that is
 * worked, or none (common practice, no source).
 */
export function roundOpening({ below, above, row }: Opening): readonly (readonly Part[])[] {
  if (!above) return [below]
  const [one, other] = endsOf(row.places).map((end): Part => ({ edge: 'row-ends', row, places: [end] }))
  return [[...below, above], [other!, ...below, one!, above]]
}

/** The underside of the chain with which a round closes flat rows to a tube, such as that over an instep. */
export function underChain(row: LaidRow): readonly Stretch[] {
  const last = row.places.at(-1)
  const places = last?.kind === 'space' ? Array.from({ length: last.chains ?? 0 }, (): Place => ({ kind: 'ch', row: last.row })) : []
  return places.length > 0 ? [{ edge: 'underside', rows: [row], places, seams: [] }] : []
}

/** A slit in a tube, with the chain that closed it where there is one, as an opening inside the outline. */
export function slitLeft(slit: readonly Stretch[]): readonly Opening[] {
  const chain = slit.find(({ edge, rows }) => edge === 'underside' && rows[0]?.round === true)
  const below = partsOfStretches(slit.filter((stretch) => stretch !== chain))
  if (below.length === 0) return []
  return [{ below, row: chain?.rows[0] ?? below[0]!.row, ...(chain && { above: partsOfStretches([chain])[0]! }) }]
}

/** Stretches part by part: each row-end is one of its own. */
export function partsOfStretches(stretches: readonly Stretch[]): readonly Part[] {
  return stretches.flatMap(({ edge, rows, places }): Part[] => (edge === 'row-ends' ? places.map((place, index) => ({ edge, row: rows[index]!, places: [place] })) : [{ edge: edge === 'step' ? 'top' : edge, row: rows[0]!, places }]))
}

/** The sides of a slit made longer by the ends of the round that closes it over a chain: makers work into these, or do not (common practice, no source). */
export function withEndsOf(row: LaidRow, sides: readonly Stretch[]): readonly Stretch[] {
  const [one, other] = endsOf(row.places)
  const [first, last] = [sides[0], sides.at(-1)]
  if (sides.length < 2 || first?.edge !== 'row-ends' || last?.edge !== 'row-ends') return sides
  return [{ ...first, rows: [row, ...first.rows], places: [other, ...first.places] }, ...sides.slice(1, -1), { ...last, rows: [...last.rows, row], places: [...last.places, one] }]
}

/** The underside of a chain that leads over from one fabric to another. */
export const isBridge = ({ edge, row, places }: Part): boolean => edge === 'underside' && row.goesOver?.legs.some(({ bridge }) => bridge.includes(places[0]!)) === true

/** The side that the row has at an end of such a chain. */
export const sideOfBridge = ({ row, places }: Part): Part => ({ edge: 'row-ends', row, places: [{ kind: 'row-end', row: places[0]!.row }] })

/** The openings inside an outline; and itself as makers may go along it beside such chains. */
export const openingsOf = (outline: Outline): readonly Outline[] => [...outline.openings, ...outline.withBridgeEnds]
