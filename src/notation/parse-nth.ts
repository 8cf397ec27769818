import { ordinals } from './number-words.ts'
import { takeNumber } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Instruction, Skip } from './syntax.ts'
import type { Num, Target } from './target.ts'

/** Places told by where they stand in the row below, the first and how many. */
interface Nth {
  readonly target: Target
  readonly count: Num
  /** Those before it that nothing goes into. */
  readonly skipped?: Skip
}

/**
 * Stitches by their numbers, told off from the row's start:
 *
 *   in 2nd st (at the start: the first is skipped)   in 14th sc (behind 13 others)   in 15th to 17th sc   over 18th and 19th sc   in 21st sc (10 sc skipped)
 *
 * A number that is not that of the next one is not read.
 */
export function takeNth(reader: Reader, before: readonly Instruction[]): Nth | undefined {
  const { at, start } = reader
  const first = reader.take('in|into|over|across', 'the?') ? ordinalHere(reader) : undefined
  const passed = first !== undefined && first > 1 ? placesPassed(before) : undefined
  const last = passed !== undefined && reader.take('to|through|and|-|–') ? ordinalHere(reader) : first
  const named = passed !== undefined && last !== undefined && (reader.take('st|sts|stitch|stitches') || takeStitchName(reader) !== undefined) && !/^(?:of|from|below|in|to|after|on)$/.test(reader.word())
  if (!named || first === undefined) {
    reader.at = at
    return undefined
  }
  const count = { values: [last - first + 1], start, end: reader.end }
  const target: Target = { walk: 'next', ...(last > first && { count }), start, end: reader.end }
  const several = last > first
  const skipped = several || passed === first - 1 ? undefined : passed === 0 ? first - 1 : skippedInBrackets(reader)
  if (passed === first - 1 && last >= first) return { target, count }
  if (skipped !== undefined && passed + skipped === first - 1) return { target, count, skipped: { node: 'skip', count: { values: [skipped], start, end: reader.end }, from: passed === 0 ? 'first' : 'next', start, end: reader.end } }
  reader.at = at
  return undefined
}

function ordinalHere(reader: Reader): number | undefined {
  const token = reader.peek()
  const nth = token?.kind === 'ordinal' ? token.value : ordinals[reader.word()]
  if (nth !== undefined) reader.at += 1
  return nth
}

/** `(10 sc skipped)` */
function skippedInBrackets(reader: Reader): number | undefined {
  if (!reader.take('(')) return undefined
  const count = takeNumber(reader)
  const named = count && (reader.take('st|sts|stitch|stitches') || takeStitchName(reader) !== undefined)
  return named && reader.take('skipped|missed|left', 'unworked?') && reader.take(')') ? count.values[0] : undefined
}

/** How many places the row has gone over, as far as its words tell at a glance. */
function placesPassed(before: readonly Instruction[]): number | undefined {
  let passed = 0
  for (const item of before) {
    if (item.node === 'aside' || item.node === 'chain' || item.node === 'turn') continue
    if (item.node === 'skip' && !item.list && !item.unworked && item.thing?.kind !== 'chain') passed += item.count.values[0]!
    else if (item.node === 'work' && item.over && !item.target) passed += item.over.values[0]!
    else if (item.node === 'work' && (item.target?.walk === 'next' || item.target?.walk === 'first') && !item.over && (item.count === undefined || item.target.count === undefined)) passed += item.target.count?.values[0] ?? 1
    else return undefined
  }
  return passed
}
