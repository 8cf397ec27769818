import type { Num } from './target.ts'

/** Counts of a row while they are read, as far as one may be the sum of others. */
interface Counts {
  count?: Num
  readonly kinds: { kind: string; count: Num }[]
  readonly spaces: readonly { readonly chains?: number; readonly count: Num }[]
  readonly groups: { name: string; count: Num }[]
  /** `4 corners`: how many sides there are. */
  readonly corners?: Num
  /** Counts that were said to be those of one side. */
  readonly ofOneSide: readonly Num[]
}

/** `(4 corners, 9 dc each side)`: 36 dc. Where nobody says how many sides there are, the count of one is no count of the row. */
export function onAllSides(counts: Counts): void {
  const { corners, ofOneSide } = counts
  const all = (count: Num): Num => ({ ...count, values: count.values.map((value, size) => value * (corners!.values[size] ?? corners!.values[0]!)) })
  if (counts.count && ofOneSide.includes(counts.count)) {
    if (corners) counts.count = all(counts.count)
    else delete counts.count
  }
  for (const [index, { kind, count }] of [...counts.kinds.entries()].toReversed()) {
    if (!ofOneSide.includes(count)) continue
    if (corners) counts.kinds[index] = { kind, count: all(count) }
    else counts.kinds.splice(index, 1)
  }
  if (ofOneSide.length > 0 && !corners) counts.groups.push({ name: 'side', count: ofOneSide[0]! })
}

/** `46 sts: 40 sc and 6 ch`, `20 sts: 14 sc and two loops of 3 ch`: the sum of what is told kind by kind, chains among it. */
export function withoutSum(counts: Counts): void {
  const chains = counts.spaces.filter((space) => space.chains !== undefined)
  const parts = [...counts.kinds.map(({ count }) => count.values[0]!), ...chains.map((space) => space.count.values[0]! * Math.max(1, space.chains!))]
  const { values = [] } = counts.count ?? {}
  if (chains.length > 0 && counts.kinds.length > 0 && values.length === 1 && values[0] === parts.reduce((sum, part) => sum + part, 0)) delete counts.count
}
