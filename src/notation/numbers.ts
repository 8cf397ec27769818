import { tens, upToNineteen } from './number-words.ts'
import type { Reader } from './reader.ts'
import type { Num } from './target.ts'

const words: Readonly<Record<string, number>> = { ...upToNineteen, ...tens }
const timesWords: Readonly<Record<string, number>> = { once: 1, twice: 2, thrice: 3 }
const dashes = new Set(['-', '–', '—', '−'])
const listSigns = new Set([',', '-', '–', '—', '−', ':', '/', ';'])
const opens: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' }

/** Value of a number word, digits or not; undefined when the next token is no number. Takes nothing. */
export function numberAhead(reader: Reader, ahead = 0): number | undefined {
  const token = reader.peek(ahead)
  if (token?.kind === 'number') return token.value
  return token?.kind === 'word' ? words[token.text.toLowerCase()] : undefined
}

/** `once`, `twice`, `thrice` as numbers. Takes the word. */
export function takeTimesWord(reader: Reader): Num | undefined {
  const token = reader.peek()
  const value = token && timesWords[token.text.toLowerCase()]
  if (!token || value === undefined) return undefined
  reader.at += 1
  return { values: [value], start: token.start, end: token.end }
}

/**
 * Takes a number, with its other sizes where the pattern has sizes:
 *
 *   70 (80, 90) (100, 110, 120)   12 (12-14-14-16)   56/60/64   71 (77) 83   – (–, 2, 4)
 *
 * A dash in a list stands for "not in this size" and is 0.
 */
export function takeNumber(reader: Reader): Num | undefined {
  const token = reader.peek()
  if (!token) return undefined
  const value = numberAhead(reader) ?? leadingDash(reader)
  if (value === undefined) return undefined
  reader.at += 1
  const values = [value, ...otherSizes(reader)]
  const num = { values, start: token.start, end: reader.end }
  if (values.length > 1) reader.sizeLists.push(num)
  return num
}

/** `– (–, 2, 4)`: a list may begin with a size that does not work the row. */
function leadingDash(reader: Reader): number | undefined {
  if (reader.vocabulary.sizes < 2 || !dashes.has(reader.word()) || !(reader.word(1) in opens)) return undefined
  return listIn(reader, 1) ? 0 : undefined
}

function otherSizes(reader: Reader): readonly number[] {
  const { sizes } = reader.vocabulary
  const values: number[] = []
  if (sizes > 1 && (reader.word() === '/' || dashes.has(reader.word())) && reader.touches(0)) {
    const slashes = slashList(reader, sizes)
    if (slashes) return slashes
  }
  while (values.length + 1 < Math.max(sizes, 2)) {
    const list = listIn(reader, 0)
    if (!list || !plausible(reader, list, values.length)) break
    reader.at = list.end
    values.push(...list.values)
    // European order: 71 (77) 83
    const next = reader.peek()
    if (next?.kind === 'number' && values.length + 1 < sizes) {
      reader.at += 1
      values.push(next.value ?? 0)
    }
  }
  return values
}

function slashList(reader: Reader, sizes: number): readonly number[] | undefined {
  const sign = reader.word()
  const values: number[] = []
  let ahead = 0
  while (reader.word(ahead) === sign && reader.peek(ahead + 1)?.kind === 'number') {
    values.push(reader.peek(ahead + 1)?.value ?? 0)
    ahead += 2
  }
  if (values.length + 1 !== sizes) return undefined
  reader.at += ahead
  return values
}

interface List {
  readonly values: readonly number[]
  /** Index of the token after the closing bracket. */
  readonly end: number
}

/** A bracket that holds nothing but numbers, dashes and commas. */
function listIn(reader: Reader, ahead: number): List | undefined {
  const close = opens[reader.word(ahead)]
  if (!close) return undefined
  const values: number[] = []
  let at = ahead + 1
  let wantsValue = true
  for (; reader.word(at) !== close; at += 1) {
    const token = reader.peek(at)
    if (!token) return undefined
    if (token.kind === 'number') {
      values.push(token.value ?? 0)
      wantsValue = false
    } else if (wantsValue && dashes.has(token.text)) {
      values.push(0)
      wantsValue = false
    } else if (listSigns.has(token.text)) wantsValue = true
    else return undefined
  }
  return values.length > 0 ? { values, end: reader.at + at + 1 } : undefined
}

/** A bracket with one number may be the row's total; it is a size when the list is then whole, or when more of the list follows. */
function plausible(reader: Reader, list: List, have: number): boolean {
  const { sizes } = reader.vocabulary
  const whole = have + 1 + list.values.length
  if (sizes === 1) return list.values.length > 1
  if (whole === sizes || list.values.length > 1) return true
  const after = reader.all[list.end]
  return after !== undefined && after.text !== '.'
}
