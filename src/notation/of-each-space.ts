import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Num } from './target.ts'

/** Takes `of each ch-4 sp`, where it has as many chains as were named. */
export function ofEachSpace(reader: Reader, { values }: Num): boolean {
  const { at } = reader
  const space = reader.take('of|in', 'each|every|both|all', 'of?', 'the?') ? takeThing(reader) : undefined
  const same = space?.kind === 'space' && (space.chains === undefined || String(space.chains.values) === String(values))
  if (!same) reader.at = at
  return same
}
