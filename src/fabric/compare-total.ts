import { tieWords } from '../notation/parse-tie.ts'
import { inSize, type Num } from '../notation/target.ts'
import { joinedCorner, joinToNeighbour, type Total } from '../notation/written-count.ts'
import type { Lexicon } from './lexicon.ts'
import { tie } from './work-tie.ts'
import type { Says } from './worked-row.ts'

const isTie = new RegExp(`^(?:${tieWords})$`, 'i')

/** What a row made, for comparing with what it says. */
export interface Made {
  readonly stitches: number
  readonly kinds: Readonly<Record<string, number>>
  readonly spaces: Readonly<Record<string, number>>
  /** Chains of all its spaces together. */
  readonly chains: number
  /** Chains made at its end, which no stitch closes to a space: those of an arm or a sleeve. */
  readonly endChains?: number
  /** It passed over places: only chains over skipped stitches are ever counted in their stead. */
  readonly skips: boolean
  readonly groups: readonly { readonly name: string; readonly size: number }[]
  /** Stitches by the letter of their yarn; undefined where the rows do not tell it of each. */
  readonly colours?: Readonly<Record<string, number>> | undefined
  /** Loops of chains that stitches stand beside at once: each is a tile, in a row of tiles. */
  readonly tiles: number
  /** Stitches by kind that stand alone in their place: beside `6 V-sts` they are counted so. */
  readonly loose: Readonly<Record<string, number>>
  /** Of the spaces those that were joined to a motif beside it, and how many of these are its corners. */
  readonly joined?: { readonly spaces: Readonly<Record<string, number>>; readonly corners: number; readonly joins: number }
}

export interface Comparison {
  readonly says: Says | undefined
  /** The total in all agrees, or none is said. */
  readonly totalAgrees: boolean
  /** Every kind and space that is said agrees. */
  readonly kindsAgree: boolean
  /** The first kind or space that does not. */
  readonly kindSlip?: KindSlip
  readonly changeAgrees: boolean
  /** Chains had to be counted as stitches for the total to agree. */
  readonly chainsCounted: boolean
}

/** A kind of stitch, a kind of space (`ch-2`) or a group of which a row makes another number than it says. */
export interface KindSlip {
  readonly name: string
  readonly says: number
  readonly makes: number
  readonly sort: 'stitch' | 'space' | 'group' | 'colour'
}

/** Compares a row's written totals with what it made. `before` is what the row before made. */
export function compareTotal(totals: readonly Total[], made: Made, size: number, before: number | undefined, chainsCount: boolean | undefined, lexicon: Lexicon): Comparison {
  const says = withWrongOne(saysOf(totals, size), totals, size, made.stitches)
  if (!says) return { says, totalAgrees: true, kindsAgree: true, changeAgrees: true, chainsCounted: chainsCount === true }
  const counted = chainsCount ?? totals.some((total) => total.chainsCount === true)
  const withChains = made.stitches + made.chains
  // A total that lists its spaces apart does not count their chains as well.
  const listed = Object.keys(says.spaces).length > 0
  const chainsCounted = counted || says.count !== undefined && chainsCount === undefined && !listed && made.skips && says.count !== made.stitches && says.count === withChains
  const makes = chainsCounted ? withChains : made.stitches
  const kinds = Object.entries(says.kinds)
  const total = says.count ?? (kinds.length > 0 && kinds.every(([kind]) => isCounted(kind, lexicon)) && onlyStitches(kinds, made, lexicon) ? sum(says.kinds) : undefined)
  // `(70 dc)` of shells with slip stitches between them: those may go uncounted.
  const slips = says.kinds['sl st'] === undefined ? (made.kinds['sl st'] ?? 0) : 0
  const partial = says.count === undefined && kinds.length > 0 && kinds.every(([kind]) => isCounted(kind, lexicon)) && sum(says.kinds) !== makes && sum(says.kinds) !== made.stitches && sum(says.kinds) !== made.stitches - slips
  const kindSlip = kinds.map(([kind, count]) => stitchSlip(kind, count, made, lexicon, chainsCounted)).find((slip) => slip) ?? Object.entries(says.spaces).map(([space, count]) => spaceSlip(space, count, made)).find((slip) => slip) ?? colourSlip(says, made) ?? toldPicots(totals, made, size) ?? toldTies(totals, made, size)
  const kindsAgree = kindSlip === undefined
  return {
    says,
    totalAgrees: !partial && (total === undefined || total === makes || total === made.stitches && !counted || says.count === undefined && kindsAgree),
    kindsAgree,
    ...(kindSlip && { kindSlip }),
    changeAgrees: says.change === undefined || before === undefined || makes - before === says.change,
    chainsCounted,
  }
}

/** `25 sts`, where another round has `25 sts: 24 sc and the closing sl st`: the join is told with the stitches here as well. */
export function withJoin(totals: readonly Total[], made: number, size: number): readonly Total[] {
  return totals.map((total) => (total.closing === undefined && total.kinds.length === 0 && total.count && inSize(total.count, size) === made + 1 ? { ...total, closing: true } : total))
}

/** `35 sts (34 sts + closing ss)`: of two numbers that should be one, the wrong one is held to the row. */
function withWrongOne(says: Says | undefined, totals: readonly Total[], size: number, made: number): Says | undefined {
  if (!says?.closing) return says
  const counts = totals.flatMap(({ count }) => (count ? [inSize(count, size) - 1] : []))
  const wrong = counts.find((count) => count !== made)
  return wrong === undefined ? says : { ...says, count: wrong }
}

/** Kinds that are stitches of the row, each counted once: a list of them is the whole row. Groups (V-sts, shells) are not. */
function isCounted(kind: string, lexicon: Lexicon): boolean {
  const stitch = lexicon.stitch(kind)
  return stitch !== undefined && stitch.makes === 1 && kind !== 'cl'
}

/** Whether the kinds that are said are meant as all of the row's stitches: `(34 sc)`. */
function onlyStitches(kinds: readonly (readonly [string, number])[], made: Made, lexicon: Lexicon): boolean {
  const said = new Set(kinds.map(([kind]) => kind))
  return Object.keys(made.kinds).every((kind) => said.has(kind) || said.has(lexicon.stitch(kind)?.base ?? kind))
}

function stitchSlip(kind: string, says: number, made: Made, lexicon: Lexicon, chainsCounted: boolean): KindSlip | undefined {
  if (kind === 'tile' || kind === 'square') return blockSlip(kind, says, made)
  if (kind === 'picot') return picotSlip(says, made)
  // One of the pattern's own that makes several is counted by how often it is worked.
  const worked = lexicon.owns(kind) ? made.groups.filter(({ name }) => name === kind).length : 0
  if (worked > 0) return worked === says ? undefined : { name: kind, says, makes: worked, sort: 'group' }
  const [own, byBase, groups] = [kindCount(kind, made, lexicon, chainsCounted), kindsByBase(kind, made, lexicon), groupCount(kind, made)]
  if (own === says || byBase === says || byBase + withinOwn(made, lexicon) === says || groups.includes(says) || made.loose[kind] === says) return undefined
  const group = own === 0 && byBase === 0 && groups.some((count) => count > 0)
  return { name: kind, says, makes: group ? Math.max(...groups) : byBase, sort: group ? 'group' : 'stitch' }
}

/** Picots are counted where their words are read as such. */
function picotSlip(says: number, made: Made): KindSlip | undefined {
  const makes = (made.kinds['picot'] ?? 0) + made.groups.filter(({ name }) => name === 'picot').length
  return makes === says || makes === 0 ? undefined : { name: 'picot', says, makes, sort: 'group' }
}

/** Joins to the motif beside it are counted where their words are read as such. */
function joinSlip(says: number, { joined }: Made): KindSlip | undefined {
  return joined === undefined || joined.joins === says ? undefined : { name: joinToNeighbour, says, makes: joined.joins, sort: 'group' }
}

/** `90 sc, 30 picots` where the pattern defines none and the row tells how they are made. */
function toldPicots(totals: readonly Total[], made: Made, size: number): KindSlip | undefined {
  const told = totals.flatMap(({ groups }) => groups).find(({ name }) => /^picots?$/i.test(name))
  return told && picotSlip(inSize(told.count, size), made)
}

/** `52 sc, 2 ties`: where the row tells how they are made. */
function toldTies(totals: readonly Total[], made: Made, size: number): KindSlip | undefined {
  const told = totals.flatMap(({ groups }) => groups).find(({ name }) => isTie.test(name))
  const makes = made.groups.filter(({ name }) => name === tie).length
  const says = told && inSize(told.count, size)
  return says === undefined || makes === 0 || makes === says ? undefined : { name: tie, says, makes, sort: 'group' }
}

/** Squares of filet, or tiles from corner to corner, which some call squares; the squares of a row that works none are those of a blanket. */
function blockSlip(name: string, says: number, made: Made): KindSlip | undefined {
  const squares = made.groups.filter((group) => group.name === 'square').length
  const makes = name === 'square' && squares > 0 ? squares : made.tiles
  return makes === says || name === 'square' && makes === 0 ? undefined : { name, says, makes, sort: 'group' }
}

function kindCount(kind: string, made: Made, lexicon: Lexicon, chainsCounted: boolean): number {
  const own = made.kinds[kind] ?? 0
  // Where only one kind is said and chains count as stitches, the number holds them too.
  return lexicon.stitch(kind) && chainsCounted && Object.keys(made.kinds).length === 1 ? own + made.chains : own
}

/** `42 hdc` counts the hdc2tog among the hdc. */
function kindsByBase(kind: string, made: Made, lexicon: Lexicon): number {
  let count = 0
  for (const [name, number] of Object.entries(made.kinds)) if (name === kind || lexicon.stitch(name)?.base === kind) count += number
  return count
}

/** Stitches within those that the pattern defines itself, as the two sc of a picot stitch: what they are of, only its words tell. */
function withinOwn(made: Made, lexicon: Lexicon): number {
  return Object.entries(made.kinds).reduce((sum, [name, count]) => sum + (lexicon.owns(name) && (lexicon.stitch(name)?.makes ?? 1) > 1 ? count : 0), 0)
}

/** `6 V-sts`, `12 shells`: groups worked in one place. Full shells are the largest groups, half shells smaller ones. */
function groupCount(kind: string, made: Made): readonly number[] {
  const named = made.groups.filter(({ name }) => name === kind).length
  if (kind === 'V-st') return [named, made.groups.filter(({ size, name }) => size === 2 && name === 'group').length]
  if (kind !== 'sh' && kind !== 'group') return [named]
  const sizes = made.groups.filter(({ size }) => size > 2).map(({ size }) => size)
  const largest = Math.max(0, ...sizes)
  return [named, sizes.length, sizes.filter((size) => size === largest).length, sizes.filter((size) => size < largest).length]
}

/** `12 A, 6 B`: told only where the rows say the yarn of every stitch. */
function colourSlip({ colours }: Says, made: Made): KindSlip | undefined {
  if (!colours || !made.colours) return undefined
  const wrong = Object.entries(colours).find(([yarn, count]) => (made.colours?.[yarn] ?? 0) !== count)
  return wrong && { name: wrong[0], says: wrong[1], makes: made.colours[wrong[0]] ?? 0, sort: 'colour' }
}

function spaceSlip(space: string, says: number, made: Made): KindSlip | undefined {
  // `20 lps` are the loops of a Tunisian or broomstick row, which stand on the hook and are its stitches.
  if (space === 'any' && sum(made.spaces) === 0 && (made.kinds['lp'] ?? made.kinds['tss']) !== undefined) return says === made.stitches ? undefined : { name: 'lp', says, makes: made.stitches, sort: 'group' }
  if (space === joinToNeighbour) return joinSlip(says, made)
  if (space === joinedCorner) return made.joined?.corners === says ? undefined : { name: space, says, makes: made.joined?.corners ?? 0, sort: 'space' }
  // `8 sc, 6 ch`: the chains that the next row is worked into are counted apart where the total counts chains.
  const makes = space === 'chains' ? made.chains + (made.endChains ?? 0) : space === 'any' ? sum(made.spaces) : (made.spaces[space] ?? 0)
  // A space that was joined is told apart, or with the others.
  const free = makes - (made.joined?.spaces[space] ?? 0)
  return makes === says || free === says ? undefined : { name: space, says, makes, sort: 'space' }
}

function sum(counts: Readonly<Record<string, number>>): number {
  return Object.values(counts).reduce((total, count) => total + count, 0)
}

/** All written totals of a row as one statement, in one size. */
export function saysOf(totals: readonly Total[], size: number): Says | undefined {
  if (totals.length === 0) return undefined
  const kinds: Record<string, number> = {}
  const spaces: Record<string, number> = {}
  const colours: Record<string, number> = {}
  let count: number | undefined
  let change: number | undefined
  let rows: number | undefined
  const value = (num: Num | undefined) => num && inSize(num, size)
  for (const total of totals) {
    count = value(total.count) ?? count
    change = value(total.change) ?? change
    rows = value(total.rows) ?? rows
    for (const part of total.kinds) kinds[part.kind] = (kinds[part.kind] ?? 0) + inSize(part.count, size)
    for (const part of total.spaces) {
      const name = part.chains === undefined ? 'any' : part.chains < 0 ? 'chains' : `ch-${part.chainsBySize ? inSize(part.chainsBySize, size) : part.chains}`
      spaces[name] = (spaces[name] ?? 0) + inSize(part.count, size)
    }
    for (const part of total.colours ?? []) colours[part.yarn] = (colours[part.yarn] ?? 0) + inSize(part.count, size)
    for (const part of total.groups) if (part.name === joinedCorner || part.name === joinToNeighbour) spaces[part.name] = inSize(part.count, size)
    for (const part of total.groups) if (/^(sh|tile|square)$/.test(part.name)) kinds[part.name] = inSize(part.count, size)
  }
  const coloured = Object.values(colours)
  if (count === undefined && Object.keys(kinds).length === 0 && coloured.length > 0) count = coloured.reduce((all, each) => all + each, 0)
  // `49 sts: 48 sc and the closing sl st`: the join is told with the stitches, and is none of them.
  const closing = totals.some((total) => total.closing)
  if (closing && count !== undefined) count -= 1
  const changed = totals.find((total) => total.change)
  const span = { start: totals[0]!.start, end: totals.at(-1)!.end }
  return { span, kinds, spaces, ...(coloured.length > 0 && { colours }), ...(count !== undefined && { count }), ...(closing && { closing }), ...(change !== undefined && changed && { change, changeSpan: { start: changed.start, end: changed.end } }), ...(rows !== undefined && { rows }) }
}
