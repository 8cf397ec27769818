import type { Place } from '../fabric/place.ts'
import { rowWidth, type InkedRow } from './gauge.ts'

/** Rounds of a piece that goes on from another. */
export interface RoundsPart {
  readonly rows: readonly InkedRow[]
  /** How many are made. */
  readonly make?: number
}

/** A tube that goes off to a side: a sleeve, a leg, a thumb. */
export interface Limb {
  readonly rows: readonly InkedRow[]
  /** After how many rounds of the trunk it begins. */
  readonly after: number
}

const leastGoingOn = 0.45

/**
 * Parts what is worked in rounds into its trunk and what goes off from it. Where two parts go on from the same round, the wider is the
 * trunk and the others are limbs; a part that takes up stitches which waited in an older part is a limb as well.
 */
export function limbsOf(parts: readonly RoundsPart[]): { readonly trunk: readonly InkedRow[]; readonly limbs: readonly Limb[] } {
  const [main, ...others] = parts
  if (!main) return { trunk: [], limbs: [] }
  const owners = new Map<Place, number>()
  const note = (at: number, rows: readonly InkedRow[]) => {
    for (const { row } of rows) for (const place of row.fabric.made) owners.set(place, at)
  }
  note(0, main.rows)
  const under = others.map((part, at) => {
    note(at + 1, part.rows)
    const owner = ownerOf(part.rows[0], owners) ?? (at === 0 ? 0 : undefined)
    const last = owner === undefined ? undefined : parts[owner]?.rows.at(-1)
    // Even a round of nothing but decreases has half of the stitches of the round before it.
    return last && widthOf(part) < leastGoingOn * rowWidth(last.row) && at > 0 ? undefined : owner
  })
  const trunk = [0]
  for (;;) {
    const top = trunk.at(-1) ?? 0
    const candidates = others.flatMap((_, at) => (under[at] === top && !trunk.includes(at + 1) ? [at + 1] : []))
    const next = candidates.toSorted((a, b) => widthOf(parts[b]) - widthOf(parts[a]))[0]
    if (next === undefined) break
    trunk.push(next)
  }
  const lengths = trunk.map((at) => parts[at]?.rows.length ?? 0)
  const rounds = trunk.flatMap((at) => parts[at]?.rows ?? [])
  const limbs = others.flatMap((part, at): readonly Limb[] => {
    if (trunk.includes(at + 1)) return []
    const from = trunk.indexOf(under[at] ?? -1)
    // What stands on nothing of the trunk goes off where the trunk narrows most.
    const after = from === -1 ? narrowing(rounds) : lengths.slice(0, from + 1).reduce((sum, length) => sum + length, 0)
    return Array.from({ length: Math.min(2, part.make ?? 1) }, () => ({ rows: part.rows, after }))
  })
  return { trunk: rounds, limbs: limbs.slice(0, 2) }
}

/** How many rounds there are before the one that is most narrower than the round before it. */
function narrowing(rounds: readonly InkedRow[]): number {
  const widths = rounds.map(({ row }) => rowWidth(row))
  const drops = widths.map((width, at) => (widths[at - 1] ?? width) - width)
  return Math.max(1, drops.indexOf(Math.max(...drops)))
}

const widthOf = (part: RoundsPart | undefined): number => (part?.rows[0] ? rowWidth(part.rows[0].row) : 0)

/** The part that most stitches of a round stand on. */
function ownerOf(first: InkedRow | undefined, owners: ReadonlyMap<Place, number>): number | undefined {
  const counts = new Map<number, number>()
  for (const { into } of first?.row.fabric.made ?? []) {
    const owner = into && owners.get(into)
    if (owner !== undefined) counts.set(owner, (counts.get(owner) ?? 0) + 1)
  }
  return [...counts].toSorted((a, b) => b[1] - a[1])[0]?.[0]
}
