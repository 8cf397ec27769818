import type { GoesOver } from './over-pieces.ts'
import type { Crossing } from './parts.ts'
import type { Place } from './place.ts'

/** A row as it is laid on the fabric. */
export interface LaidRow {
  /** As a person names it: `Row 4`. */
  readonly name: string
  readonly number?: number
  /** `hem row`: the label of a row without a number, in small letters. */
  readonly called?: string
  /** The piece that it belongs to, in small letters. */
  readonly piece?: string
  readonly side?: 'RS' | 'WS'
  /** It closes on itself and has no ends. */
  readonly round: boolean
  /** Stitches and spaces that it holds out above itself, in its working order. */
  readonly places: readonly Place[]
  /** Places of the fabric that it lies on: the first, the one after it, the one before the last, the last. Left out: all that the row before held out. */
  readonly over?: { readonly first: Place; readonly second: Place; readonly beforeLast: Place; readonly last: Place }
  /** How it lies where a later row is worked over the counted slip stitches at its ends. */
  readonly withSlips?: Pick<LaidRow, 'places' | 'over'>
  /** Undersides of chains added at its start, outermost first, and at its end, outermost last. */
  readonly startChains: readonly Place[]
  readonly endChains: readonly Place[]
  /** Of a row that begins in a chain: the one under the skipped turning chain that counts as a stitch. */
  readonly base?: Place
  /** Of the first row: undersides of what it was worked into, in its working order. */
  readonly foundation: readonly Place[]
  /** Its two row-ends, where it is laid on more than one outline: they are the same places on each. */
  readonly ends?: readonly [Place, Place]
  /** A flat row on a round, as the first of a flap. */
  readonly onRound?: boolean
  /** A round on the top of flat rows: it closes them to a tube, with an opening below it. */
  readonly tube?: boolean
  /** It is worked through both layers of what it lies on, and closes it: a seam. */
  readonly closes?: boolean
  /** Where it goes over from one part of the fabric to another. */
  readonly crossings?: readonly Crossing[]
  /** Where it goes over several fabrics: it holds them together. */
  readonly goesOver?: GoesOver
}

/** One stretch of a fabric's outline, in the order of a walk along it. */
export interface Stretch {
  /**
   * `top`: stitches that no row lies on. `step`: those of a row that the row on it left free. `row-ends`: a side, one place a row.
   * `underside`: of the foundation, or of chains added at a side.
   */
  readonly edge: 'top' | 'step' | 'row-ends' | 'underside'
  /** Rows that it belongs to. */
  readonly rows: readonly LaidRow[]
  readonly places: readonly Place[]
  /** Of a side: indexes at which it goes on over a seam. */
  readonly seams: readonly number[]
}

/** What a row puts on the outline, in one stretch. A `seam` is passed by whatever goes along the outline; a row can still lie on it. */
export interface Part extends Pick<Stretch, 'places'> {
  readonly edge: Exclude<Stretch['edge'], 'step'> | 'seam'
  readonly row: LaidRow
}

/** A flat row with what hangs from it, in its working order. A seam lies between two layers and has no ends that a hook can go into. */
export function partsOf(row: LaidRow): readonly Part[] {
  const { places } = row
  if (row.closes) return [{ edge: 'seam', row, places }]
  const [start, end] = row.ends ?? endsOf(places)
  return [
    { edge: 'underside', row, places: row.startChains.toReversed() }, { edge: 'row-ends', row, places: [start] },
    { edge: 'top', row, places },
    { edge: 'row-ends', row, places: [end] }, { edge: 'underside', row, places: row.endChains.toReversed() },
  ]
}

/** Places of an underside with the chain under the counted turning chain, which some take for a place; as they are where they do not reach to it. */
export function withBase(places: readonly Place[], { base, startChains, foundation }: LaidRow): readonly Place[] {
  const beside = startChains[0] ?? foundation[0]
  if (!base || !beside) return places
  if (places[0] === beside) return [base, ...places]
  return places.at(-1) === beside ? [...places, base] : places
}

/** The row-ends of a row that holds out these places. */
export function endsOf(places: readonly Place[]): readonly [Place, Place] {
  const end = (into: Place | undefined): Place => ({ kind: 'row-end', row: into?.row ?? 0, into })
  return [end(places[0]), end(places.at(-1))]
}

/** On which side a row's end lies. Seen from the right side, a row of the right side is worked from right to left. */
export function handOf({ side, places }: LaidRow, end: Place): 'left' | 'right' {
  return (side === 'WS') === (end.into === places[0]) ? 'left' : 'right'
}

/** Two rows on the same row, at the lower end of a slit: one side ends there and another begins. */
export function standBeside(one: LaidRow, other: LaidRow): boolean {
  return one !== other && one.over !== undefined && one.over.first.row === other.over?.first.row
}
