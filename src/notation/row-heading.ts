import { takeNumber } from './numbers.ts'
import { isQuiet } from './parse-remark.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Total } from './written-count.ts'

/**
 * `Dec 4 sts at each end as follows:`, `Decrease 5 sts at beg of this row by`, `Inc 1 st at both ends:` before the instructions: what they come
 * to, as a change of the count.
 */
export function takeHeading(reader: Reader): Total | undefined {
  const { at, start } = reader
  const whole = takeWhole(reader)
  if (whole) return whole
  const sign = reader.take('dec|decs|decrease|decreasing') ? -1 : reader.take('inc|incs|increase|increasing|add|adding') ? 1 : undefined
  const count = sign && takeNumber(reader)
  const named = count && (reader.take('st|sts|stitch|stitches') || takeStitchName(reader) !== undefined)
  const ends = named ? endsSaid(reader) : 0
  if (count && ends > 0 && headEnds(reader) && !reader.done) return { kinds: [], spaces: [], groups: [], change: { ...count, values: count.values.map((value) => value * ends * sign!) }, start, end: reader.end }
  reader.at = at
  // `Work a short row as follows:`
  const short = reader.take('work?', 'a|this?', 'short|partial', 'row') && headEnds(reader)
  if (!short) reader.at = at
  return undefined
}

/** `Work 12 sc along the slit, right side facing:` before what is worked there part by part. */
function takeWhole(reader: Reader): Total | undefined {
  const { at, start } = reader
  const count = reader.take('work|make') ? takeNumber(reader) : undefined
  const kind = count && takeStitchName(reader)
  if (count && kind !== undefined && reader.take('evenly?', 'along|around|round|down|up|across')) {
    const { at: from } = reader
    while (!reader.done && !/^[:.;()]$/.test(reader.word())) reader.at += 1
    const quiet = reader.all.slice(from, reader.at).every(({ text }, index) => text === ',' || isQuiet(reader, from + index, from + index + 1))
    const parts = reader.all.slice(reader.at).filter(({ kind: of }) => of === 'number').length
    if (quiet && parts > 1 && reader.take(':')) return { kinds: [{ kind, count }], spaces: [], groups: [], start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `at each end of the row`, `at the beginning of this row`: at how many ends. */
function endsSaid(reader: Reader): number {
  if (!reader.take('at|on|from')) return 0
  const both = reader.take('each|both|either')
  const end = reader.take('the?', 'very|neck|armhole|outer|inner|left|right?', '-?', 'hand?', 'beg|beginning|start|end|ends|edge|edges|side|sides')
  if (end) reader.take('of', 'the|this|next?', 'row')
  return end ? both ? 2 : 1 : 0
}

/** Where the instructions follow: `as follows:`, `:`, `by working`. */
function headEnds(reader: Reader): boolean {
  const follows = reader.take('as|thus|like', 'follows|this?')
  return reader.take(':') || follows && (reader.take(',|.') || true) || reader.word() === 'by' && /ing$/.test(reader.word(1)) && reader.take('by')
}
