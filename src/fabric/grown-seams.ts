import { endsOf, handOf } from './laid-row.ts'
import type { EdgeWords } from './named-edges.ts'
import type { PieceRun } from './piece-run.ts'
import type { ToldSeam } from './sewn-rings.ts'
import type { WorkedRow } from './worked-row.ts'

type Joined = NonNullable<WorkedRow['joined']>

/**
 * A piece that is joined to another at the ends of its rows as it grows is sewn to it there: its side to the edge that is named, right sides up.
 * Nothing where its rows are joined to more than one edge, or at both ends.
 */
export function grownSeam(run: PieceRun, piece: number, indexOf: (name: string) => number): readonly ToldSeam[] {
  const joins = run.rows.flatMap(({ joined }) => joined ?? [])
  const [first] = joins
  const hands = new Set(run.rows.flatMap((row) => (row.joined ? (handAtEnd(run, row) ?? []) : [])))
  const [hand] = hands
  const other = first ? indexOf(first.piece) : -1
  if (!first || !hand || hands.size > 1 || joins.length < 2 || other < 0 || joins.some((join) => join.piece !== first.piece || join.edge !== first.edge)) return []
  return [[{ piece, words: { edge: hand } }, { piece: other, words: edgeOf(first, hand) }]]
}

/** Side by side with the right sides up the left side of one meets the right side of the other. */
function edgeOf({ edge, hand }: Joined, grown: 'left' | 'right'): EdgeWords {
  if (edge === 'top') return { edge: 'top' }
  return { edge: edge === 'underside' ? 'bottom' : (hand ?? (grown === 'left' ? 'right' : 'left')) }
}

function handAtEnd({ laid }: PieceRun, { number }: WorkedRow): 'left' | 'right' | undefined {
  const row = laid.find((one) => one.row.number === number)?.row
  return row && handOf(row, endsOf(row.places)[1])
}
