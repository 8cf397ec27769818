import { takeNumber } from './numbers.ts'
import { takeThing } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import type { Aside } from './syntax.ts'

/** Whether such words come next: `fasten off and draw the yarn through the 6 sts`. */
export function threadedAhead(reader: Reader): boolean {
  const { at } = reader
  const found = /^(?:and|then)$/.test(reader.word()) && parseThreaded(reader) !== undefined
  reader.at = at
  return found
}

/** `thread through the 6 sts`, `run the tail through the remaining 7 sc`, `draw yarn through front loops of last 6 sts`, `gather the 8 sts`: they are all that the row has made. */
export function parseThreaded(reader: Reader): readonly Aside[] | undefined {
  const { at, start } = reader
  reader.take('and|then')
  const drawn = reader.take('thread|run|draw|pull|weave|pass|lace|threading|running|drawing|pulling|weaving|passing', 'the|it|this?', 'yarn|tail|end|strand|thread?', 'end|tail?', 'through|into') || reader.take('gather|close', 'up?')
  reader.take('the?', 'front|back|outer', 'loops|lps', 'of')
  reader.take('all?', 'of?', 'the|these?')
  reader.take('rem|remaining|last|final')
  const count = drawn ? takeNumber(reader) : undefined
  if (count) {
    reader.take('rem|remaining|last')
    if (takeThing(reader)?.kind === 'stitch') {
      reader.take('rem|remaining|left')
      if (reader.take('of', 'the', 'last|final', 'row|rnd|round') || placeEnds(reader, 'to')) return [{ node: 'aside', stated: { count, scope: 'so-far' }, start, end: reader.end }]
    }
  }
  reader.at = at
  return undefined
}
