import { numberAhead, takeNumber } from './numbers.ts'
import type { Reader } from './reader.ts'
import { takeClosingSlip, toComma, type CountOfJoin } from './closing-slip.ts'

interface Draft extends CountOfJoin {
  chainsCount?: boolean
}

/** `counting tch`, `each ch counts as 1 st`, `not counting ch-3`: said about the count, and no count itself. */
export function takeCountRemark(reader: Reader, draft: Draft): boolean {
  if (reader.take('each|every|all|a?', 'ch|chs|chain|chains|ch-', 'count|counts|counted', 'as')) {
    draft.chainsCount = true
    toComma(reader)
    return true
  }
  if (partOfThem(reader) || ofEachRow(reader)) return true
  if (takeClosingSlip(reader, draft)) return true
  // `16 sc, as for Outer trim`, `58 dc, to match Front edging`
  if (reader.at > 0 && (reader.take('same?', 'as', 'for|on|in|at') || reader.take('to', 'match|meet|fit') || reader.take('matching|meeting|like'))) {
    toComma(reader)
    return true
  }
  // `32 sc; front loops left free`: they wait.
  if (reader.at > 0 && reader.take('the?', 'front|back|other', 'loop|loops|lp|lps', 'are|stay|remain|left?', 'left?', 'free|unworked|unused|open')) return true
  if (reader.take('as', 'before') || reader.take('no', 'change') || reader.take('same', 'as', 'before')) return true
  if (!/^(counting|including|incl|not|excluding|without|from|per|with|ch|tch|the)$/.test(reader.word())) return false
  if (reader.word() === 'counting' && /^(ch|chs|chain|chains|each)$/.test(reader.word(1))) {
    const text = reader.all.slice(reader.at).map((token) => token.text.toLowerCase()).join(' ')
    if (/counting (each )?chs? as/.test(text) && !/turning|beg/.test(text)) draft.chainsCount = /as (a |1 |one )?(st|sts|stitch)/.test(text)
    const count = /there are (\d+)/.exec(text)
    if (count) draft.count = { values: [Number(count[1])], start: reader.start, end: reader.end }
    reader.at = reader.limit
    return true
  }
  if (/^(ch|tch|the)$/.test(reader.word()) && reader.at === 0) return false
  if (reader.word() === 'ch' && numberAhead(reader, 1) !== undefined) return false
  toComma(reader)
  return true
}

/** `24 sc, each rnd`, `30 sts in every row`, `18 dc at the end of each of these rows`: the count of one of several rows. */
export function ofEachRow(reader: Reader): boolean {
  const { at } = reader
  if (reader.at > 0 && reader.take('per', 'row|rnd|round')) return true
  reader.take('in|on|for|at|after', 'the?', 'end|ends?', 'of?')
  if (reader.at > 0 && reader.take('each|every', 'one?', 'of?', 'these|the|those?', 'row|rnd|round|rows|rnds|rounds|time') && (reader.done || /^[,;.:]$/.test(reader.word()))) return true
  reader.at = at
  return false
}

/** `34 sts, 4 of them between the markers`, `97 sc, 16 for each front`: how the count that was said is made up. */
function partOfThem(reader: Reader): boolean {
  if (reader.at === 0) return false
  const { at } = reader
  reader.take('and')
  const part = takeNumber(reader) && (reader.take('of', 'them|these|those|which') || reader.take('for|on|in|at|to|along', 'each|every|either|both|the|a') || reader.take('between', 'the?', 'markers|sleeves|fronts'))
  if (part) toComma(reader)
  else reader.at = at
  return Boolean(part)
}

/** Words that tell of which row or of how many edges a count is. */
const telling = /^(?:end|ends|row|rnd|round|side|sides|edge|edges|corner|corners|ring|beginning|start|same|first|last)$/

/** `22 sts along the neck`, `36 sc at the wrist`, `51 dc between the chains`: where they lie. */
export function takePlaceWords(reader: Reader): void {
  const { at } = reader
  reader.take('in', 'all')
  const along = reader.take('all?', 'along|across|around|round|over|up|down', 'the|this|its?') || reader.take('between', 'the|both')
  if (!along && !reader.take('at|in|on', 'the|its')) {
    reader.at = at
    return
  }
  while (reader.peek()?.kind === 'word' && numberAhead(reader) === undefined && !/^(?:and|plus|each)$/.test(reader.word()) && (along || !telling.test(reader.word()) || edgeByName(reader))) reader.at += 1
  if (!reader.done && !/^[,;.:]$/.test(reader.word())) reader.at = at
}

/** `the lower edge`, `the neck edge`: one edge by its name. */
const edgeByName = (reader: Reader): boolean => /^(?:edge|side)$/.test(reader.word()) && !/^(?:the|its|a|one)$/.test(reader.word(-1)) && !telling.test(reader.word(-1))
