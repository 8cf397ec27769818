import { takeNumber } from './numbers.ts'
import type { Draft } from './parse-tail.ts'
import type { Reader } from './reader.ts'
import type { Target } from './syntax.ts'

/** `along the other side of the 3 ch`: so many chains, each from below. */
export function otherSideOfBridge(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  const count = reader.take('along|down|up|across|on', 'the', 'other|opposite|second', 'side', 'of', 'the|these|those') ? takeNumber(reader) : undefined
  if (count && reader.take('ch|chs|chain|chains')) return { walk: 'next', count, eachOf: true, thing: { kind: 'chain' }, edge: 'underside', start, end: reader.end }
  reader.at = at
  return undefined
}

/** `in other side of ch`, `in the other side of each of 3 ch`. */
export function otherSideOfChain(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  if (reader.take('other|opposite', 'side', 'of', 'the|each?', 'of?', 'the|next?', 'next?')) {
    const count = takeNumber(reader)
    if (reader.take('ch|chain|chs|chains')) {
      Object.assign(draft, { walk: 'next', thing: { kind: 'chain' }, edge: 'underside', ...(count && { count }) })
      return true
    }
  }
  reader.at = at
  return false
}
