import type { Instruction } from '../notation/syntax.ts'
import type { Lexicon } from './lexicon.ts'
import type { WrittenEntry } from './real-rows.ts'

const known = new WeakMap<readonly WrittenEntry[], ReadonlySet<string>>()

/**
 * Stitches (US words) of which some row of the piece says that their turning chain is no stitch. Where the first row skips such a chain and
 * is silent, it is none there either.
 */
export function deniedChains(entries: readonly WrittenEntry[], lexicon: Lexicon): ReadonlySet<string> {
  const found = known.get(entries) ?? new Set(entries.flatMap(({ read }) => deniedIn(read.items, lexicon)))
  known.set(entries, found)
  return found
}

function deniedIn(items: readonly Instruction[], lexicon: Lexicon): readonly string[] {
  const worked = items.filter(({ node }) => node !== 'aside' && node !== 'turn')
  const [chain, next] = worked
  if (chain?.node !== 'chain' || !chain.notCounted || (chain.count.values[0] ?? 0) < 2 || next?.node !== 'work') return []
  return [lexicon.stitch(next.stitch)?.base ?? next.stitch]
}
