import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { WrittenEntry } from '../fabric/real-rows.ts'
import type { PieceFacts } from './facts.ts'

/** Row numbers run on by one; none is missing, none stands twice. A piece may begin at any number. */
export function rowNumberOutOfOrder({ entries, size }: PieceFacts): readonly Diagnostic[] {
  const found: Diagnostic[] = []
  const filled = new Set<number>()
  let last: number | undefined
  let alternates: number | undefined
  const all = new Set(entries.flatMap((entry) => numbersOf(entry, size)))
  // Rows listed apart (`Rows 3, 5 and 9`) stand out of order as they are written, and in order as they are worked.
  const lists = entries.some((entry) => isList(numbersOf(entry, size)))
  for (const entry of entries) {
    const numbers = numbersOf(entry, size)
    if (numbers.length === 0) {
      if (last !== undefined && entry.label?.word !== 'unsaid') last += hidden(entry)
      continue
    }
    if (entry.label?.alternate) alternates = numbers[0]! % 2
    const first = numbers[0]!
    const slip = last === undefined ? undefined : slipBetween(last, first, alternates, filled, all, lists)
    if (slip && !entry.label?.onlySizes && numbers.length === numbers.at(-1)! - first + 1) found.push(diagnostic(entry, slip, first, last!))
    for (const number of numbers) filled.add(number)
    last = numbers.at(-1)!
  }
  return found
}

function numbersOf(entry: WrittenEntry, size: number): readonly number[] {
  const range = entry.label?.bySize?.[size]
  return range ? [range.first, range.last] : (entry.label?.numbers ?? [])
}

function isList(numbers: readonly number[]): boolean {
  return numbers.length > 1 && numbers.at(-1)! - numbers[0]! !== numbers.length - 1
}

/** `Next 4 rows` moves the numbers on by 4. */
function hidden(entry: WrittenEntry): number {
  return entry.label?.howMany?.[0] ?? (entry.read.reference ? 0 : 1)
}

type Slip = 'missing' | 'twice' | 'back'

function slipBetween(last: number, first: number, alternates: number | undefined, filled: ReadonlySet<number>, all: ReadonlySet<number>, lists: boolean): Slip | undefined {
  if (first === last + 1) return undefined
  // Another section may begin again at 1.
  if (first === 1 && last > 1) return undefined
  if (filled.has(first)) return 'twice'
  // A line such as `Row 2 and all even rows` stands for those that are not written, and rows told without numbers may lie between.
  const missing = Array.from({ length: Math.min(first - last - 1, 1000) }, (_, index) => last + index + 1)
  if (first < last) return filled.has(first - 1) && lists ? undefined : 'back'
  return missing.every((number) => filled.has(number) || lists && all.has(number) || alternates !== undefined && number % 2 === alternates) ? undefined : 'missing'
}

function diagnostic(entry: WrittenEntry, slip: Slip, first: number, last: number): Diagnostic {
  const word = entry.label?.word === 'round' ? 'round' : 'row'
  const message = slip === 'missing' ? `${word} ${first} comes after ${word} ${last}, so ${first - last === 2 ? `${word} ${last + 1} is` : `${word}s ${last + 1} to ${first - 1} are`} missing`
    : slip === 'twice' ? `${word} ${first} stands a second time, after ${word} ${last}` : `${word} ${first} comes after ${word} ${last}`
  const label = entry.label!
  return { code: 'row-number-out-of-order', message, primary: { span: { start: label.start, end: label.end }, text: `after ${last} comes ${last + 1}` }, secondary: [] }
}
