import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'

const holes = 'hole|slit|opening|gap|slot|thumbhole|buttonhole'

/** `the seam`, `the shoulder seam`, `seam at the upper end`, `the side of the hole`, `the lower end of the slit`: between two edges, where no place of either is used up. */
export function takeSeamPlace(reader: Reader): boolean {
  const { at } = reader
  // `in end of the joining row`: the row of stitches that joins two edges is a seam.
  reader.take('the?', 'end', 'of')
  if (reader.take('the?', 'joining', 'row|seam|edge?') && placeEnds(reader)) return true
  reader.at = at
  reader.take('the?', 'end|top|bottom|foot|base|head', 'of')
  reader.take('the')
  const { at: kind } = reader
  while (/^(?:side|back|front|shoulder|underarm|centre|center|joining|neck|left|right|thumb|first|second|next|other|same|inner|-|hand)$/.test(reader.word()) && (reader.word(1) !== 'of' || /^(?:first|second)$/.test(reader.word()))) reader.at += 1
  // `in side join`: of the sides, and no round.
  const joined = reader.all.slice(kind, reader.at).some(({ text }) => /^(?:side|back|front|shoulder|underarm|centre|center)$/i.test(text))
  if (reader.take('seam|seams') || joined && reader.take('join|joins')) {
    reader.take('above|below|beneath|beyond')
    const { at: end } = reader
    if (!reader.take('at|on', 'the', 'upper|lower|top|bottom|other|near|far|first|second', 'end|edge|side', 'of?', 'the?', `${holes}?`)) reader.at = end
    if (placeEnds(reader)) return true
  }
  reader.at = at
  reader.take('the')
  reader.take('other|upper|lower|top|bottom|first|second|far|near|one')
  if (reader.take('side|end|corner|top|bottom|edge|foot|base', 'of', 'the|this?', 'thumb|hand|neck|button?', '-?', holes) && placeEnds(reader)) return true
  reader.at = at
  return false
}
