import type { ReadingPoint } from './noted.ts'
import { undersideOf } from './piece-edges.ts'
import type { PieceRun, PieceToWork } from './piece-run.ts'
import { alongEdges } from './edge-for.ts'
import type { Held } from './held.ts'
import { grownApart, grownSeam } from './grown-seams.ts'
import { gridEdges, type JoinedGrid, type JoinedStarts } from './joined-grid.ts'
import { joinedEdges } from './joined-motifs.ts'
import type { JoinedEdge } from './outer-sides.ts'
import { Outline } from './outline.ts'
import { rowsNamed } from './part-starts.ts'
import { beginsBehind, joinsInLeft, joinedAbove, skipsFirst, wordsOf } from './joined-above.ts'
import type { Edge, FinishedEdge } from './place.ts'
import { realRows, type OtherPieces, type RealRow, type WrittenEntry } from './real-rows.ts'
import { onTheLarger } from './laid-together.ts'
import { whereTheYarnIs } from './where-the-yarn-is.ts'
import type { WorkedRow } from './worked-row.ts'
import { mostStitches } from './limits.ts'
import { Fabrics, type Seam } from './whole-fabric.ts'
import type { ToldSeam } from './sewn-rings.ts'
import { workPiece } from './work-piece.ts'

/** All pieces of a pattern in one size, worked in the conventions that fit them best. */
export interface WorkedTogether {
  readonly runs: readonly PieceRun[]
  /** Stitches that were passed over to wait, taken up since or not. */
  readonly held: readonly Held[]
  /** Conventions that nothing states and that had to be inferred, in words. */
  readonly inferred: readonly string[]
  /** Some rows come out only one way and some only the other: no one convention fits the pattern. */
  readonly split: readonly SplitConvention[]
  /** Nothing states them, and the rows come out either way with different counts. */
  readonly undecided: readonly ReadingPoint[]
}

/** Seams of a pattern: of pieces by their tops, and of edges that are told. */
export interface Seams {
  readonly tops: readonly Seam[]
  readonly told: readonly ToldSeam[]
}

const noSeams: Seams = { tops: [], told: [] }

/** A convention on which the rows of a pattern are of two minds. */
export interface SplitConvention {
  /** What each way means, in words. */
  readonly words: readonly string[]
  /** A row that comes out only the first way, and one that comes out only the second. */
  readonly rows: readonly [WorkedRow, WorkedRow]
}

/**
 * Works pieces in the usual reading of what their rows leave open; where that does not come out, in every other one, and keeps the
 * one with the fewest slips. One convention must fit the whole pattern.
 */
export function workInConventions(pieces: readonly PieceToWork[], seams: Seams = noSeams): WorkedTogether {
  const work = (readings: ReadonlyMap<string, number>): Runs => workAll(pieces, seams, readings)
  const usual = work(new Map())
  const minds = chainMinds(usual)
  if (minds === 'both' && pieces[0]?.conventions.chainsCount === undefined) {
    // One convention must hold for the whole pattern: chains are no stitches unless every total says so.
    return workInConventions(pieces.map((piece) => ({ ...piece, conventions: { ...piece.conventions, chainsCount: false } })), seams)
  }
  const names = [...new Set(usual.flatMap(({ open }) => open.map(({ name }) => name)))].slice(0, 5)
  if (names.length === 0) return { runs: usual, held: usual.held, inferred: [], split: [], undecided: [] }
  const points = new Map(usual.flatMap(({ open }) => open).toReversed().map((point) => [point.name, point] as const))
  if (slipsOf(usual) === 0) return { runs: usual, held: usual.held, inferred: [], split: [], undecided: alsoFit(names, usual, work).map((name) => points.get(name)!) }
  let best = { runs: usual, slips: slipsOf(usual), readings: new Map<string, number>() }
  for (const readings of assignments(names)) {
    const runs = work(readings)
    const slips = slipsOf(runs)
    if (slips < best.slips) best = { runs, slips, readings }
    if (slips === 0) break
  }
  const inferred = [...best.readings].filter(([, way]) => way > 0).map(([name, way]) => points.get(name)?.words[way] ?? name)
  return { runs: best.runs, held: best.runs.held, inferred, split: best.slips === 0 ? [] : splits(points, usual, work), undecided: [] }
}

/**
 * Conventions of which one way fits some rows and the other way others. One row against all the rest is likelier a slip of its own,
 * so at least two must stand on either side.
 */
function splits(points: ReadonlyMap<string, ReadingPoint>, usual: readonly PieceRun[], work: (readings: ReadonlyMap<string, number>) => readonly PieceRun[]): readonly SplitConvention[] {
  return [...points.values()].filter(({ name }) => name.startsWith('turning-chain ')).flatMap((point) => {
    const other = work(new Map([[point.name, 1]]))
    const onlyUsual: WorkedRow[] = []
    const onlyOther: WorkedRow[] = []
    for (const [piece, { rows }] of usual.entries()) {
      for (const [index, row] of rows.entries()) {
        const there = other[piece]?.rows[index]
        if (!there || !row.says || row.makes === there.makes && row.verdict === there.verdict) continue
        if (row.verdict === 'adds-up' && there.verdict !== 'adds-up') onlyUsual.push(row)
        if (row.verdict !== 'adds-up' && there.verdict === 'adds-up') onlyOther.push(there)
      }
    }
    if (onlyUsual.length < 2 || onlyOther.length < 2) return []
    return [{ words: point.words, rows: [onlyUsual[0]!, onlyOther[0]!] }]
  })
}

/** Whether the totals count chains as stitches: some rows may fit only with them, others only without. */
function chainMinds(runs: readonly PieceRun[]): 'both' | 'one' {
  let counted = false
  let not = false
  for (const row of runs.flatMap(({ rows }) => rows)) {
    if (row.says?.count === undefined || row.verdict !== 'adds-up' || Object.keys(row.spaces).length === 0) continue
    if (row.assumed.includes('each chain counts as a stitch')) counted = true
    else not = true
  }
  return counted && not ? 'both' : 'one'
}

/** The pieces, and the stitches of all of them that waited. */
type Runs = readonly PieceRun[] & { readonly held: readonly Held[] }

/** A piece that goes on from another begins on its edge. */
function workAll(written: readonly PieceToWork[], { tops: seams, told: inWords }: Seams, readings: ReadonlyMap<string, number>): Runs {
  const onTheirOwn = whereTheYarnIs(onTheLarger(written))
  const pieces = grownApart(onTheirOwn)
  const runs: PieceRun[] = []
  const rows = new Map<string, readonly RealRow[]>()
  const pieceEdges = new Map<string, FinishedEdge>()
  const held: Held[] = []
  const fabrics = new Fabrics()
  const told = [...inWords]
  const wrong = new Set<WrittenEntry>()
  let room = pieces[0]?.room ?? mostStitches
  for (const [index, piece] of pieces.entries()) {
    const below = piece.on === undefined ? undefined : runs[piece.on]
    const others: OtherPieces = (name) => rows.get(name.toLowerCase())
    rows.set(piece.name.toLowerCase(), realRows(piece.entries, piece.size, piece.sizeNames, 100_000, others))
    const hanging = below ? fabrics.hangingWith(piece.on!) : []
    const onFabric = below && { ...(pieces[piece.on!]!.make !== undefined && { copies: pieces[piece.on!]!.make! }), name: pieces[piece.on!]!.name.toLowerCase(), outline: below.outline, ...seenFrom(fabrics, piece.on!, { tops: seams, told }), names: new Set(hanging.map((one) => (pieces[one]!.called ?? pieces[one]!.name).toLowerCase())), doubt: [...hanging, ...fabrics.sewnTo(piece.on!, seams), ...fabrics.reachedFrom(piece.on!, told)].some((one) => !runs[one]!.sound || runs[one]!.gap || pieces[one]!.seamUnread), rows: below.rowsInAll, ...(below.number !== undefined && { below: below.number }), sound: below.sound, rowsBefore: below.rowsBefore, turnsAfter: below.turnsAfter, ...(below.side && { side: below.side }), ...(below.parts && { parts: below.parts }) }
    const run = workPiece({ ...piece, takenUpLater: takenUpLater(piece, pieces), others, held, wrong, pieceEdges: new Map(pieceEdges), readings, room, joinedStarts: (wants: number) => withSewn(joinedEdges(runs, pieces, piece, wants), fabrics.sewnBorders(piece.on, told)), ...(piece.onGrid && beginOnGrid(runs, piece.onGrid)), ...(below && beginOn(below, fabrics.beside(piece.on!), piece, pieces)), ...(onFabric && { onFabric }) })
    room = Math.max(0, room - run.stitches)
    runs.push(run)
    fabrics.add(run, piece.on)
    fabrics.useUp(told)
    told.push(...grownSeam(runs, onTheirOwn[runs.length - 1]!, (name) => pieces.findIndex((one) => one.name.toLowerCase() === name.toLowerCase())))
    const edge: FinishedEdge = { places: run.edge.places, foundation: () => undersideOf(run), outline: () => fabrics.wholeOf(index), copies: piece.make ?? 1, sound: run.sound }
    const first = piece.called === undefined ? undefined : pieceEdges.get(piece.called.toLowerCase())
    if (first) pieceEdges.set(piece.called!.toLowerCase(), { ...first, copies: first.copies + 1, others: [...(first.others ?? []), edge] })
    else pieceEdges.set(piece.name.toLowerCase(), edge)
  }
  return Object.assign(runs, { held })
}

/** Borders that are sewn as seams tell, before motifs in the ways that they may lie. */
const withSewn = (joined: JoinedStarts, sewn: readonly JoinedEdge[]): JoinedStarts => (sewn.length > 0 ? { ...joined, edges: [...sewn, ...joined.edges] } : joined)

/** What hangs together with a piece, and what is left open of it when it is sewn. */
function seenFrom(fabrics: Fabrics, on: number, { tops, told }: Seams): { readonly whole: readonly Outline[]; readonly sewn: () => readonly Outline[] } {
  const { whole, sewn } = fabrics.seenFrom(on, tops)
  // Most rows come out on their own piece, and what sewing leaves open is not looked for.
  let all: readonly Outline[] | undefined
  return { whole, sewn: () => (all ??= [...sewn, ...fabrics.sewnAsTold(on, told)]) }
}

/** On the edge that a piece ended with. Beside another piece on the same row it begins there, or where its words fit what is left. */
function beginOn({ edge }: PieceRun, beside: readonly Edge[], piece: PieceToWork, pieces: readonly PieceToWork[]): Pick<PieceToWork, 'start' | 'otherStarts' | 'beside'> {
  const others = beside.map((run) => ({ edge: run, words: 'the row begins beside the piece that is worked on the same row' }))
  const [first] = piece.entries
  const more = pieces.slice(pieces.indexOf(piece) + 1).some(({ on, entries }) => on === piece.on && entries[0] && joinedAbove(entries[0]) && !alongEdges(wordsOf(entries[0])))
  // `in the next free sc of Row 4 of Band`, of which there are several: each leaves the rest to the next.
  const next = first && joinsInLeft(wordsOf(first)) && pieces.slice(pieces.indexOf(piece) + 1).some(({ on, entries }) => on === piece.on && entries[0] && joinsInLeft(wordsOf(entries[0])))
  // `skip 18 sts after the first flap`: the words tell how many lie between.
  if (others.length > 0 && first && beginsBehind(wordsOf(first))) return { start: others[0]!.edge, otherStarts: others.slice(1) }
  if (others.length > 0 && first && skipsFirst(wordsOf(first))) return { start: others[0]!.edge, otherStarts: [...others.slice(1), { edge, words: 'the stitches are counted from the beginning of the row' }] }
  if (others.length > 0 && first && joinsInLeft(wordsOf(first))) return { start: others[0]!.edge, otherStarts: [...others.slice(1), { edge, words: 'what is left is told by where it lies on the row' }], ...(next && { beside: 'next' }) }
  if (others.length > 0 && first && joinedAbove(first)) return { start: others[0]!.edge, otherStarts: others.slice(1), beside: more ? 'next' : 'last' }
  return { start: edge, otherStarts: others, ...(next && { beside: 'next' }) }
}

/** `Second shoulder: skip next 16 sts of row 23`: a row on row 23 that turns early leaves them for it. */
function takenUpLater(piece: PieceToWork, pieces: readonly PieceToWork[]): ReadonlySet<number> {
  const index = pieces.indexOf(piece)
  return new Set(pieces.slice(index + 1).filter(({ on }) => on === index).flatMap(({ entries }) => (entries[0] ? rowsNamed(wordsOf(entries[0])) : [])))
}

/** A border round joined motifs. */
function beginOnGrid(runs: readonly PieceRun[], grid: JoinedGrid): Pick<PieceToWork, 'start' | 'otherStarts' | 'startUnknown' | 'onFabric'> {
  const motifs = grid.pieces.flatMap((index) => runs[index] ?? [])
  const [usual, ...others] = gridEdges(motifs, grid)
  if (!usual) return { startUnknown: true }
  const fabric = { outline: new Outline(), whole: [], sewn: () => [], names: new Set<string>(), doubt: false, rows: 1, sound: motifs.every(({ sound }) => sound), rowsBefore: new Map(), turnsAfter: false }
  return { start: usual.edge, otherStarts: others, onFabric: fabric }
}

function slipsOf(runs: readonly PieceRun[]): number {
  return runs.reduce((sum, { slips }) => sum + slips, 0)
}

/** Every way to answer all the open questions, but the usual one. */
function assignments(names: readonly string[]): readonly Map<string, number>[] {
  return Array.from({ length: 2 ** names.length - 1 }, (_, bits) => new Map(names.map((name, index) => [name, ((bits + 1) >> index) & 1])))
}

/** Open questions whose other answer comes out as well, with other counts: the pattern must say which it means. */
function alsoFit(names: readonly string[], usual: readonly PieceRun[], work: (readings: ReadonlyMap<string, number>) => readonly PieceRun[]): readonly string[] {
  return names
    .filter((name) => name.startsWith('turning-chain '))
    .filter((name) => {
      const other = work(new Map([[name, 1]]))
      return slipsOf(other) === 0 && other.some((run, piece) => run.rows.some((row, index) => row.makes !== usual[piece]?.rows[index]?.makes))
    })
}
