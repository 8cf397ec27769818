import type { LaidRow } from './laid-row.ts'
import type { Place } from './place.ts'

/** What stands for a place and for a row in an outline that is like another. */
export interface Likeness {
  readonly placeFor: (place: Place) => Place
  readonly rowFor: (row: LaidRow) => LaidRow
}

/** Every one for itself. */
export const alike: Likeness = { placeFor: (place) => place, rowFor: (row) => row }

/** Places and rows of another copy of a piece: as those of this one, each made once. */
export function likeness(): Likeness {
  const places = new Map<Place, Place>()
  const rows = new Map<LaidRow, LaidRow>()
  const placeFor = (place: Place): Place => {
    const known = places.get(place)
    if (known) return known
    // A row-end is known by the stitch that it belongs to.
    const copy = { ...place, ...(place.kind === 'row-end' && place.into && { into: placeFor(place.into) }) }
    places.set(place, copy)
    return copy
  }
  const all = (some: readonly Place[]): readonly Place[] => some.map(placeFor)
  const rowFor = (row: LaidRow): LaidRow => {
    const known = rows.get(row)
    if (known) return known
    const { over } = row
    const copy: LaidRow = {
      ...row, places: all(row.places), startChains: all(row.startChains), endChains: all(row.endChains), foundation: all(row.foundation),
      ...(row.base && { base: placeFor(row.base) }), ...(row.ends && { ends: [placeFor(row.ends[0]), placeFor(row.ends[1])] as const }),
      ...(over && { over: { first: placeFor(over.first), second: placeFor(over.second), beforeLast: placeFor(over.beforeLast), last: placeFor(over.last) } }),
    }
    rows.set(row, copy)
    return copy
  }
  return { placeFor, rowFor }
}
