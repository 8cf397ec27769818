import type { Instruction } from '../notation/syntax.ts'
import type { Target } from '../notation/target.ts'
import { endsOf, handOf } from './laid-row.ts'
import { wordsOf } from './joined-above.ts'
import { lastRow } from './laid-together.ts'
import type { EdgeWords } from './named-edges.ts'
import type { PieceRun, PieceToWork } from './piece-run.ts'
import type { WrittenEntry } from './real-rows.ts'
import type { ToldSeam } from './sewn-rings.ts'
import type { WorkedRow } from './worked-row.ts'

type Joined = NonNullable<WorkedRow['joined']>

/**
 * The last of the pieces that were worked, where it is joined to another at the ends of its rows as it grows: it is sewn to it there, its side to the
 * edge that is named, right sides up.
 * Nothing where its rows are joined to more than one edge, or at both ends.
 */
export function grownSeam(runs: readonly PieceRun[], { entries }: PieceToWork, indexOf: (name: string) => number): readonly ToldSeam[] {
  const piece = runs.length - 1
  const run = runs[piece]!
  const joins = run.rows.flatMap(({ joined }) => joined ?? [])
  const [first] = joins
  const hands = new Set(run.rows.flatMap((row) => (row.joined ? (handAtEnd(run, row) ?? []) : [])))
  const [hand] = hands
  const other = first ? indexOf(first.piece) : -1
  if (!first || !hand || hands.size > 1 || joins.length < 2 || other < 0 || joins.some((join) => join.piece !== first.piece || join.edge !== first.edge)) return []
  const edge = edgeOf({ ...handOfStart(entries[0]), ...first }, hand)
  const places = joins.reduce((sum, { count }) => sum + count, 0)
  const rows = runs[other]!.laid.length
  // `sl st in each of the row-ends of Rows 3 and 4 of Strip 1`: the new strip begins farther up, and the rows below stay free.
  if (first.edge !== 'side' || places >= rows) return [[{ piece, words: { edge: hand } }, { piece: other, words: edge }]]
  const { row = 1 } = first
  const from = row + places - 1 <= rows ? row : Math.max(1, row - places + 1)
  const own = run.rows.find(({ joined }) => joined)?.number ?? 1
  const part = (of: EdgeWords, start: number): EdgeWords => ({ ...of, part: true, rows: [start, start + places - 1] })
  return [[{ piece, words: part({ edge: hand }, own) }, { piece: other, words: part(edge, from) }]]
}

/**
 * A strip that is joined to another as it grows begins beside it, on chains of its own: `join yarn in the row-end of Row 1 of Strip A, ch 9, sc in
 * 2nd ch from hook`. It lies on nothing.
 */
export function grownApart(pieces: readonly PieceToWork[]): readonly PieceToWork[] {
  return pieces.map((piece) => {
    const [first] = piece.entries
    if (piece.on === undefined || !first || !beginsOnChains(first, pieces[piece.on]!) || !piece.entries.some(({ read }) => read.items.some(isJoined))) return piece
    const { on: _, ...apart } = piece
    return { ...apart, entries: [withoutStart(first), ...piece.entries.slice(1)] }
  })
}

const isJoined = (item: Instruction): boolean => item.node === 'join' && item.along !== undefined

const withoutStart = (entry: WrittenEntry): WrittenEntry => ({ ...entry, read: { ...entry.read, items: entry.read.items.filter(({ node }) => node !== 'start') } })

function beginsOnChains(entry: WrittenEntry, body: PieceToWork): boolean {
  const words = wordsOf(entry).filter(({ node }) => node !== 'aside')
  const [start, chain, work] = words
  return start?.node === 'start' && isThere(start.target, body) && chain?.node === 'chain' && work?.node === 'work' && work.target?.walk === 'from-hook'
}

/** Stitches are those of its last row. */
function isThere({ walk, ofRow, thing }: Target, body: PieceToWork): boolean {
  const last = lastRow(body)
  return ofRow === undefined || (thing?.kind === 'stitch' && walk !== 'edge' ? ofRow === last : ofRow <= last)
}

/** Side by side with the right sides up the left side of one meets the right side of the other. */
function edgeOf({ edge, hand }: Joined, grown: 'left' | 'right'): EdgeWords {
  if (edge === 'top') return { edge: 'top' }
  return { edge: edge === 'underside' ? 'bottom' : (hand ?? (grown === 'left' ? 'right' : 'left')) }
}

/** `join yarn in the row-end of Row 1 of Strip A at the right-hand edge` */
function handOfStart(entry: WrittenEntry | undefined): Pick<Joined, 'hand'> {
  const start = entry && wordsOf(entry).find(({ node }) => node === 'start')
  return start?.node === 'start' && start.target.hand ? { hand: start.target.hand } : {}
}

function handAtEnd({ laid }: PieceRun, { number }: WorkedRow): 'left' | 'right' | undefined {
  const row = laid.find((one) => one.row.number === number)?.row
  return row && handOf(row, endsOf(row.places)[1])
}
