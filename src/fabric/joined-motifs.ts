import { gridInWords, type GridInWords } from '../notation/grid-in-words.ts'
import { sameLength, type JoinedStarts } from './joined-grid.ts'
import { motifEdge, type MotifEdge } from './motif-sides.ts'
import { edgesBehind, edgesRound, outsideOfGrid, outsideOfRow, type OuterSide } from './outer-sides.ts'
import type { WrittenEntry } from './real-rows.ts'
import type { PieceRun, PieceToWork } from './piece-run.ts'

/** More motifs than this are not laid out in every way that their number allows: such a blanket is told as a grid. */
const mostMotifs = 60
/** Of the ways in which a number of motifs may lie, those whose edge is nearest to what a border asks for. */
const mostLayouts = 3

const none: JoinedStarts = { edges: [], sound: true }

/**
 * Edges round motifs that were joined, where a border goes on from one of them and neither a seam nor a name tells how they lie: all
 * that the motif is alike to belong to it, each as often as it is made. `wants` is how many places the border asks for, by its words.
 */
export function joinedEdges(runs: readonly PieceRun[], pieces: readonly PieceToWork[], border: PieceToWork, wants: number): JoinedStarts {
  const own = border.on === undefined ? motifBefore(runs, pieces, border) : runs[border.on]
  if (!own || wants === 0) return none
  const edge = motifEdge(own)
  if (edge.corners.length < 3) return none
  // A motif that does not come out may be one of those that are joined.
  const sound = runs.every((run) => run.sound || !run.edge.round)
  const family = runs.flatMap((run, index) => {
    const there = motifEdge(run)
    return run === own || alike(there, edge) && !pieces.some(({ on }, piece) => on === index && piece < runs.length) ? [{ edge: there, make: pieces[index]!.make ?? 1 }] : []
  })
  const motif = unjoined(family.find(({ edge: { sides } }) => sides.every(({ joined }) => !joined))?.edge ?? edge)
  if (!motif) return { edges: [], sound }
  const motifs = family.reduce((sum, { make }) => sum + make, 0) / (border.make ?? 1)
  const off = ({ outer }: Layout): number => Math.min(...[0, 1, 2].map((atJoin) => Math.abs(outer.reduce((sum, { side, met }) => sum + motif.sides[side]!.places.length + (met ? atJoin : 1), 0) - wants)))
  const layouts = layoutsOf(motif, motifs, border.entries).toSorted((one, two) => off(one) - off(two)).slice(0, mostLayouts)
  const edges = layouts.flatMap(({ outer, words }) => begunAnywhere(outer, motif).flatMap((from) => [...edgesRound(motif, from), ...edgesBehind(motif, from)]
    .map((joined) => ({ edge: joined.edge, words: `${words}: ${joined.words}` }))))
  return { edges, sound }
}

/** `Border: join yarn in the corner sp at the end of a long side`: a piece that goes on from none, and begins at a place of what is there, goes round the last motifs. */
function motifBefore(runs: readonly PieceRun[], pieces: readonly PieceToWork[], { entries, onGrid }: PieceToWork): PieceRun | undefined {
  if (onGrid || !entries[0]?.read.items.some(({ node }) => node === 'start')) return undefined
  return runs.findLast((run, index) => run.edge.round && motifEdge(run).corners.length > 2 && !pieces.some(({ on }) => on === index))
}

/** As many corners, and free sides of the same lengths. */
function alike(one: MotifEdge, other: MotifEdge): boolean {
  if (one.corners.length < 3 || one.corners.length !== other.corners.length) return false
  const free = one.sides.filter(({ joined }) => !joined)
  return free.length > 0 && free.every((side) => other.sides.some((there) => sameLength(side, there)))
}

/** A motif of which no side is joined; where all its free sides are of one length, one of them stands for those that are. */
function unjoined({ corners, sides }: MotifEdge): MotifEdge | undefined {
  const free = sides.filter(({ joined }) => !joined)
  if (corners.length < 3 || free.length === 0) return undefined
  const regular = free.every((side) => sameLength(side, free[0]!))
  const across = corners.length === 4 && sameLength(sides[0]!, sides[2]!) && sameLength(sides[1]!, sides[3]!)
  if (free.length === sides.length) return regular || across ? { corners, sides } : undefined
  const corner = corners.find(({ joined }) => !joined) ?? corners[0]!
  return regular ? { corners: corners.map(() => corner), sides: sides.map(() => free[0]!) } : undefined
}

interface Layout {
  readonly outer: readonly OuterSide[]
  readonly words: string
}

/** Ways in which so many motifs lie side to side. */
function layoutsOf({ corners, sides }: MotifEdge, motifs: number, entries: readonly WrittenEntry[]): readonly Layout[] {
  const said = gridSaid(entries)
  const known = said && (motifs === 1 || said.across * said.down === motifs) ? said : undefined
  const number = known ? known.across * known.down : motifs
  if (!Number.isInteger(number) || number < 2 || number > mostMotifs) return []
  if (corners.length !== 4) return number === 2 || corners.length % 2 === 0 && (!known || Math.min(known.across, known.down) === 1) ? [{ outer: outsideOfRow(corners.length, number), words: `${number} motifs are joined to a row` }] : []
  const oblong = !sameLength(sides[0]!, sides[1]!)
  const grids = known ? [[known.across, known.down]] : Array.from({ length: Math.floor(Math.sqrt(number)) }, (_, index) => [index + 1, number / (index + 1)]).filter(([, down]) => Number.isInteger(down))
  return grids.flatMap(([across, down]) => [[across, down], ...(oblong && across !== down ? [[down, across]] : [])]).map(([first, second]) => ({
    outer: outsideOfGrid(first!, second!), words: `${number} motifs are joined, ${first} by ${second}`,
  }))
}

/** `(2 squares wide, 3 squares long)`, `the strip of six motifs`: what the border's words and its heading say. */
function gridSaid(entries: readonly WrittenEntry[]): GridInWords | undefined {
  const words = entries.flatMap(({ heading, read }) => [heading ?? '', ...read.items.map((item) => (item.node === 'aside' ? (item.words ?? '') : ''))])
  return words.map(gridInWords).find((grid) => grid !== undefined)
}

/** A border begins at a corner, or where the last motif of a row meets the one before it: each in as many ways as differ. */
function begunAnywhere(outer: readonly OuterSide[], { sides }: MotifEdge): readonly (readonly OuterSide[])[] {
  const seen = new Set<string>()
  return outer.flatMap(({ met }, index) => {
    const from = [...outer.slice(index), ...outer.slice(0, index)]
    const shape = from.map(({ side, met: meets }) => `${meets ? '-' : '+'}${sides[side]!.stitches}`).join('')
    if (met && outer[(index + 1) % outer.length]!.met || seen.has(shape)) return []
    seen.add(shape)
    return [from]
  })
}
