import { parseRow, type ReadRow } from './parse-row.ts'
import type { Vocabulary } from './reader.ts'
import type { Span } from '../text/span.ts'

/** So many rows are remembered: several large patterns. */
const most = 4_000

interface Remembered {
  readonly read: ReadRow
  /** Where its text stood. */
  readonly from: number
}

const rows = new Map<string, Remembered>()

/**
 * Reads a row like `parseRow`, and remembers it: while a pattern is written, or a change to it tried, all its rows but one are read
 * as they were the time before, at most a few letters farther on. Only a vocabulary with a key has its rows remembered.
 */
export function readRow(text: string, start: number, end: number, vocabulary: Vocabulary, counted?: Span): ReadRow {
  if (vocabulary.key === undefined) return parseRow(text, start, end, vocabulary, counted)
  const words = `${vocabulary.key}\n${text.slice(start, end)}\n${counted ? `${counted.start - start} ${text.slice(counted.start, counted.end)}` : ''}`
  const known = rows.get(words)
  if (known) return movedBy(start - known.from, known.read)
  const read = parseRow(text, start, end, vocabulary, counted)
  if (rows.size >= most) rows.clear()
  rows.set(words, { read, from: start })
  return read
}

/** The same, with every place in the source so many letters farther on. Everything that is read tells its place as `start` and `end`. */
function movedBy<Value>(letters: number, value: Value): Value {
  if (letters === 0 || typeof value !== 'object' || value === null) return value
  if (Array.isArray(value)) return value.map((part: unknown) => movedBy(letters, part)) as Value
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, (key === 'start' || key === 'end') && typeof part === 'number' ? part + letters : movedBy(letters, part)])) as Value
}
