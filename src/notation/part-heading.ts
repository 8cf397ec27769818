import { numberAhead } from './numbers.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/** What a piece has parts of. */
const part = /^(?:front|back|sleeve|body|yoke|shoulder|border|edging|edge|side|step|top|bottom|base|neck|neckline|neckband|band|strap|flap|tab|gusset|thumb|hand|cuff|collar|half|panel|hem|brim|crown|heel|toe|underarm|armhole|opening|slit|trim|corner|corners|body|leg|arm)$/
const which = /^(?:the|first|second|third|fourth|next|last|other|left|right|upper|lower|top|bottom|front|back|half|long|short|inner|outer|side|center|centre|neck|step|armhole|sleeve|opening|hand|-)$/
const longest = 4

/**
 * A part's name before what is worked there, without a word of how: `First sleeve: ch 3, skip 10 sc. Front: sc in next 20 sc.`, `Border: ch 1, …`;
 * at the row's start a sentence of its own as well: `Border. Ch 1, …`.
 */
export function parsePartHeading(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  if (at > 0 && !/^[.;:]$/.test(reader.word(-1))) return undefined
  while (reader.at - at < longest && which.test(reader.word()) && !/^[:.]$/.test(reader.word(1))) reader.at += 1
  const named = part.test(reader.word())
  reader.at += 1
  const ends = reader.word() === ':' || at === 0 && reader.word() === '.'
  reader.at += 1
  if (named && ends && beginsWork(reader)) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  return undefined
}

function beginsWork(reader: Reader): boolean {
  if (/^(?:ch|chain|sk|skip|miss|sl|ss|join|with|holding|work|[*([])$/.test(reader.word()) || reader.peek()?.kind === 'mark') return true
  return reader.vocabulary.stitchAt([reader.word(numberAhead(reader) === undefined ? 0 : 1), reader.word(numberAhead(reader) === undefined ? 1 : 2)]) !== undefined
}
