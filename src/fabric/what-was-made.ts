import { inSize } from '../notation/target.ts'
import type { Made } from './compare-total.ts'
import { roundEdge } from './motif-sides.ts'
import { isStitch } from './place.ts'
import type { RowSetting } from './row-setting.ts'
import type { Walk } from './walk.ts'

/** Stitches, spaces and groups of a row, as it is counted. */
export function whatWasMade(walk: Walk): Made {
  const kinds: Record<string, number> = {}
  const spaces: Record<string, number> = {}
  let stitches = 0
  let chains = 0
  for (const place of walk.made) {
    if (place.kind === 'space') {
      const name = `ch-${place.chains ?? 1}`
      spaces[name] = (spaces[name] ?? 0) + 1
      chains += place.chains ?? 1
    } else if (!place.travel) {
      kinds[place.kind] = (kinds[place.kind] ?? 0) + 1
      stitches += 1
    }
  }
  if (walk.laid > 0 && !walk.worked && !walk.ring) return { stitches: walk.laid, kinds: { ch: walk.laid }, spaces, chains: 0, skips: false, groups: [], tiles: 0, loose: {}, colours: undefined }
  const endChains = walk.carry && inSize(walk.carry.count, walk.setting.size)
  return {
    stitches, kinds, spaces, chains, ...(endChains !== undefined && { endChains }), skips: walk.skips, groups: walk.groups, tiles: tilesMade(walk),
    loose: standingAlone(walk), colours: byYarn(walk), ...(walk.neighbours.length > 0 && { joined: joinedSpaces(walk) }),
  }
}

function joinedSpaces({ made, neighbours }: Walk): NonNullable<Made['joined']> {
  const joined = made.filter((place) => place.kind === 'space' && place.joined)
  const spaces = Map.groupBy(joined, ({ chains }) => `ch-${chains ?? 1}`)
  return { spaces: Object.fromEntries([...spaces].map(([name, places]) => [name, places.length])), corners: roundEdge(made).corners.filter(({ joined: fastened }) => fastened).length, joins: neighbours.length }
}

/** The stitch that most of a row is made of: what `work even` goes on with. */
export function mainKind({ kinds }: Made, setting: RowSetting): string {
  const bases = Object.entries(kinds).map(([kind, count]) => [setting.lexicon.stitch(kind)?.base ?? kind, count] as const)
  const most = bases.sort((a, b) => b[1] - a[1])[0]?.[0]
  return most === undefined || most === 'ch' ? setting.base : most
}

/** `Ch 25, join with sl st to form a ring (24)`: the chains, or one fewer where the join uses one up. */
export function joinedChain(walk: Walk, said: number | undefined): Made | undefined {
  if (walk.laid === 0 || walk.worked || !(walk.ring || walk.closedChain) || said === undefined) return undefined
  const one = said === walk.laid - 1
  // Chains that are counted are worked into, and not round.
  walk.ring = false
  walk.closedChain = true
  if (one) walk.edge = walk.edge.slice(0, -1)
  const count = one ? said : walk.laid
  return { stitches: count, kinds: { ch: count }, spaces: {}, chains: 0, skips: false, groups: [], tiles: 0, loose: {} }
}

/** Stitches by yarn; undefined where the rows do not tell the yarn of each. */
function byYarn({ made }: Walk): Readonly<Record<string, number>> | undefined {
  const counts: Record<string, number> = {}
  for (const { kind, travel, yarn } of made) {
    if (travel || kind === 'space') continue
    if (yarn === undefined) return undefined
    counts[yarn] = (counts[yarn] ?? 0) + 1
  }
  return counts
}

function tilesMade({ made }: Walk): number {
  return made.filter((place, index) => place.kind === 'space' && made[index + 1] !== undefined && isStitch(made[index + 1]!)).length
}

function standingAlone(walk: Walk): Readonly<Record<string, number>> {
  const sizes = new Map<number, number>()
  for (const { group } of walk.made) if (group !== undefined) sizes.set(group, (sizes.get(group) ?? 0) + 1)
  const loose: Record<string, number> = {}
  for (const { kind, group, travel } of walk.made) if (!travel && kind !== 'space' && (group === undefined || sizes.get(group) === 1)) loose[kind] = (loose[kind] ?? 0) + 1
  return loose
}
