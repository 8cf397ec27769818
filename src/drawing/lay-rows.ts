import type { Place } from '../fabric/place.ts'
import { placeWidth, rowHeight, rowWidth, type InkedRow, type StitchSize } from './gauge.ts'

/** A row where it lies in a flat piece: across in stitches, up in mm from the piece's foundation. */
export interface LaidRow extends InkedRow {
  readonly left: number
  readonly right: number
  /** The row below ends here and this one begins. */
  readonly base: number
  readonly top: number
  /** 1 when the row was worked from left to right as it lies, −1 the other way. */
  readonly direction: 1 | -1
  /** The stitch before its first, across; with the direction it gives where each stitch stands. */
  readonly start: number
}

interface Known {
  readonly across: number
  readonly top: number
}

/**
 * Lays the rows of a flat piece over one another. Each row stands where most of its stitches stand on the row below, so that places
 * left at an edge leave a step, and a neck leaves two shoulders. Rows that stand on nothing known are left out.
 */
export function layRows(rows: readonly InkedRow[], size: StitchSize): readonly LaidRow[] {
  const known = new Map<Place, Known>()
  const laid: LaidRow[] = []
  for (const inked of rows) {
    const { made } = inked.row.fabric
    const width = rowWidth(inked.row)
    if (width === 0) continue
    const middles = middlesOf(made)
    const below = made.flatMap((place, at) => {
      const under = place.into && known.get(place.into)
      return under ? [{ at: middles[at] ?? 0, under }] : []
    })
    if (below.length === 0 && laid.length > 0) continue
    const direction = directionOf(below) ?? (inked.row.side === 'WS' ? 1 : -1)
    // The first row of all begins at the right, where a right-handed maker begins.
    const start = below.length === 0 ? (direction === 1 ? 0 : width) : median(below.map(({ at, under }) => under.across - direction * at))
    const base = below.length === 0 ? 0 : median(below.map(({ under }) => under.top))
    const top = base + rowHeight(inked.row, size)
    const end = start + direction * width
    const flat = slips(made)
    const [own, ownEnd] = [start + direction * flat.before, end - direction * flat.after]
    laid.push({ ...inked, left: Math.min(own, ownEnd), right: Math.max(own, ownEnd), base, top, direction, start })
    for (const [at, place] of made.entries()) {
      const across = start + direction * (middles[at] ?? 0)
      known.set(place, { across, top: at < flat.before || at >= made.length - flat.after ? base : top })
      // The chains that a first row is worked into can be worked along their other side.
      if (below.length === 0 && place.into) known.set(place.into, { across, top: base })
    }
  }
  return laid
}

/** Slip stitches that begin or end a row: they lie flat on the row below, so that the row steps in there. */
function slips(made: readonly Place[]): { readonly before: number; readonly after: number } {
  const isSlip = ({ kind, travel }: Place) => kind === 'sl st' && travel !== true
  const before = made.findIndex((place) => !isSlip(place))
  return before === -1 ? { before: 0, after: 0 } : { before, after: made.length - 1 - made.findLastIndex((place) => !isSlip(place)) }
}

/** The middle of each place, in stitches from the row's beginning. */
export function middlesOf(made: readonly Place[]): readonly number[] {
  let at = 0
  return made.map((place) => {
    const width = placeWidth(place)
    at += width
    return at - width / 2
  })
}

/** Which way a row goes over the row below; undefined when its stitches do not tell. */
function directionOf(below: readonly { readonly at: number; readonly under: Known }[]): 1 | -1 | undefined {
  const mean = below.reduce((sum, { at }) => sum + at, 0) / below.length
  const along = below.reduce((sum, { at, under }) => sum + (at - mean) * under.across, 0)
  return along === 0 || below.length === 0 ? undefined : along > 0 ? 1 : -1
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  const middle = sorted.length / 2
  return ((sorted[Math.ceil(middle) - 1] ?? 0) + (sorted[Math.floor(middle)] ?? 0)) / 2
}
