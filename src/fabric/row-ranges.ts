import type { RowLabel } from '../notation/labels.ts'
import type { ReadRow } from '../notation/parse-row.ts'
import type { RowReference } from '../notation/row-reference.ts'
import { inSize } from '../notation/target.ts'
import type { Total } from '../notation/written-count.ts'
import type { Span } from '../text/span.ts'

/** How many rows a range says that it has, in its label or beside its total, and where it says so. */
export function rowsSaid(label: RowLabel, totals: readonly Total[], size: number): { readonly said: number | undefined; readonly place: Span } {
  const total = totals.find(({ rows }) => rows)
  if (label.rowsSaid !== undefined || !total?.rows) return { said: label.rowsSaid, place: label }
  return { said: inSize(total.rows, size), place: total }
}

/** How many rows the stripes come to that are told with a range: `2 rows A, 2 rows B, 4 rows A`. */
export function rowsStriped({ stripes }: ReadRow, size: number): number | undefined {
  return stripes && inSize(stripes, size)
}

/** How many rows a repeat of rows comes to, when it says how often; undefined when it fills whatever range it stands for. */
export function rowsFilled(reference: RowReference | undefined, size: number): number | undefined {
  if (reference?.kind === 'last' && reference.times) return inSize(reference.count, size) * inSize(reference.times, size)
  if (reference?.kind !== 'copy' && reference?.kind !== 'piece' || !reference.blocks?.every(({ times }) => times)) return undefined
  return reference.blocks.reduce((sum, { rows, times }) => sum + rows.length * inSize(times!, size), 0)
}

/** The row on which a repeat of rows ends in a range of so many, and the one that it says. */
export function rowsEndOn(reference: RowReference | undefined, length: number): { readonly is: number; readonly says: { readonly row: number } & Span } | undefined {
  if (reference?.kind !== 'copy' || !reference.endsOn || reference.blocks.length !== 1) return undefined
  const { rows } = reference.blocks[0]!
  return { is: rows[(length - 1) % rows.length]!, says: reference.endsOn }
}

/** `Rep last 2 rows 3 more times.` on a line of its own: whether its rows are numbered too, the next number tells. */
export function rowsRepeated(reference: RowReference | undefined, size: number): number {
  return reference?.kind === 'last' ? inSize(reference.count, size) * (reference.times ? inSize(reference.times, size) : 1) : 0
}
