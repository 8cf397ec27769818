/** Exact by international agreement: 1 in = 2.54 cm. */
const cmInAnInch = 2.54

/** Exact by international agreement: 1 yd = 0.9144 m. */
const metresInAYard = 0.9144

/** Grams in an ounce, to the four places that leaflets use. */
const gramsInAnOunce = 28.3495

/** Inches to centimetres, not rounded. */
export function cmFromInches(inches: number): number {
  return inches * cmInAnInch
}

/** Centimetres to inches, not rounded. */
export function inchesFromCm(cm: number): number {
  return cm / cmInAnInch
}

/** Metres to yards, not rounded. */
export function yardsFromMetres(metres: number): number {
  return metres / metresInAYard
}

/** Yards to metres, not rounded. */
export function metresFromYards(yards: number): number {
  return yards * metresInAYard
}

/** Grams to ounces, not rounded. */
export function ouncesFromGrams(grams: number): number {
  return grams / gramsInAnOunce
}

/** Ounces to grams, not rounded. */
export function gramsFromOunces(ounces: number): number {
  return ounces * gramsInAnOunce
}

/** To the nearest half centimetre, as leaflets print what was measured in inches. */
export function nearestHalfCm(cm: number): number {
  return Math.round(cm * 2) / 2
}

/** To the nearest quarter inch, the finest step that a tape measure is read to. */
export function nearestQuarterInch(inches: number): number {
  return Math.round(inches * 4) / 4
}

const quarters = ['', '¼', '½', '¾']

/** Inches to the nearest quarter, in figures: `3¾`, `½`, `12`. */
export function quarterInchText(inches: number): string {
  const inQuarters = Math.round(inches * 4)
  const whole = Math.floor(inQuarters / 4)
  const fraction = quarters[inQuarters % 4] ?? ''
  return whole === 0 && fraction !== '' ? fraction : `${whole}${fraction}`
}
