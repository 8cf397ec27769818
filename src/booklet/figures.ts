/** The space at which no line is broken. */
export const nbsp = '\u00a0'

const english = new Intl.NumberFormat('en-US', { maximumFractionDigits: 2 })

/** A number as it is printed: `1,046.5`, `−6`; a comma at the thousands, a true minus, two decimal places at the most. */
export function figure(value: number): string {
  return english.format(value).replace('-', '−')
}

/** Figures of the sizes, smallest first and outside the brackets: `48 (64, 80)`. One figure when all are the same. */
export function perSize(figures: readonly string[]): string {
  const [first = '', ...rest] = figures
  if (rest.every((other) => other === first)) return first
  return `${first}${nbsp}(${rest.join(`,${nbsp}`)})`
}

/** A name that no line break parts: `2 years`. */
export const unparted = (name: string) => name.replaceAll(' ', nbsp)

/** Numbers of the sizes with a unit: `120 (240) g`. */
export function withUnit(values: readonly number[], unit: string): string {
  return `${perSize(values.map(figure))}${nbsp}${unit}`
}

/** The value that holds for a size: a list of one holds for all of them. */
export function inSize<T>(values: readonly T[], size: number): T | undefined {
  return values.length === 1 ? values[0] : values[size]
}

/** One value a size from a list that may hold one for all. */
export function forSizes<T>(values: readonly T[], sizes: number): readonly T[] {
  return Array.from({ length: Math.max(1, sizes) }, (_, size) => inSize(values, size)).filter((value) => value !== undefined)
}

const words = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

/** Small whole numbers in words, as running text has them: `eight`; others in figures. */
export function inWords(value: number): string {
  return words[value] ?? figure(value)
}

/** The first letter large; signs before it are passed over: `*sc` becomes `*Sc`. */
export function capital(text: string): string {
  return text.replace(/^([^A-Za-z0-9]*)([a-z])/, (_, signs: string, letter: string) => signs + letter.toUpperCase())
}

/** A sentence: the first letter large, a full stop at the end. */
export function sentence(text: string): string {
  const trimmed = text.trim()
  return trimmed === '' ? '' : capital(/[.!?…]$/.test(trimmed) ? trimmed : `${trimmed.replace(/[,;:]$/, '')}.`)
}
