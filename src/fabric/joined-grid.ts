import { motifEdge, type MotifSide } from './motif-sides.ts'
import { edgesRound, outsideOfGrid, type JoinedEdge } from './outer-sides.ts'
import type { PieceRun } from './piece-run.ts'

/** Motifs joined side to side: so many beside one another, so many below. */
export interface JoinedGrid {
  /** Indexes of their pieces. */
  readonly pieces: readonly number[]
  readonly across: number
  readonly down: number
}

/** What a border may go round, and whether all that may belong to it comes out. */
export interface JoinedStarts {
  readonly edges: readonly JoinedEdge[]
  readonly sound: boolean
}

/**
 * The edge all round a joined grid: sides of the outer motifs one after another, with a corner at each end and the joins between. None
 * where the motifs do not tell their corners, or are not all alike.
 */
export function gridEdges(motifs: readonly PieceRun[], { across, down }: JoinedGrid): readonly JoinedEdge[] {
  const [motif, ...others] = motifs.map(motifEdge)
  if (!motif || [motif, ...others].some(({ corners }) => corners.length !== 4) || others.some((other) => !alike(motif.sides, other.sides))) return []
  const { sides } = motif
  const oblong = !sameLength(sides[0]!, sides[1]!)
  if (!sameLength(sides[0]!, sides[2]!) || !sameLength(sides[1]!, sides[3]!) || oblong && others.length > 0) return []
  const ways = oblong && across !== down ? [[across, down], [down, across]] : [[across, down]]
  return ways.flatMap(([first, second]) => edgesRound(motif, outsideOfGrid(first!, second!)))
}

export const sameLength = (one: MotifSide, other: MotifSide): boolean => one.stitches === other.stitches && one.spaces === other.spaces

const alike = (one: readonly MotifSide[], other: readonly MotifSide[]): boolean => one.every((side, index) => sameLength(side, other[index]!))
