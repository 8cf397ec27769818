import { takeNumber } from './numbers.ts'
import { Reader } from './reader.ts'
import type { Num } from './target.ts'

/** A count while it is read, as far as the slip stitch that closes the round is one of it. */
export interface CountOfJoin {
  count?: Num
  closing?: boolean
  readonly kinds: readonly unknown[]
}

/**
 * `17 sts: 16 sc and the closing sl st`, `7 sts, including closing sl st`, `16 sts + closing ss`, `37 sts, counting the ss`: the join is told with
 * the stitches. `24 sts, ss not counted`, `36 sts, leaving out the join`: it is not.
 */
export function takeClosingSlip(reader: Reader, draft: CountOfJoin): boolean {
  const { at } = reader
  const beside = /^(?:[+&]|and|plus)$/.test(reader.word(-1))
  reader.take('-')
  const apart = takeApart(reader)
  reader.take('again|still')
  const lead = apart || reader.take('counting|including|includes|incl|with|plus', '.?', 'of?') || reader.take('of', 'which|them|these', '1|one', 'is')
  const named = takeClosingName(reader)
  const said = lead ? undefined : takeVerdict(reader)
  const told = lead || said !== undefined
  if (!named || !told && (!(named.closing || beside && !named.counted) || !endsPart(reader))) {
    reader.at = at
    return false
  }
  if (lead) toComma(reader)
  if (apart || said === 'apart') {
    draft.closing = false
    return true
  }
  draft.closing = true
  // `34 sts + closing ss`: it is told beside the number; in `41 sts: 40 sts and the closing ss` the first number is all of them.
  const number = reader.all.slice(0, at).findLast(({ kind }) => kind === 'number')
  if (beside && draft.count && draft.kinds.length === 0 && number && number.end <= draft.count.end) draft.count = { ...draft.count, values: draft.count.values.map((value) => value + 1) }
  return true
}

/** `not counting`, `excluding`, `leaving out`: before what is none of the stitches. */
function takeApart(reader: Reader): boolean {
  return reader.take('not', 'counting|including|incl') || reader.take('excluding|excl|without|ignoring|omitting|disregarding|not', '.?') || reader.take('leaving|leave', 'out') || reader.take('do', 'not', 'count')
}

/** `the closing sl st`, `the ss`, `joining slip stitches`, `the join`: the slip stitch that closes a round, and whether it is called so. */
function takeClosingName(reader: Reader): { readonly closing: boolean; readonly counted: boolean } | undefined {
  const { at } = reader
  const counted = reader.take('1|one')
  reader.take('the|a|each|any?')
  const closing = reader.take('closing|joining|final')
  const slip = reader.take('sl', '-?', 'st|sts|stitch|stitches') || reader.take('ss|slst|slsts') || reader.take('join|joins')
  if (!slip) reader.at = at
  // `the closing sl st of this round`
  else reader.take('of|in|at', 'this|the|each|every', 'end?', 'of?', 'rnd|round|row?')
  return slip ? { closing, counted } : undefined
}

/** `not counted`, `is counted as a st`, `left out`, `being one of them`: whether it is one of the stitches. */
function takeVerdict(reader: Reader): 'apart' | 'among' | undefined {
  const { at } = reader
  // `sl st and ch 1 not counted`
  if (/^(?:and|or|nor)$/.test(reader.word()) && reader.take('and|or|nor', 'the?', 'beg|beginning|turning|first?')) {
    reader.take('ch|chain|tch', '-?')
    takeNumber(reader)
  }
  reader.take('is|are|being|has|have', 'been?')
  const apart = reader.take('not|never', 'counted|included|incl|one|part') || reader.take('uncounted|excluded|omitted|ignored') || reader.take('left|counted', 'out') || reader.take('do|does', 'not', 'count')
  const among = !apart && (reader.take('counted|included|incl|one|part') || reader.take('counts|count'))
  if (!apart && !among) {
    reader.at = at
    return undefined
  }
  toComma(reader)
  return apart ? 'apart' : 'among'
}

const endsPart = (reader: Reader): boolean => reader.done || /^(?:[,;.:+&=]|and|plus)$/.test(reader.word())

const marks = /^[,;.:–—-]$/

/**
 * `(24 sts), sl st not counted.`, `24 sts (counting the ss)`: what is said of the join behind the row's total. Gives the tokens before it, and
 * whether the join is one of the stitches.
 */
export function withoutRemark(all: Reader['all'], outer: Reader): { readonly before: Reader['all']; readonly closing: boolean; readonly end: number } | undefined {
  const end = all.findLastIndex(({ text }) => !marks.test(text))
  const bracket = all[end]?.text === ')'
  const from = all.findLastIndex(({ text }, at) => at < end && (bracket ? text === '(' : marks.test(text)))
  if (from <= 0) return undefined
  const reader = new Reader(all.slice(from + 1, bracket ? end : end + 1), outer.vocabulary)
  const draft: CountOfJoin = { kinds: [] }
  if (/^(?:the|a|1|one|closing|joining|final)$/.test(reader.word()) && !reader.all.some(({ text }) => told.test(text)) || !takeClosingSlip(reader, draft) || !reader.done) return undefined
  return { before: all.slice(0, from), closing: draft.closing === true, end: all[end]!.end }
}

const told = /^(?:counted|counts?|included|incl|excluded|uncounted|omitted|ignored|out|one|part)$/i

export function toComma(reader: Reader): void {
  while (!reader.done && !/^[,;]$/.test(reader.word())) reader.at += 1
}
