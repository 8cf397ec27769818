import type { OtherEdge } from './after-slip.ts'
import type { BorderEdge } from './border-edge.ts'
import type { Held } from './held.ts'
import type { JoinedGrid, JoinedStarts } from './joined-grid.ts'
import type { Lexicon } from './lexicon.ts'
import type { ReadingPoint } from './noted.ts'
import type { OlderRow } from './older-row.ts'
import type { Outline } from './outline.ts'
import type { FabricPart } from './parts.ts'
import type { Edge, FinishedEdge } from './place.ts'
import type { OtherPieces, WrittenEntry } from './real-rows.ts'
import type { Conventions } from './conventions.ts'
import type { Laid } from './whole-fabric.ts'
import type { WorkedRow } from './worked-row.ts'
import type { YarnAtEnd } from './yarn-at-end.ts'

/** A piece as it is handed to be worked. */
export interface PieceToWork {
  readonly name: string
  /** Of another copy of a piece: the name by which words call both. */
  readonly called?: string
  readonly entries: readonly WrittenEntry[]
  readonly lexicon: Lexicon
  readonly size: number
  readonly sizeNames: readonly string[]
  readonly conventions: Conventions
  /** Readings fixed for the whole pattern. */
  readonly readings: ReadonlyMap<string, number>
  /** What the piece begins on: nothing, or the edge of the piece that it goes on from. */
  readonly start?: Edge
  /** Other edges that it may begin on; of a joined grid none at all where its motifs do not tell. */
  readonly otherStarts?: readonly OtherEdge[]
  readonly startUnknown?: boolean
  /** Edges round the motifs that the piece that it goes on from may be joined to. */
  readonly joinedStarts?: (wants: number) => JoinedStarts
  /** What its last words say of the yarn; left out where they say nothing. */
  readonly yarnAtEnd?: YarnAtEnd
  /** The pattern tells of folding or sewing: an edge may be closed that no row works along. */
  readonly sewn?: boolean
  /** A seam of it is told in words that are not understood: how it lies then is not known. */
  readonly seamUnread?: boolean
  /** Of a border through two pieces: the last row of the smaller one, that lies on the other. */
  readonly laidOn?: number
  /** How many of it are made. */
  readonly make?: number
  /** Index of the piece that it goes on from, or the grid. */
  readonly on?: number
  readonly onGrid?: JoinedGrid
  /** It is joined anew beside another piece on the same row: what it leaves is that of the next one, or lies between them. */
  readonly beside?: 'next' | 'last'
  /**
   * The piece that it goes on from, in small letters, and its outline; that of all that hangs together with it, if there is more, without and with its seams;
   * the names of those pieces, and whether a row of any of them does not come out; how many rows it has, and the
   * number of its last one.
   */
  readonly onFabric?: { readonly name?: string; readonly outline: Outline; readonly whole: readonly Outline[]; readonly sewn: () => readonly Outline[]; readonly names: ReadonlySet<string>; readonly copies?: number; readonly doubt: boolean; readonly rows: number; readonly below?: number; readonly sound: boolean; readonly side?: 'RS' | 'WS'; readonly rowsBefore: ReadonlyMap<number, OlderRow>; readonly turnsAfter: boolean; readonly parts?: readonly FabricPart[] }
  /** Rows of which later pieces on this one take up what is left. */
  readonly takenUpLater?: ReadonlySet<number>
  /** Edges that the pieces before it ended with. */
  readonly pieceEdges?: ReadonlyMap<string, FinishedEdge>
  /** Written rows of the whole pattern that do not come out: a piece that copies them is wrong with them. */
  readonly wrong?: Set<WrittenEntry>
  /** Stitches of the whole pattern that wait to be taken up. */
  readonly held?: Held[]
  /** Rows of the other pieces: for `as for Front`. */
  readonly others?: OtherPieces
  /** Stitches that may still be worked in the pattern. */
  readonly room?: number
}

/** A piece when it is worked. */
export interface PieceRun {
  readonly rows: readonly WorkedRow[]
  /** Conventions that the rows left open and that made a difference to how they were worked. */
  readonly open: readonly ReadingPoint[]
  /** Rows that did not come out. */
  readonly slips: number
  /** Stitches worked. */
  readonly stitches: number
  /** What the last row leaves to go on from. */
  readonly edge: Edge
  /** Its last row says at its end that the work is turned. */
  readonly turnsAfter: boolean
  /** Its outline, and the rows that it laid itself. */
  readonly outline: Outline
  readonly laid: readonly Laid[]
  /** Parts under headings that it ends in, such as straps, where there are more than one. */
  readonly parts?: readonly FabricPart[]
  /** Index of the piece that it goes on from. */
  readonly on?: number
  /** Number of its last row. */
  readonly number?: number
  /** Its rows by number, for rows that come back to them. */
  readonly rowsBefore: ReadonlyMap<number, OlderRow>
  /** The outline that the last border went round, and the side of the piece that it was worked on. */
  readonly border?: BorderEdge
  readonly side?: 'RS' | 'WS'
  /** All rows add up, here and in the piece that it goes on from. */
  readonly sound: boolean
  /** Its sides are in doubt. */
  readonly gap: boolean
  /** Rows in it, those of the piece that it goes on from included. */
  readonly rowsInAll: number
  /** The pattern is too large; the rows up to there are given. */
  readonly tooLarge: boolean
}
