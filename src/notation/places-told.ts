import { takeNumber } from './numbers.ts'
import { takeSide, rowEnds } from './parse-row-ends.ts'
import { takeThing } from './parse-thing.ts'
import { takeWholeWay } from './parse-way.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Instruction, Repeat, Work } from './syntax.ts'
import type { Num, Target } from './target.ts'

/**
 * Behind what is repeated, how many places it goes over in all:
 *
 *   (sc in next row-end, 2 sc in next row-end) 5 times down the 10 row-ends to the neck   [sc in next 2, ch 1, skip 1] 4 times across the 12 sts of Row 6
 *   (…) 12 times down the left side (24 row-ends)   (…) 3 times up the 6 rows of Back
 *
 * Gives the repeat with the places that were told; they are held against those that it used. `sc in each row-end down the 10 rows` goes into so many.
 */
export function withPlacesTold(reader: Reader, last: Instruction | undefined): Repeat | Work | undefined {
  const repeated = last?.node === 'repeat' && !last.told && last.times.kind !== 'once'
  const each = last?.node === 'work' && last.target?.walk === 'each' && last.target.thing?.kind === 'row-end' && !last.target.thing.rows && !last.target.ofRows
  if (!repeated && !each) return undefined
  const { at } = reader
  const told = inBracket(reader) ?? alongPlaces(reader)
  if (told && placeEnds(reader) && (repeated || told.thing?.kind === 'row-end')) return repeated ? { ...last, told } : { ...(last as Work), target: { ...told, eachOf: true } }
  reader.at = at
  return undefined
}

/** `(24 row-ends)`, `(over 24 row-ends)` */
function inBracket(reader: Reader): Target | undefined {
  const { at, start } = reader
  if (reader.take('(')) {
    reader.take('over|along|across|for|in')
    const told = endsOrRows(reader, start)
    if (told && reader.take(')')) return { ...told, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `down the 10 row-ends`, `over the next 12 sts`, `up the 8 rows` */
function alongPlaces(reader: Reader): Target | undefined {
  const { at } = reader
  // `5 times, that is over 10 row-ends`, `5 times along the left side over 10 row-ends`
  reader.take(',?', 'that|which', 'is') || reader.take(',?', 'working|going')
  const { at: side } = reader
  if (!reader.take('down|up|along|across|on', 'the|this|that|its?', 'left|right|first|second|other|opposite|long|short|straight|shaped|sloping|slanted?', '-?', 'hand?', 'side|edge|front') || !/^(?:over|for|in)$/.test(reader.word())) reader.at = side
  const { start } = reader
  if (reader.take('down|up|along|across|over|on|around|for')) {
    reader.take('over|along|across')
    const told = endsOrRows(reader, start) ?? stitches(reader, start)
    if (told) return told
  }
  reader.at = at
  return undefined
}

function endsOrRows(reader: Reader, start: number): Target | undefined {
  reader.take('all', 'of?')
  const { at } = reader
  const ends = rowEnds(reader, start, false)
  if (ends?.walk === 'next' && ends.count && !ends.eachOf) return ends
  reader.at = at
  const count = takeSeveral(reader)
  if (count && reader.take('rows')) {
    takeSide(reader)
    takeWholeWay(reader)
    return { walk: 'next', count, thing: { kind: 'row-end' }, start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `the next 16`, `those 12`, `its 8` */
function takeSeveral(reader: Reader): Num | undefined {
  reader.take('the|these|those|its')
  reader.take('next|first|last|final|other|remaining')
  return takeNumber(reader)
}

/** `the 16 sts of Row 6`, `next 12 ch` */
function stitches(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  const count = takeSeveral(reader)
  const thing = count && takeThing(reader)
  if (count && (thing?.kind === 'stitch' || thing?.kind === 'chain')) {
    const ofRow = takeRowNamed(reader, 'of|on|from', 'the?')
    if (ofRow === undefined) reader.take('of|on', 'the|this?', 'last|previous?', 'row|rnd|round')
    takeWholeWay(reader)
    return { walk: 'next', count, thing, ...(ofRow !== undefined && { ofRow }), start, end: reader.end }
  }
  reader.at = at
  return undefined
}
