import { ordinals } from './number-words.ts'
import { takeNumber } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import type { Instruction, Skip } from './syntax.ts'
import type { Num, Target, Thing } from './target.ts'

/** Places told by where they stand in the row below or on the edge, the first and how many. */
interface Nth {
  readonly target: Target
  readonly count: Num
  /** Those before it that nothing goes into. */
  readonly skipped?: Skip
}

/**
 * Places by their numbers, told off from the row's start, or from the first place of the edge along which it goes:
 *
 *   in 2nd st (at the start: the first is skipped)   in 14th sc (behind 13 others)   in 15th to 17th sc   over 18th and 19th sc   in 21st sc (10 sc skipped)
 *   3 sc in 1st ch, sc in next 18 ch, 3 sc in 20th ch
 *
 * A number that is not that of the next one is not read.
 */
export function takeNth(reader: Reader, before: readonly Instruction[]): Nth | undefined {
  const { at, start } = reader
  const corner = cornerReached(reader, before)
  if (corner) return { target: { walk: 'next', thing: corner, start, end: reader.end }, count: { values: [1], start, end: reader.end } }
  const behind = takeOneBehind(reader, before)
  if (behind) return behind
  const places = reader.take('in|into|over|across', 'the?') ? takePlaces(reader) : undefined
  const passed = places && places.last > 1 ? placesPassed(before) : undefined
  if (!places || passed === undefined || places.chain && passed === 0) {
    reader.at = at
    return undefined
  }
  const { first, last, chain } = places
  const count = { values: [last - first + 1], start, end: reader.end }
  const target: Target = { walk: 'next', ...(last > first && { count }), ...(chain && { thing: { kind: 'chain' } }), start, end: reader.end }
  if (passed === first - 1) return { target, count }
  const begins = passed === 0 && !before.some(({ node }) => node === 'start')
  const skipped = last > first ? undefined : begins ? first - 1 : skippedInBrackets(reader)
  if (skipped !== undefined && passed + skipped === first - 1) return { target, count, skipped: { node: 'skip', count: { values: [skipped], start, end: reader.end }, from: passed === 0 ? 'first' : 'next', start, end: reader.end } }
  reader.at = at
  return undefined
}

/** `sk 3rd and 4th sc`: those that come next. */
export function skipNth(reader: Reader, before: readonly Instruction[]): readonly Skip[] | undefined {
  const { at, start } = reader
  const places = reader.take('skip|sk|miss', 'the?') ? takePlaces(reader) : undefined
  if (places && places.last > 1 && placesPassed(before) === places.first - 1) return [{ node: 'skip', count: { values: [places.last - places.first + 1], start, end: reader.end }, ...(places.chain && { thing: { kind: 'chain' } }), from: 'next', start, end: reader.end }]
  reader.at = at
  return undefined
}

/** `sc in each sc to 2nd sc of 3-sc corner, 3 sc in 2nd sc`: the one that was come to. */
function cornerReached(reader: Reader, before: readonly Instruction[]): Thing | undefined {
  const { at } = reader
  const last = before.at(-1)
  const until = last?.node === 'work' ? last.target?.until : undefined
  const reached = until?.kind === 'stitch' && (until.where === 'corner' || until.ofGroup)
  const nth = reached && reader.take('in|into', 'the|that?') ? ordinalHere(reader) : undefined
  const said = reader.all.slice(Math.max(0, at - 12), at).some(({ kind, value }) => kind === 'ordinal' && value === nth)
  if (nth !== undefined && said && (reader.take('st|stitch') || takeStitchName(reader) !== undefined) && placeEnds(reader)) return until
  reader.at = at
  return undefined
}

/** `sc in each of 7 free sts, 3 sc in the 8th`, `sc in underside of next 5 added ch, 3 sc in 6th ch`: the one behind those that were counted. */
export function takeOneBehind(reader: Reader, before: readonly Instruction[]): Nth | undefined {
  const { at, start } = reader
  const last = before.at(-1)
  const counted = last?.node === 'work' && (last.target?.walk === 'next' || last.target?.walk === 'first') ? last.target : undefined
  const underside = counted?.edge === 'underside' && counted.thing?.kind === 'chain'
  const into = reader.take('in|into', 'the?') && (reader.word(-1) === 'the' || underside)
  if (underside) reader.take('underside', 'of', 'the?')
  const nth = counted?.count && into ? ordinalHere(reader) : undefined
  if (underside) reader.take('added|extra|foundation?', 'ch|chain')
  if (nth !== undefined && counted!.count!.values.every((count) => count === nth - 1) && placeEnds(reader)) {
    return { target: { walk: 'next', thing: counted!.thing ?? { kind: 'stitch' }, start, end: reader.end }, count: { values: [1], start, end: reader.end } }
  }
  reader.at = at
  return undefined
}

/** `5th to 8th sc`, `3rd and 4th sc`, `the fifth, sixth and seventh st`, `20th ch`. */
function takePlaces(reader: Reader): { readonly first: number; readonly last: number; readonly chain: boolean } | undefined {
  const { at } = reader
  const first = ordinalHere(reader)
  const last = first === undefined ? undefined : reader.take('to|through|-|–') ? ordinalHere(reader) : lastInList(reader, first)
  const chain = last !== undefined && reader.take('foundation?', 'ch|chain|chs|chains')
  const named = chain || last !== undefined && (reader.take('st|sts|stitch|stitches') || takeStitchName(reader) !== undefined)
  if (named && last! >= first! && !/^(?:of|from|below|in|to|after|on|-|sp|sps|space|spaces)$/.test(reader.word())) return { first: first!, last: last!, chain }
  reader.at = at
  return undefined
}

/** `, 6th and 7th`: each of them the next one. */
function lastInList(reader: Reader, first: number): number {
  let last = first
  for (;;) {
    const { at } = reader
    const next = reader.take(',', 'and|&?') || reader.take('and|&') ? ordinalHere(reader) : undefined
    if (next !== last + 1) {
      reader.at = at
      return last
    }
    last = next
  }
}

function ordinalHere(reader: Reader): number | undefined {
  const token = reader.peek()
  const nth = token?.kind === 'ordinal' ? token.value : reader.word() === 'first' ? 1 : ordinals[reader.word()]
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

/** How many places the row has gone over since it began, or since the first place of an edge, as far as its words tell at a glance. */
function placesPassed(before: readonly Instruction[]): number | undefined {
  let passed: number | undefined = 0
  for (const item of before) {
    if (item.node === 'aside' || item.node === 'chain' || item.node === 'turn') continue
    if (item.node === 'start') passed = item.target.walk === 'first' ? 0 : undefined
    else if (item.node === 'skip') passed = item.list || item.unworked || item.thing?.kind === 'chain' ? undefined : plus(passed, item.count)
    else passed = item.node === 'work' || item.node === 'group' ? passedBy(item, passed) : undefined
  }
  return passed
}

const one: Num = { values: [1], start: 0, end: 0 }

/** So many more, where they are as many in every size. */
const plus = (passed: number | undefined, { values }: Num): number | undefined => (passed === undefined || new Set(values).size > 1 ? undefined : passed + values[0]!)

function passedBy(item: Extract<Instruction, { node: 'work' | 'group' }>, passed: number | undefined): number | undefined {
  const { target } = item
  if (item.node === 'work' && item.over) return target ? undefined : plus(passed, item.over)
  if (item.node === 'work' && item.count && target?.count && !target.eachOf) return undefined
  if (!target) return item.node === 'work' && item.count && !/tog$|^(?:inc|dec)$/.test(item.stitch) ? plus(passed, item.count) : undefined
  const places = target.count ?? one
  if (target.walk === 'first') return plus(0, places)
  if (target.walk === 'same') return passed === 0 ? 1 : passed
  return target.walk === 'next' ? plus(passed, places) : undefined
}
