import { takeToEnd } from './parse-reach.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Target } from './target.ts'

/** `1 sc per sc`, `one per st all the way around`: in each of them. */
export function perStitch(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  const thing = reader.take('per') ? takeThing(reader) : undefined
  if (thing?.kind === 'stitch' && !thing.where) {
    takeToEnd(reader)
    return { walk: 'each', thing, start, end: reader.end }
  }
  reader.at = at
  return undefined
}
