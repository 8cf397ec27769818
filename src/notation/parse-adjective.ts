import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Thing } from './target.ts'

/** `next 4 step sts`, `5 outer corner stitches`, `6 tab sc`: a word that tells where they lie, whatever it is. */
export function takeThingBehindWord(reader: Reader): Thing | undefined {
  const { at } = reader
  const word = reader.peek()?.kind === 'word' && /^[a-z]{3,}$/.test(reader.word()) && reader.vocabulary.stitchAt([reader.word()]) === undefined && !notAnAdjective.test(reader.word())
  if (word && (reader.vocabulary.stitchAt([reader.word(1)]) !== undefined || /^(st|sts|stitch|stitches)$/.test(reader.word(1)))) {
    reader.at += 1
    const thing = takeThing(reader)
    if (thing?.kind === 'stitch') return thing
  }
  reader.at = at
  return undefined
}

/** Words before a stitch that mean more than where it lies. */
const notAnAdjective = /^(and|with|work|working|then|round|row|rnd|joined|chain|space|loop|loops|back|front|times|into|each|next|ring|turning|times|make|worked|slip|miss|skip|turn|join|together|inc|dec)$/

/** Words for stitches that nothing was worked into yet. */
export const unworked = 'unworked|free|unused|leftover'

/** `5 unworked sts`, `4 slip-stitched sts`, `6 added ch`: how they came to lie there. */
export function takeState(reader: Reader): 'slipped' | undefined {
  if (/^(?:unworked|free|slip|sl|ss|st|stitch)$/.test(reader.word(1))) reader.take('outermost|outer|innermost|inner|nearest')
  if (reader.take(`${unworked}|added|extra|extension|spare|separate`) || reader.take('left', '-?', 'over')) return undefined
  return reader.take('slipped') || reader.take('slip|sl|ss', '-?', 'stitched') ? 'slipped' : undefined
}
