import { isStitch, type Place } from '../fabric/place.ts'
import { placeWidth } from './gauge.ts'

/** A stitch, or what a maker calls one: two in one place are an increase, several worked together a decrease. */
export interface StitchMark {
  readonly mark: 'stitch' | 'increase' | 'decrease'
  /** US word. */
  readonly kind: string
  /** Middle of what it takes up, in stitches from the row's beginning. */
  readonly at: number
}

/** A stitch of a row with the stretch that it takes up, in stitches from the row's beginning. */
export interface SpreadStitch {
  readonly place: Place
  readonly from: number
  readonly to: number
}

/** Whether a kind is of several stitches worked together. */
export const isDecrease = (kind: string): boolean => /\d+tog$/.test(kind)

/** The stitches of a row side by side; spaces between them keep their room. */
export function spread(made: readonly Place[]): readonly SpreadStitch[] {
  const stitches: SpreadStitch[] = []
  let at = 0
  for (const place of made) {
    const from = at
    at += placeWidth(place)
    if (isStitch(place) && place.travel !== true) stitches.push({ place, from, to: at })
  }
  return stitches
}

/** The stitches of a row as marks, in order. All stitches in a ring are one group and yet no increase. */
export function stitchMarks(made: readonly Place[]): readonly StitchMark[] {
  const marks: StitchMark[] = []
  let open: { readonly group: number | undefined; readonly from: number } | undefined
  for (const { place: { kind, group, into }, from, to } of spread(made)) {
    const shared = into?.kind === 'ring' || into?.kind === 'row-end' ? undefined : group
    if (open && shared !== undefined && open.group === shared) marks.splice(-1, 1, { mark: 'increase', kind, at: (open.from + to) / 2 })
    else {
      open = { group: shared, from }
      marks.push({ mark: isDecrease(kind) ? 'decrease' : 'stitch', kind, at: (from + to) / 2 })
    }
  }
  return marks
}
