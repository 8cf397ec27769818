import { ordinals } from './number-words.ts'
import { takeNumber } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Aside } from './syntax.ts'

const ends = /^[.;)]$/

/** `The corner st is the second sc of the three made in one place on Rnd 1.`: which one it is. Only where that is the middle one. */
export function parseCornerDefined(reader: Reader): readonly Aside[] | undefined {
  const { at, start } = reader
  const begins = at === 0 || /^[.;(]$/.test(reader.word(-1))
  if (begins && reader.take('the|a', 'corner', 'st|stitch', 'is', 'the') && takeMiddle(reader)) {
    while (!reader.done && !ends.test(reader.word())) reader.at += 1
    return [{ node: 'aside', start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `second sc of the three made in one place on Rnd 1`, `middle one of the 3 sc` */
function takeMiddle(reader: Reader): boolean {
  const token = reader.peek()
  const nth = token?.kind === 'ordinal' ? token.value : ordinals[reader.word()]
  if (nth === undefined && !/^(?:center|centre|middle)$/.test(reader.word())) return false
  reader.at += 1
  takesStitch(reader)
  const size = reader.take('of', 'the|each|every?') ? takeNumber(reader)?.values[0] : undefined
  if (size === undefined || size % 2 === 0 || nth !== undefined && size !== 2 * nth - 1) return false
  takesStitch(reader)
  return reader.done || ends.test(reader.word()) || reader.take('made|worked|that|which|in|of|from')
}

const takesStitch = (reader: Reader): boolean => reader.take('one|st|sts|stitch|stitches') || takeStitchName(reader) !== undefined
