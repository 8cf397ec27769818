import { mmPerPoint, page } from '../sheet/measures.ts'

/** A number as PDF writes it: to a hundredth, which in points is finer than any printer, and never with an exponent. */
export function digits(value: number): string {
  const rounded = Math.round(value * 100) / 100
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
