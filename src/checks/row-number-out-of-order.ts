import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { partStarts, writtenNumbers } from '../fabric/part-starts.ts'
import { holdsFor } from '../fabric/plan-rows.ts'
import type { WrittenEntry } from '../fabric/real-rows.ts'
import { rowsRepeated } from '../fabric/row-ranges.ts'
import type { PieceFacts } from './facts.ts'

/** Row numbers run on by one; none is missing, none stands twice. A piece may begin at any number. */
export function rowNumberOutOfOrder({ entries, size, sizes }: PieceFacts): readonly Diagnostic[] {
  const found: Diagnostic[] = []
  let filled = new Set<number>()
  // Numbers of all parts: the first shoulder may be longer than the second, and the next part goes on after the longer one.
  const ever = new Set<number>()
  const starts = partStarts(entries.filter(({ label }) => holdsFor(label, size, sizes)), size)
  let last: number | undefined
  let between = 0
  let alternates: number | undefined
  const all = new Set(entries.flatMap((entry) => writtenNumbers(entry, size)))
  // Rows listed apart (`Rows 3, 5 and 9`) stand out of order as they are written, and in order as they are worked.
  const lists = entries.some((entry) => isList(writtenNumbers(entry, size)))
  // A row of other sizes only is not worked in this one; its number is not missing either.
  const elsewhere = new Set(entries.filter(({ label }) => !holdsFor(label, size, sizes)).flatMap(({ label }) => label?.numbers ?? []))
  for (const [index, entry] of entries.entries()) {
    if (!holdsFor(entry.label, size, sizes)) continue
    const numbers = writtenNumbers(entry, size)
    const { bySize } = entry.label ?? {}
    // Where the list of numbers lacks this size, that is the slip, and no number can be told from it.
    if (bySize && !bySize[size]) last = undefined
    if (bySize && (numbers.length === 0 || !bySize[size])) continue
    if (numbers.length === 0) {
      if (last !== undefined && entry.label?.word !== 'unsaid') last += hidden(entry)
      if (last !== undefined && !entry.label) between += rowsRepeated(entry.read.reference, size)
      continue
    }
    if (entry.label?.alternate) alternates = numbers[0]! % 2
    const first = numbers[0]!
    if (starts.has(entry)) {
      last = first - 1
      filled = new Set([...ever].filter((number) => number < first))
    }
    const slip = last === undefined || between > 0 && first === last + between + 1 ? undefined : slipBetween(last, first, alternates, entry.headed ? ever : filled, elsewhere, lists ? all : none)
    if (slip && numbers.length === numbers.at(-1)! - first + 1) found.push(diagnostic(entry, slip, first, last!))
    between = 0
    const expected = last === undefined ? first : last + 1
    // A label alone may be wrong: the next row goes on from the number that was due.
    const mistyped = slip !== undefined && numbers.length === 1 && following(entries, index, size) === expected + 1
    for (const number of mistyped ? [expected] : numbers) {
      filled.add(number)
      ever.add(number)
    }
    last = mistyped ? expected : numbers.at(-1)!
  }
  return found
}

/** The number that the next numbered row begins with. */
function following(entries: readonly WrittenEntry[], index: number, size: number): number | undefined {
  for (const entry of entries.slice(index + 1)) {
    const [first] = writtenNumbers(entry, size)
    if (first !== undefined) return first
  }
  return undefined
}

function isList(numbers: readonly number[]): boolean {
  return numbers.length > 1 && numbers.at(-1)! - numbers[0]! !== numbers.length - 1
}

/** `Next 4 rows` moves the numbers on by 4. */
function hidden(entry: WrittenEntry): number {
  return entry.label?.howMany?.[0] ?? (entry.read.reference ? 0 : 1)
}

const none: ReadonlySet<number> = new Set()

type Slip = 'missing' | 'twice' | 'back'

function slipBetween(last: number, first: number, alternates: number | undefined, filled: ReadonlySet<number>, elsewhere: ReadonlySet<number>, listed: ReadonlySet<number>): Slip | undefined {
  if (first === last + 1) return undefined
  // Another section may begin again at 1.
  if (first === 1 && last > 1) return undefined
  if (filled.has(first)) return 'twice'
  // A line such as `Row 2 and all even rows` stands for those that are not written, and rows told without numbers may lie between.
  const missing = Array.from({ length: Math.min(first - last - 1, 1000) }, (_, index) => last + index + 1)
  if (first < last) return filled.has(first - 1) && listed.size > 0 ? undefined : 'back'
  return missing.every((number) => filled.has(number) || elsewhere.has(number) || listed.has(number) || alternates !== undefined && number % 2 === alternates) ? undefined : 'missing'
}

function diagnostic(entry: WrittenEntry, slip: Slip, first: number, last: number): Diagnostic {
  const word = entry.label?.word === 'round' ? 'round' : 'row'
  const message = slip === 'missing' ? `${word} ${first} comes after ${word} ${last}, so ${first - last === 2 ? `${word} ${last + 1} is` : `${word}s ${last + 1} to ${first - 1} are`} missing`
    : slip === 'twice' ? `${word} ${first} stands a second time, after ${word} ${last}` : `${word} ${first} comes after ${word} ${last}`
  const label = entry.label!
  return { code: 'row-number-out-of-order', message, primary: { span: { start: label.start, end: label.end }, text: `after ${last} comes ${last + 1}` }, secondary: [] }
}
