import type { Label } from '../diagnostics/diagnostic.ts'
import { counted, listOf } from '../diagnostics/words.ts'
import { placesOfEdge, type EdgePlaces, type EdgeWords } from '../fabric/named-edges.ts'
import { rowEndRates } from '../fabric/row-end-rates.ts'
import type { PieceFacts, SeamFacts } from './facts.ts'
import { easedBy, easedWords, edgeNames, edgesInSize, type SeamWords } from './seam-words.ts'

/** Edges that are further apart than this are not sewn place to place: rows of another height, or a part of an edge (common practice, no source). */
const meantToMeet = (count: number): number => Math.max(3, count / 10)

/** A seam of edges that are named: `left side of Gusset` to `Front edging`. */
export function byNamedEdges(seam: SeamFacts, pieces: readonly PieceFacts[]): SeamWords | undefined {
  const edges = edgesInSize(seam, pieces[0]?.size ?? 0)
  const parts = seam.join.flatMap((name, index) => partOf(pieces.find((piece) => piece.name === name), edges[index]))
  const [one, other] = parts
  if (seam.join.length !== 2 || !one?.piece.sound || !other?.piece.sound) return undefined
  const wrong = saysOther(one) ?? saysOther(other)
  if (wrong) return wrong
  const [ours, theirs] = [sewnOf(one), sewnOf(other)]
  const pairs = pairsOf(ours, theirs).map(([a, b]) => ({ a, b, apart: Math.abs(a - b) })).toSorted((x, y) => x.apart - y.apart)
  const said = pairs.find(({ apart }) => apart === easedBy(seam, one.piece.size))
  const nearest = said ?? pairs[0]
  if (!nearest || nearest.apart === 0 && (!seam.eases || pairs.length > 1)) return undefined
  const { a, b, apart } = nearest
  const each = listOf([joined(one, ours, a), joined(other, theirs, b)])
  const places = [...where(one.piece, ours), ...where(other.piece, theirs)]
  if (apart > meantToMeet(Math.max(a, b))) {
    const whole = !seam.ease && !seam.within && parts.every(({ edge, piece }) => edge !== undefined && edge.edge !== 'any' && !piece.edge.round)
    return whole && lengthsApart([one.piece, ours], [other.piece, theirs]) ? { edges: places, code: 'seam-lengths-apart', message: `the edges to be joined are of other lengths: ${each}`, short: `${a} against ${b}` } : undefined
  }
  const rows = rowsOff([one.piece, ours, a], [other.piece, theirs, b], easedBy(seam, one.piece.size) ?? 0)
  if (seam.ease) {
    const eased = easedWords(seam, one.piece.size, apart, each)
    return eased && { edges: places, ...(eased.code === undefined && rows !== undefined && { off: rows }), ...eased }
  }
  return { edges: places, ...(rows !== undefined && { off: rows }), message: `the edges to be joined do not match: ${each}`, short: `${a} against ${b}` }
}

interface Part {
  readonly piece: PieceFacts
  readonly edge: EdgeWords | undefined
  /** All places of the edge. */
  readonly all: EdgePlaces
}

const partOf = (piece: PieceFacts | undefined, edge: EdgeWords | undefined): readonly Part[] => (piece ? [{ piece, edge, all: edge?.under === undefined ? placesOfEdge(piece.edge, edge) : placesOfPart(piece, edge) }] : [])

/** A part of a piece under a heading of its own: its last row, and the ends of its rows. */
function placesOfPart({ rows }: PieceFacts, { edge, under }: EdgeWords): EdgePlaces {
  const own = rows.filter(({ written }) => written.heading === under)
  if (edge === 'top' || edge === 'any') return { counts: own.slice(-1).map(({ makes }) => makes), are: 'stitch' }
  return { counts: edge === 'bottom' || edge === 'all' || own.length === 0 ? [] : [own.length], are: 'row-end' }
}

/** The places of an edge that are sewn: of a part of it as many as are told. */
function sewnOf({ edge, all }: Part): EdgePlaces {
  if (edge?.without !== undefined) return { are: all.are, counts: all.counts.map((count) => count - edge.without!) }
  if (edge?.part) return { are: all.are, counts: edge.count === undefined ? [] : [edge.count] }
  return edge?.count !== undefined && all.counts.includes(edge.count) ? { are: all.are, counts: [edge.count] } : all
}

/** `right side of Front (12 row-ends)`: the number that the seam itself tells of an edge. */
function saysOther(part: Part): SeamWords | undefined {
  const { piece, edge, all } = part
  const { count, rows } = edge ?? {}
  const lastRow = Math.max(0, ...piece.rows.map(({ number }) => number ?? 0))
  if (rows && lastRow > 0 && rows[1] > lastRow) return { edges: where(piece, all), message: `the seam says rows ${rows[0]} to ${rows[1]}, but the last row of ${piece.name} is row ${lastRow}`, short: `no row ${rows[1]}` }
  if (count === undefined || all.counts.length === 0 || (edge?.part ? count <= Math.max(...all.counts) : all.counts.includes(count))) return undefined
  const nearest = all.counts.toSorted((a, b) => Math.abs(a - count) - Math.abs(b - count))[0]!
  return { edges: where(piece, all), message: `the seam says ${counted(count, all.are)}, but ${told(part, all, nearest)}`, short: `${count} against ${nearest}` }
}

/** A fabric gives: a seam takes up a third of a length of rows that is told in stitches (common practice, no source). */
const gives = 1.5

/** Two whole edges of which no stretch is as long as one of the other: stitches to stitches by their number, row-ends by the stitches that they are usually worth. */
function lengthsApart(one: readonly [PieceFacts, EdgePlaces], other: readonly [PieceFacts, EdgePlaces]): boolean {
  const slack = one[1].are === 'stitch' && other[1].are === 'stitch' ? 1 : gives
  const [ours, theirs] = [lengthsOf(...one), lengthsOf(...other)]
  return ours.every(([least, most]) => theirs.every(([from, to]) => most * slack < from || to * slack < least))
}

/** How long each stretch may be, in stitches. */
function lengthsOf({ rows, lexicon }: PieceFacts, { are, counts }: EdgePlaces): readonly (readonly [number, number])[] {
  if (are === 'stitch') return counts.map((count) => [count, count])
  const rates = rows.flatMap(({ kinds }) => Object.keys(kinds).flatMap((stitch) => rowEndRates(stitch, lexicon)))
  return counts.map((count) => [count * Math.min(1, ...rates), count * Math.max(1, ...rates)])
}

/** Which numbers of places may meet. Two sides with as many steps meet from end to end; of others a stretch may be sewn alone. */
function pairsOf(ours: EdgePlaces, theirs: EdgePlaces): readonly (readonly [number, number])[] {
  if (ours.stepped && ours.stepped.stretches === theirs.stepped?.stretches) {
    const there = theirs.stepped.counts
    return ours.stepped.counts.map((count, index) => [count, there[index]!])
  }
  return ours.counts.flatMap((a) => theirs.counts.map((b) => [a, b] as const))
}

type Edge = readonly [PieceFacts, EdgePlaces, number]

/** Which sides of row-ends do not match, and by how much. Other edges have their own totals. */
function rowsOff(one: Edge, other: Edge, eased: number): SeamWords['off'] {
  const side = ([{ name }, { are }, count]: Edge, against: number): readonly string[] => (are === 'row-end' ? [`${name} ${count}, ${count - against}`] : [])
  const more = one[2] > other[2] ? eased : -eased
  return [...side(one, other[2] + more), ...side(other, one[2] - more)]
}

/** Of a part of an edge so many are joined; a whole edge has so many. */
function joined(part: Part, places: EdgePlaces, count: number): string {
  const { piece, edge } = part
  return edge?.part ? `${counted(count, places.are)} of the ${edgeNames[edge.edge]} of ${piece.name} ${count === 1 ? 'is' : 'are'} joined` : told(part, places, count)
}

function told({ piece: { name }, edge }: Part, { are }: EdgePlaces, count: number): string {
  return `${edge === undefined ? name : `the ${edgeNames[edge.edge]} of ${edge.under === undefined ? '' : `the ${edge.under} of `}${name}${edge.below ? ' below the armhole' : ''}`} ${edge?.edge === 'added' ? 'have' : 'has'} ${counted(count, are)}`
}

/** Row-ends are as many as the rows; stitches are those of the last row's total. */
function where({ rows }: PieceFacts, { are }: EdgePlaces): readonly Label[] {
  const last = rows.at(-1)
  if (!last) return []
  return are === 'row-end' ? [{ span: last.written.label, text: 'its last row' }] : last.says ? [{ span: last.says.span, text: 'this edge' }] : []
}
