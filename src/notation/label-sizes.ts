/** Sizes in a row's label: numbers that differ by size, and sizes that alone work the row. */

/** First and last row number in one size; a size that does not work the row has `last` before `first`. */
export interface RowRange {
  readonly first: number
  readonly last: number
}

const dash = String.raw`(?:-|–|—|−)`
const entry = String.raw`(?:\d{1,5}(?:\s*${dash}\s*\d{1,5})?|${dash})`
const list = new RegExp(String.raw`^\s*(?:\(\s*(${entry}(?:\s*[,;]\s*${entry})*)\s*\)|\[\s*(${entry}(?:\s*[,;]\s*${entry})*)\s*\])`)

/**
 * Reads the numbers of the other sizes, which stand in brackets after those of the smallest:
 *
 *   Rnds 7-8 [8-9]   Row 6 (8, 10)   Rows 4-11 (13, 15)   Row 6 (8, 10) (12, –)
 *
 * `length` is how many signs of the text they take. A list may be too short or too long; a check speaks of that.
 */
export function readNumbersBySize(text: string, numbers: readonly number[]): { readonly ranges: readonly RowRange[]; readonly length: number } | undefined {
  const smallest = { first: numbers[0]!, last: numbers.at(-1)! }
  const ranges: RowRange[] = [smallest]
  let at = 0
  for (let match = list.exec(text); match; match = list.exec(text.slice(at))) {
    for (const part of (match[1] ?? match[2]!).split(/[,;]/)) ranges.push(rangeOf(part.trim(), smallest))
    at += match[0].length
  }
  return at > 0 ? { ranges, length: at } : undefined
}

/** `8-9` is a range of its own; `13` after `Rows 4-11` is where that range ends in this size. */
function rangeOf(part: string, smallest: RowRange): RowRange {
  const [first, last] = part.split(/\s*[-–—−]\s*/).map((number) => (number === '' ? undefined : Number(number)))
  if (first === undefined) return { first: 1, last: 0 }
  if (last !== undefined) return { first, last }
  return smallest.last > smallest.first ? { first: smallest.first, last: first } : { first, last: first }
}

const names = String.raw`([\p{L}\d][\p{L}\d ,&/+()-]*?)`
const before = new RegExp(String.raw`^(?:for\s+)?(?:the\s+)?sizes?\s+${names}(?:(\s+only)\s*[:,–—-]|\s*:)\s*`, 'iu')
const everySize = /^(?:for\s+)?(?:all|both)\s+(?:the\s+)?sizes?\s*[:,–—-]\s*/i
const inBrackets = new RegExp(String.raw`^\s*[([]\s*(?:for\s+)?(?:sizes?\s+)?${names}\s+only\s*[)\]]`, 'iu')
const afterComma = new RegExp(String.raw`^\s*[,–—-]\s*(?:for\s+)?sizes?\s+${names}\s+only(?=\s*[:.])`, 'iu')

/** What a label says of sizes, and how many signs of the text it takes for it. */
export interface SizeWords {
  /** Left out for `All sizes:`. */
  readonly only?: readonly string[]
  readonly length: number
  /** `only` is said: the words can be nothing but a label. */
  readonly sure: boolean
}

/** Reads `Sizes L and XL only:`, `Size L:` or `All sizes:` at the head of a line. */
export function readSizesBefore(text: string): SizeWords | undefined {
  const all = everySize.exec(text)
  if (all) return { length: all[0].length, sure: true }
  const some = before.exec(text)
  return some ? { only: namesIn(some[1]!), length: some[0].length, sure: some[2] !== undefined } : undefined
}

/** Reads `(size Large only)` or `, sizes L and XL only` after a row's number. */
export function readSizesAfter(text: string): SizeWords | undefined {
  const match = inBrackets.exec(text) ?? afterComma.exec(text)
  return match ? { only: namesIn(match[1]!), length: match[0].length, sure: true } : undefined
}

function namesIn(text: string): readonly string[] {
  return text.split(/\s*(?:,|&|\/|\+|\(|\)|\band\b)\s*/i).map((name) => name.trim()).filter(Boolean)
}
