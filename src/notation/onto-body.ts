import { takeNumber } from './numbers.ts'
import type { Reader } from './reader.ts'
import type { Aside } from './syntax.ts'

/** `sl st in next 2 body sts`: ribbing worked sideways is fastened to the body; the row itself ends before. */
export function ontoBody(reader: Reader, start: number): Aside | undefined {
  const { at } = reader
  if (reader.take('in|into|to', 'the?', 'next')) {
    takeNumber(reader)
    if (reader.take('body|edge|main|neck|sleeve|hem', 'st|sts|stitch|stitches|edge?', 'sts?') || reader.take('st|sts|stitch|stitches', 'of|on', 'the?', 'body|edge|neck|sleeve|hem|main|last|first', 'piece|rnd|round|row|edge?')) return { node: 'aside', leaves: true, start, end: reader.end }
  }
  reader.at = at
  return undefined
}
