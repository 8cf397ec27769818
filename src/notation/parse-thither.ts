import { numberAhead } from './numbers.ts'
import { isQuiet } from './parse-remark.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

const hollow = 'opening|cleft|notch|slit|slot|gap|valley|dip|hollow|neck|armhole'

/** `down into the cleft`, `into the opening`, `up again`, `along the wall with`: which way the edge goes on, as a clause of its own or before what is worked there. */
export function parseThither(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const begins = at === 0 || /^(?:[,.;:()]|and|now|work|working)$/.test(reader.word(-1))
  const goes = begins && (reader.take('up|down|back|along?', 'into|in', 'the', hollow) || reader.take('and?', 'up|down|back|out|along', 'again'))
  if (goes && (reader.done || /^[,;:]$/.test(reader.word()))) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  if (begins && alongSomething(reader)) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  return undefined
}

/** `along the hollow with sc in each of next 10 row-ends`: what the designer calls an edge. */
function alongSomething(reader: Reader): boolean {
  if (!reader.take('along|up|down|across|over|around|round', 'the')) return false
  const { at: from } = reader
  while (!reader.done && reader.peek()?.kind === 'word' && reader.word() !== 'with' && reader.at - from < 3) reader.at += 1
  if (!isQuiet(reader, from, reader.at) || !reader.take('with')) return false
  return numberAhead(reader) !== undefined || reader.vocabulary.stitchAt([reader.word(), reader.word(1)]) !== undefined
}
