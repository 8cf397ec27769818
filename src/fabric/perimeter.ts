import type { Place } from './place.ts'

/** A flat row as it lies in the fabric. */
export interface FlatRow {
  /** All it made, in its working order, slip stitches at its ends included. */
  readonly made: readonly Place[]
  /** Places of the row below that it left at its end, in its working order. */
  readonly left: readonly Place[]
  /** Undersides of the chains that it added at its start, outermost first. */
  readonly added: readonly Place[]
}

/** The outline of a flat piece, edge by edge, from the last stitch worked in the direction of work. */
export interface Perimeter {
  /** Down the side where the last row ended. */
  readonly endSide: readonly Place[]
  /** Along the underside of the foundation. */
  readonly bottom: readonly Place[]
  /** Up the other side. */
  readonly startSide: readonly Place[]
  /** The last row, in its working order. */
  readonly top: readonly Place[]
}

/**
 * The outline of flat rows. Rows go to and fro, so a row's start lies above the end of the row below. A row that stops early leaves
 * places on that side, and one that begins with slip stitches steps in on the other: both are steps of the outline.
 *
 *          ← top ←
 *        ┌─────────┐      endSide: row-end, and at a step the places left, from the inside outwards
 *     ┌──┘         └──┐
 *     └───────────────┘   bottom: the foundation from the end side to the start side
 */
export function perimeter(rows: readonly FlatRow[], foundation: readonly Place[]): Perimeter {
  const top = rows.at(-1)
  if (!top) return { endSide: [], bottom: foundation, startSide: [], top: [] }
  return {
    endSide: down(rows, true),
    // The first row went from the first chain to the last: seen from the last row's end side, an odd number of rows ends where it ended.
    bottom: rows.length % 2 === 1 ? foundation.toReversed() : foundation,
    startSide: down(rows, false).toReversed(),
    top: proper(top).stitches,
  }
}

/** The whole outline in working order: without a turn down the side first, after a turn back along the top first. */
export function outline(edges: Perimeter, turned: boolean): readonly Place[] {
  const all = [...edges.endSide, ...edges.bottom, ...edges.startSide, ...edges.top]
  return turned ? all.toReversed() : all
}

/** From the top row to the first, along the side where the last row ended (or began). */
function down(rows: readonly FlatRow[], endSide: boolean): readonly Place[] {
  const places: Place[] = []
  for (let index = rows.length - 1; index >= 0; index -= 1) {
    const row = rows[index]!
    // Every second row down, this side is the other end of the row.
    const isEnd = (rows.length - 1 - index) % 2 === 0 ? endSide : !endSide
    const parts = proper(row)
    const outer = isEnd ? parts.stitches.at(-1) : parts.stitches[0]
    places.push({ kind: 'row-end', row: index, into: outer })
    if (isEnd) places.push(...parts.trailing, ...(index > 0 ? row.left : []))
    else places.push(...parts.leading.toReversed(), ...row.added)
  }
  return places
}

/** A row's own stitches, without the slip stitches that lead in and out. */
function proper(row: FlatRow): { readonly leading: readonly Place[]; readonly stitches: readonly Place[]; readonly trailing: readonly Place[] } {
  const worked = row.made
  let from = 0
  while (from < worked.length && worked[from]!.travel) from += 1
  let to = worked.length
  while (to > from && worked[to - 1]!.travel) to -= 1
  return { leading: worked.slice(0, from), stitches: worked.slice(from, to), trailing: worked.slice(to) }
}
