import { numberAhead, takeNumber } from './numbers.ts'
import { takeWayAlong, takeWholeWay } from './parse-way.ts'
import type { Reader } from './reader.ts'
import type { Num, Target } from './target.ts'

type Rate = NonNullable<Target['rate']>

/** Takes `for every 2 rows`, `per row`, `to a row`, `to each 2 row-ends`: so many rows, for the stitches that were named before. */
export function takeRows(reader: Reader): Num | undefined {
  const { at, start } = reader
  const single = reader.take('per') || reader.take('to', 'a') || reader.take('for|to', 'every|each')
  const several = single || reader.take('in|over|into|along', 'every')
  // `3 sc to 2 rows`
  const to = !several && numberAhead(reader, 1) !== undefined && /^(rows|row)$/.test(reader.word(2)) && !/^(below|from|before)$/.test(reader.word(3)) && reader.take('to')
  const said = several || to ? takeNumber(reader) : undefined
  reader.take('sc|dc|hdc|tr')
  const rows = (several || to) && (said !== undefined || single) && (reader.take('row', '-?', 'end|ends') || reader.take('row|rows') || reader.take('end|ends', 'of', 'rows|row'))
  if (rows) return said ?? { values: [1], start, end: reader.end }
  reader.at = at
  return undefined
}

/** `in each row-end`, `into the end of every row`, `for each row of trebles` */
function inEachEnd(reader: Reader): Num | undefined {
  const { at, start } = reader
  if (reader.take('in|into|for|to', 'the?', 'end|side', 'of', 'each|every', 'row') || reader.take('in|into|for|to?', 'each|every', 'row', '-?', 'end?')) return { values: [1], start, end: reader.end }
  reader.at = at
  return undefined
}

/** `of trebles`, `of dc`: what the rows are made of. */
function takeOfStitch(reader: Reader): void {
  const { at } = reader
  const made = reader.take('of') ? reader.vocabulary.stitchAt([reader.word(), reader.word(1)]) : undefined
  reader.at = made ? reader.at + made.words : at
}

/** `12 sc (1 per row)`, `sc 12 to the top corner, working 1 st into each row`, `sc evenly, one in each row-end`: a rate alone tells that they go along a side. */
export function takeSideAtRate(reader: Reader): Target | undefined {
  const { at, start } = reader
  const evenly = reader.take('evenly')
  takeWholeWay(reader)
  const rate = takeRate(reader)
  if (rate) return { walk: 'edge', edge: 'side', rate, ...(evenly && { evenly }), start, end: reader.end }
  reader.at = at
  return undefined
}

/** `12 dc down the left edge, from top corner to bottom corner, two for each row` */
export function takeRateOnTheWay(reader: Reader): Rate | undefined {
  const { at } = reader
  const rate = takeRate(reader)
  if (rate) return rate
  reader.take(',')
  const late = takeWayAlong(reader) ? takeRate(reader) : undefined
  if (!late) reader.at = at
  return late
}

/** Takes what may be said of an edge behind it: `, working 3 sc for every 2 rows`, `at a rate of 2 sc per row`, `(3 sts for every 2 rows)`. */
export function takeRate(reader: Reader): Rate | undefined {
  const { at } = reader
  const bracket = reader.take('(')
  if (!bracket) reader.take(',')
  reader.take('and')
  const by = reader.take('working|making|placing|putting', 'up?')
  by || reader.take('work|picking|pick|allowing|with|that|it', 'up|is?') || numberAhead(reader, 1) !== undefined && reader.take('at') || reader.take('at', 'a|the', 'rate', 'of') || reader.take('at', 'a|the', 'ratio', 'of')
  const about = reader.take('about|approximately|approx|roughly')
  const stitches = takeNumber(reader)
  const plain = stitches && reader.take('st|sts|stitch|stitches')
  const named = stitches && !plain && reader.take('sc|dc|hdc|tr')
  // `, one in each row-end`: without a stitch of its own it speaks of those before.
  const rows = stitches && (takeRows(reader) ?? (named && !by ? undefined : inEachEnd(reader)))
  if (rows) takeOfStitch(reader)
  // `work 3 sc for every 2 row-ends along 24 row-ends` is an edge of its own.
  const ownEdge = /^(?:along|over|across|down|up)$/.test(reader.word()) && (numberAhead(reader, 1) ?? numberAhead(reader, 2)) !== undefined
  if (!rows || ownEdge || bracket && !reader.take(')')) {
    reader.at = at
    return undefined
  }
  return { stitches, rows, about }
}

/** `up the row-ends, working 1 st for every row`: how many go into each, the rate tells. */
export function bySide({ walk, count, thing, ofRows, upTo, start, end }: Target): Target | undefined {
  return walk === 'each' && thing?.kind === 'row-end' && !thing.rows && !count && !ofRows && !upTo ? { walk: 'edge', edge: 'side', start, end } : undefined
}
