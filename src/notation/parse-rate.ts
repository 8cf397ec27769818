import { numberAhead, takeNumber } from './numbers.ts'
import type { Reader } from './reader.ts'
import type { Num, Target } from './target.ts'

type Rate = NonNullable<Target['rate']>

/** Takes `for every 2 rows`, `per row`, `to each 2 row-ends`: so many rows, for the stitches that were named before. */
export function takeRows(reader: Reader): Num | undefined {
  const { at, start } = reader
  const single = reader.take('per') || reader.take('for|to', 'every|each')
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

/** `in each row-end`, `into the end of every row` */
function inEachEnd(reader: Reader): Num | undefined {
  const { at, start } = reader
  if (reader.take('in|into|for', 'the?', 'end|side', 'of', 'each|every', 'row') || reader.take('in|into|for', 'each|every', 'row', '-?', 'end?')) return { values: [1], start, end: reader.end }
  reader.at = at
  return undefined
}

/** Takes what may be said of an edge behind it: `, working 3 sc for every 2 rows`, `at a rate of 2 sc per row`, `(3 sts for every 2 rows)`. */
export function takeRate(reader: Reader): Rate | undefined {
  const { at } = reader
  const bracket = reader.take('(')
  if (!bracket) reader.take(',')
  reader.take('working|work|making|placing|picking|pick', 'up?') || reader.take('at', 'a|the', 'rate', 'of') || reader.take('at', 'a|the', 'ratio', 'of')
  const about = reader.take('about|approximately|approx|roughly')
  const stitches = takeNumber(reader)
  const named = stitches && reader.take('sc|dc|hdc|tr|st|sts|stitch|stitches')
  // `, one in each row-end`: without a stitch of its own it speaks of those before.
  const rows = stitches && (takeRows(reader) ?? (named ? undefined : inEachEnd(reader)))
  if (!rows || bracket && !reader.take(')')) {
    reader.at = at
    return undefined
  }
  return { stitches, rows, about }
}
