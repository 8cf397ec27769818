import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

const hollow = 'opening|cleft|notch|slit|slot|gap|valley|dip|hollow|neck|armhole'

/** `down into the cleft`, `into the opening`, `up again`: which way the edge goes on, as a clause of its own. */
export function parseThither(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const begins = at === 0 || /^[,.;:()]$/.test(reader.word(-1)) || reader.word(-1) === 'and'
  const goes = begins && (reader.take('up|down|back|along?', 'into|in', 'the', hollow) || reader.take('and?', 'up|down|back|out|along', 'again'))
  if (goes && (reader.done || /^[,;:]$/.test(reader.word()))) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  return undefined
}
