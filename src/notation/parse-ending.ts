import { takeCornerCentre } from './parse-centre.ts'
import { endOfRow } from './parse-edge.ts'
import type { Reader } from './reader.ts'
import type { Aside } from './syntax.ts'
import type { Target } from './target.ts'

/** `ending in end of Row 17`, `finishing in the centre sc of the second top corner`: which place the stitch worked last has gone into. */
export function parseEnding(reader: Reader): Aside | undefined {
  const { at, start } = reader
  if (reader.take('and?', 'to?', 'ending|finishing|end|finish')) {
    const endsIn = endOfRow(reader, start) ?? (reader.take('in|at', 'the?') ? cornerIn(reader, start) : undefined)
    if (endsIn && (reader.done || /^[,;.:(*]$/.test(reader.word()))) return { node: 'aside', words: '', endsIn, start, end: reader.end }
  }
  reader.at = at
  return undefined
}

function cornerIn(reader: Reader, start: number): Target | undefined {
  const thing = takeCornerCentre(reader)
  return thing && { walk: 'next', thing, start, end: reader.end }
}
