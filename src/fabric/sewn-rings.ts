import { sideOfBorder, widestGap } from './border-sides.ts'
import { endsOf, handOf, type LaidRow, type Part } from './laid-row.ts'
import type { EdgeWords } from './named-edges.ts'
import type { Place } from './place.ts'

/**
 * An edge of a piece, by the index of the piece, as a seam names it. `ridge`: the row of the piece itself that was worked through both layers;
 * `facing`: the edge that lay on what that row was worked along; `copy`: a copy of the piece lay there.
 */
export interface SewnEdge {
  readonly piece: number
  readonly words: EdgeWords | 'ridge' | 'facing' | 'copy'
}

/** Two edges that are sewn to one another, place to place. */
export type ToldSeam = readonly [SewnEdge, SewnEdge]

/** A piece with the rows that are its own, and those under a heading of it. */
export interface SewnPiece {
  readonly rows: readonly LaidRow[]
  under(heading: string): readonly LaidRow[]
}

/** What a seam takes of the edges that are sewn. */
export interface HowSewn {
  /** The ends of a row through both layers are places. */
  readonly ends?: boolean
  /** The side of a border is sewn with the centres of its corners. */
  readonly centres?: boolean
}

/** One place of an outline. */
export interface Spot {
  readonly edge: Part['edge']
  readonly row: LaidRow
  readonly place: Place
}

/** The places round an outline, the last beside the first. */
export type Ring = readonly Spot[]

export const spotsOf = (parts: readonly Part[]): Ring => parts.flatMap(({ edge, row, places }) => places.map((place) => ({ edge, row, place })))

/**
 * What is left open when edges are sewn: two outlines that are sewn along a run of places become one, and one that is sewn to itself becomes two,
 * such as the neck and the hem of a tube. All outlines are seen from the right side, and a seam lies where each of its runs has been; of a row through
 * both layers, where its ends are to be places, these.
 */
export function sewnRings(outlines: readonly (readonly Part[])[], pieces: readonly SewnPiece[], seams: readonly ToldSeam[], { ends = false, centres = true }: HowSewn = {}): readonly (readonly Part[])[] {
  let rings: readonly Ring[] = outlines.map(spotsOf)
  // Numbers of an edge are those of the whole edge, whatever seams have taken of it.
  const asWorked = rings
  const taken = new Map<string, number>()
  let sewn = false
  for (const seam of seams) {
    const free: ReadonlySet<Place> = new Set(rings.flat().map(({ place }) => place))
    const runs = seam.map(({ piece, words }) => {
      const edge = words === 'facing' ? facing(pieces, seam, free, asWorked) : words
      return pieces[piece] && edge && edge !== 'copy' ? runOf(asWorked, pieces, { piece, words: edge }, { taken, centres, back: untwisted(seam, edge, pieces[piece]) }).filter((place) => free.has(place)) : []
    })
    for (const [one, other] of shoulders(asWorked, pieces, seam) ?? [runs]) {
      const after = one && other && one.length > 0 && other.length > 0 ? sewnAt(rings, one, other, ends && seam[0].words === 'ridge') : undefined
      if (!after) continue
      rings = after
      sewn = true
    }
  }
  return sewn ? rings.map(partsOfRing) : []
}

/** `shoulders of Front` to `shoulders of Back`, where both end in two: the right one of either meets the left one of the other. */
function shoulders(rings: readonly Ring[], pieces: readonly SewnPiece[], seam: ToldSeam): readonly (readonly (readonly Place[])[])[] | undefined {
  const [[right, left] = [], [otherRight, otherLeft] = []] = seam.map(({ piece, words }) => {
    const told = typeof words !== 'string' && words.edge === 'top' && words.part === true && words.count === undefined && words.under === undefined
    return told && pieces[piece] ? topsOf(rings, pieces[piece].rows) : []
  })
  return right && left && otherRight && otherLeft ? [[right, otherLeft], [left, otherRight]] : undefined
}

/** The tops in which a piece ends, from the right one on as seen from the right side; none where they are not two. */
function topsOf(rings: readonly Ring[], rows: readonly LaidRow[]): readonly (readonly Place[])[] {
  const tops = partsOfRing(aboveFoundation(rings, rows)).filter(({ edge, row }) => edge === 'top' && rows.includes(row))
  const last = Math.max(...tops.map(({ row }) => row.number ?? 0))
  const ends = tops.filter(({ row }) => row.number === last)
  return ends.length === 2 ? ends.map(({ places }) => places) : []
}

/** What lies on the left side of a piece, both held together, is the right side of the other, row on row; top lies on top, and underside on underside. */
function facing(pieces: readonly SewnPiece[], [{ piece: ridge }, { piece: behind }]: ToldSeam, free: ReadonlySet<Place>, rings: readonly Ring[]): EdgeWords | undefined {
  const over = pieces[ridge]?.rows[0]?.over
  const rows = pieces.flatMap((piece) => piece.rows)
  const ownerOf = (place: Place): LaidRow | undefined => rows.find(({ ends, foundation, places }) => ends?.includes(place) === true || foundation.includes(place) || places.includes(place))
  const [first, last] = over ? [ownerOf(over.first), ownerOf(over.last)] : []
  if (!over || !first || !last) return undefined
  if (over.first.kind !== 'row-end') return { edge: first.foundation.includes(over.first) ? 'bottom' : 'top' }
  // Round a panel from end to end of one row: a strip lies there with a whole side, as a gusset does, and with its other side on the next panel.
  if (first === last && over.last.kind === 'row-end' && over.first !== over.last) return (['left', 'right'] as const).map((edge) => ({ edge })).find((edge) => pieces[behind] && placesNamed(rings, pieces, behind, edge).some((place) => free.has(place)))
  const [from, to] = [first.number ?? 0, last.number ?? 0].toSorted((a, b) => a - b)
  return { edge: handOf(first, over.first) === 'left' ? 'right' : 'left', part: true, rows: [from!, to!] }
}

/** The places of a named edge, from its beginning as the rows were worked. */
function runOf(rings: readonly Ring[], pieces: readonly SewnPiece[], { piece, words }: { readonly piece: number; readonly words: EdgeWords | 'ridge' }, { taken, centres, back }: { readonly taken: Map<string, number>; readonly centres: boolean; readonly back: boolean }): readonly Place[] {
  if (words === 'ridge') return rings.flat().filter(({ row }) => pieces[piece]!.rows.includes(row)).map(({ place }) => place)
  const edge = `${piece} ${words.edge}`
  const worked = placesNamed(rings, pieces, piece, words, centres)
  const all = back ? worked.toReversed() : worked
  if (words.rows) return all
  const count = words.count !== undefined && words.count < all.length ? words.count : undefined
  if (count === undefined) return words.part && words.count === undefined ? [] : all
  if (words.at === 'last') return all.slice(-count)
  const from = words.at === 'next' ? (taken.get(edge) ?? 0) : 0
  taken.set(edge, from + count)
  return words.at === undefined ? [] : all.slice(from, from + count)
}

/** A band whose top is sewn to its own foundation is not twisted: the first stitches of either lie on the same side of it. */
function untwisted([one, other]: ToldSeam, edge: EdgeWords | 'ridge', { rows }: SewnPiece): boolean {
  const isOf = (words: SewnEdge['words'], name: EdgeWords['edge']): boolean => typeof words !== 'string' && words.edge === name
  const ownEnds = one.piece === other.piece && (isOf(one.words, 'top') && isOf(other.words, 'bottom') || isOf(one.words, 'bottom') && isOf(other.words, 'top'))
  const [first, last] = [rows.find(({ foundation }) => foundation.length > 0), rows.at(-1)]
  return ownEnds && isOf(edge, 'top') && first?.side !== undefined && last?.side !== undefined && first.side !== last.side
}

function placesNamed(rings: readonly Ring[], pieces: readonly SewnPiece[], piece: number, words: EdgeWords, centres = true): readonly Place[] {
  const spots = rings.flat()
  const { rows, under } = pieces[piece]!
  const { edge, row: number, rows: range, under: heading } = words
  const border = rows.at(-1)?.round === true && range === undefined && number === undefined ? sideOfBorder(rows.at(-1)!.places, pieces.map((one) => one.rows), edge, centres) : undefined
  // `first 70 sts of top of Border` are more than one side has, and of the round.
  if (border && !(edge === 'top' && words.count !== undefined && words.count > border.length)) return border
  const own = heading === undefined ? rows : under(heading)
  const inOrder = (found: Ring, places: (row: LaidRow) => readonly Place[]): readonly Place[] => own.flatMap((row) => places(row).filter((place) => found.some((spot) => spot.place === place)))
  if ((edge === 'left' || edge === 'right') && words.below) return belowSteps(rings, rows, edge)
  if (edge === 'left' || edge === 'right') {
    const isMeant = ({ number: of = -1 }: LaidRow): boolean => range === undefined || of >= range[0] && of <= range[1]
    const outer = heading === undefined ? outerSide(rings, rows, edge) : []
    const side = (outer.length > 0 ? outer : spots).filter((spot) => spot.edge === 'row-ends' && own.includes(spot.row) && isMeant(spot.row) && handOf(spot.row, spot.place) === edge)
    return side.toSorted((a, b) => own.indexOf(a.row) - own.indexOf(b.row)).map(({ place }) => place)
  }
  if (edge === 'bottom') return inOrder(spots.filter((spot) => spot.edge === 'underside'), ({ foundation }) => foundation)
  if (edge === 'added') return addedChains(spots, own, words)
  if (edge === 'stepped') return stair(rings, own)
  if (edge !== 'top') return []
  const tops = spots.filter((spot) => spot.edge === 'top')
  const named = number === undefined ? own.findLast((row) => tops.some((spot) => spot.row === row)) : own.findLast((row) => row.number === number)
  return named ? named.places.filter((place) => tops.some((spot) => spot.place === place)) : []
}

/**
 * The side of a piece that divides into parts, as a front at a slit: from the underside of its foundation up, as far as the other side of a part
 * comes next. The walls of the slit are no side of the piece.
 */
function outerSide(rings: readonly Ring[], rows: readonly LaidRow[], side: 'left' | 'right'): Ring {
  const all = aboveFoundation(rings, rows)
  // Seen from the right side the left side comes before the underside, and the right side behind it.
  const up = side === 'left' ? all.toReversed() : all
  const end = up.findIndex((spot) => spot.edge === 'row-ends' && rows.includes(spot.row) && handOf(spot.row, spot.place) !== side)
  return end < 0 ? up : up.slice(0, end)
}

/** The side of a piece from the underside of its foundation up to its first step, from the bottom. */
function belowSteps(rings: readonly Ring[], rows: readonly LaidRow[], side: 'left' | 'right'): readonly Place[] {
  const all = aboveFoundation(rings, rows)
  const up = side === 'left' ? all.toReversed() : all
  const end = up.findIndex((spot) => spot.edge !== 'row-ends')
  return (end < 0 ? up : up.slice(0, end)).map(({ place }) => place)
}

/** What an outline has beside a piece's foundation, from the end of that on; nothing where no outline has it. */
function aboveFoundation(rings: readonly Ring[], rows: readonly LaidRow[]): Ring {
  const isUnder = ({ edge, row, place }: Spot): boolean => edge === 'underside' && rows.includes(row) && row.foundation.includes(place)
  const ring = rings.find((one) => one.some(isUnder)) ?? []
  const from = ring.findLastIndex(isUnder)
  return [...ring.slice(from + 1), ...ring.slice(0, Math.max(from, 0))].filter((spot) => !isUnder(spot))
}

/** From the first step of a stair to the end of the top that it leads to; nothing where both sides have steps. */
function stair(rings: readonly Ring[], rows: readonly LaidRow[]): readonly Place[] {
  const up = aboveFoundation(rings, rows)
  const tops = up.flatMap((spot, index) => (spot.edge === 'top' && rows.includes(spot.row) ? [index] : []))
  const top = tops.filter((index) => up[index]!.row === rows.at(-1))
  const [first, last] = [tops[0], tops.at(-1)]
  if (first === undefined || last === undefined || top.length === 0 || top[0] !== first && top.at(-1) !== last) return []
  return up.slice(first, last + 1).map(({ place }) => place)
}

/** The chains at an end of a row are made by the row before it, or beside it; those at its start come first where the words leave it open. */
function addedChains(spots: Ring, rows: readonly LaidRow[], { row: told, count, hand, separate }: EdgeWords): readonly Place[] {
  const isFree = (place: Place): boolean => spots.some((spot) => spot.edge === 'underside' && spot.place === place)
  const isMeant = ({ number }: LaidRow): boolean => told === undefined || number === told || number === told + 1
  const chains = rows.filter(isMeant).flatMap((row) => {
    const [start, end] = endsOf(row.places)
    const ends = [{ places: row.startChains, at: handOf(row, start) }, { places: row.endChains, at: handOf(row, end) }]
    return (separate ? ends.toReversed() : ends).filter(({ at }) => hand === undefined || hand === at)
  })
  return chains.map(({ places }) => places.filter(isFree)).find(({ length }) => length > 0 && (count === undefined || length === count)) ?? []
}

function sewnAt(rings: readonly Ring[], one: readonly Place[], other: readonly Place[], withEnds: boolean): readonly Ring[] | undefined {
  const ringOf = (run: readonly Place[]): Ring | undefined => rings.find((ring) => run.every((place) => ring.some((spot) => spot.place === place)))
  const [a, b] = [ringOf(one), ringOf(other)]
  if (!a || !b) return undefined
  const others = rings.filter((ring) => ring !== a && ring !== b)
  const first = begunBehind(a, one)
  const [after, before] = withEnds ? endsOfRidge(a, one, first) : [seamOf(one, a), seamOf(other, b)]
  if (a !== b) {
    return [...others, [...after, ...first, ...before, ...begunBehind(b, other)]]
  }
  const ends = other.map((place) => first.findIndex((spot) => spot.place === place))
  const [from, to] = [Math.min(...ends), Math.max(...ends)]
  // The other run must lie on what is left behind the first.
  if (from < 0) return undefined
  const left = [[...first.slice(0, from), ...(from > 0 ? after : [])], [...first.slice(to + 1), ...(to + 1 < first.length ? before : [])]]
  return [...others, ...left.filter((ring) => ring.length > 0)]
}

/** The ends of rows through both layers, behind the run that they are and before it. */
function endsOfRidge(ring: Ring, run: readonly Place[], rest: Ring): readonly [Ring, Ring] {
  const from = rest.at(-1) ? ring.indexOf(rest.at(-1)!) + 1 : 0
  const inOrder = Array.from({ length: ring.length - rest.length }, (_, index) => ring[(from + index) % ring.length]!).filter(({ place }) => run.includes(place))
  const top = inOrder.findIndex(({ edge }) => edge !== 'row-ends')
  const isEnd = ({ edge }: Spot): boolean => edge === 'row-ends'
  return [inOrder.slice(Math.max(top, 0)).filter(isEnd), inOrder.slice(0, Math.max(top, 0)).filter(isEnd)]
}

/** What a ring has beside a run, from the end of the run on. The run is the shortest stretch with all its places. */
export function begunBehind(ring: Ring, run: readonly Place[]): Ring {
  const at = ring.flatMap(({ place }, index) => (run.includes(place) ? [index] : []))
  if (at.length === 0) return []
  const gap = widestGap(at, ring.length)
  const [start, next] = [at[gap]!, at[gap + 1] ?? at[0]! + ring.length]
  return Array.from({ length: next - start - 1 }, (_, index) => ring[(start + 1 + index) % ring.length]!)
}

function seamOf(run: readonly Place[], ring: Ring): Ring {
  const spot = ring.find(({ place }) => place === run[0])
  return spot ? [{ edge: 'seam', row: spot.row, place: spot.place }] : []
}

/** Neighbours of one row and edge are one part; so are not the two ends of a row on either side of a seam. */
export function partsOfRing(ring: Ring): readonly Part[] {
  const parts: { edge: Part['edge']; row: LaidRow; places: Place[] }[] = []
  for (const { edge, row, place } of ring) {
    const last = parts.at(-1)
    if (last && last.edge === edge && last.row === row && edge !== 'row-ends') last.places.push(place)
    else parts.push({ edge, row, places: [place] })
  }
  return parts
}
