import { numberAhead } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'

/** `in the ch that holds the first sc`, `in the st with the first dc`, `in ch at base of first dc`, `in the ch where you began`: where the first one stands. */
export function withTheFirst(reader: Reader): boolean {
  const { at } = reader
  const place = reader.take('the?', 'same?', 'ch|chain|st|stitch|place')
  const begun = place && reader.take('where|in|from', 'which?', 'you|the', 'round|rnd|work?', 'began|begun|started|begins|starts')
  const holds = begun || place && reader.take('that|which?', 'already?', 'holds|held|holding|has|contains|carries|with|of|under|below')
  const first = begun || (holds || reader.take('at|as?', 'the?', 'base|foot', 'of')) && reader.take('the?', 'very?', 'first|marked') && takeStitchName(reader) !== undefined
  if (first && (reader.done || /^[,;.:()]$/.test(reader.word()))) return true
  reader.at = at
  return false
}

/** `in the last dc made`, `in the dc just worked`: the stitch that the row itself has made. */
export function inLastMade(reader: Reader): boolean {
  const { at } = reader
  const last = reader.take('the?', 'last')
  if (!last) reader.take('the?')
  const just = takeStitchName(reader) !== undefined && (last ? reader.take('made|worked|just?', 'made|worked?') : reader.take('just', 'made|worked'))
  if (just && /^(?:made|worked)$/.test(reader.word(-1)) && (reader.done || /^[,;.:()]$/.test(reader.word()))) return true
  reader.at = at
  return false
}

/** `in top of same 3 ch` */
export function inTopOfSame(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('the?', 'top', 'of', 'the|that?', 'same')) {
    if (numberAhead(reader) !== undefined) reader.at += 1
    if (reader.take('ch|chain|tch')) return true
  }
  reader.at = at
  return false
}
