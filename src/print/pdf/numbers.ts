import { mmPerPoint, page } from '../sheet/measures.ts'

/** A number as PDF writes it: to a thousandth of a point, never with an exponent. */
export function digits(value: number): string {
  const rounded = Math.round(value * 1000) / 1000
  // Below a millionth JavaScript would write an exponent; a thousandth is the least that is left after rounding.
  return String(rounded === 0 ? 0 : rounded)
}

/** Millimetres in points. */
export const points = (mm: number) => mm / mmPerPoint

/** A place across the page in points, written. */
export const acrossPage = (mm: number) => digits(points(mm))

/** A height in mm from the top of the page, as PDF counts it: in points from the bottom. */
export const fromBottom = (mm: number) => points(page.height - mm)

/** The same, written. */
export const upPage = (mm: number) => digits(fromBottom(mm))
