/**
 * How long a tail to leave for a seam of so many centimetres: three to four times the seam, in whipped or mattress stitch.
 * Common practice from memory: sources differ, so it is advice to print, never a thing to check.
 */
export function sewingTail(seamCm: number): { readonly from: number; readonly to: number } {
  return { from: 3 * seamCm, to: 4 * seamCm }
}

/** A tail as it is said: whole 5 cm, rounded up, and from a metre and a half on in metres: `60 cm`, `1.5 m`. */
export function tailText(cm: number): string {
  const rounded = Math.ceil(cm / 5) * 5
  return rounded < 150 ? `${rounded}\u00a0cm` : `${Math.ceil(rounded / 25) / 4}\u00a0m`
}
