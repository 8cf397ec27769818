import type { WrittenEntry } from '../fabric/real-rows.ts'
import type { Lexicon } from '../fabric/lexicon.ts'
import type { EdgeWords } from '../fabric/named-edges.ts'
import type { SeamEdge } from '../fabric/piece-edges.ts'
import type { SplitConvention } from '../fabric/work-in-conventions.ts'
import type { ReadingPoint } from '../fabric/noted.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import type { Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'

/** A worked row and what stands around it. */
export interface RowFacts {
  readonly source: Source
  readonly row: WorkedRow
  readonly before: WorkedRow | undefined
  /** The row that it is worked on: the one before it, or an older one. */
  readonly below: WorkedRow | undefined
  readonly lexicon: Lexicon
}

/** A piece as it is written and as it was worked, in one size. */
export interface PieceFacts {
  readonly source: Source
  readonly name: string
  readonly size: number
  readonly sizes: readonly string[]
  readonly entries: readonly WrittenEntry[]
  readonly rows: readonly WorkedRow[]
  readonly lexicon: Lexicon
  readonly tooLarge: boolean
  /** How many of it are made. */
  readonly make: number
  /** Its two sides are to be alike, as the front-matter says of the piece at this place. */
  readonly symmetrical?: Span
  /** The edge that a seam meets when it is done. */
  readonly edge: SeamEdge
  /** Name of the piece that the fabric began with which it is worked on. */
  readonly fabric: string
  /** All its rows add up, and those of the piece that it goes on from. */
  readonly sound: boolean
}

/** Stitches that wait when the pattern is done. */
export interface Waiting {
  readonly size: number
  readonly stitches: number
  readonly span: Span
}

/** Pieces that are joined, by their names. */
export interface SeamFacts {
  readonly join: readonly string[]
  /** By size, or once for all of them: of each piece the edge that is named. Left out where none is. */
  readonly edges?: readonly (readonly (EdgeWords | undefined)[])[] | undefined
  readonly ease: boolean
  /** Told in a row: a piece that is longer may stand out beyond the other, as a flap does. */
  readonly within?: boolean | undefined
  /** How many stitches are eased in, by size, where the seam's words say so. */
  readonly eases?: readonly number[] | undefined
  /** How the sides lie, where it is told. */
  readonly sides?: 'together' | 'apart' | 'up' | undefined
  readonly grid?: { readonly across: number; readonly down: number } | undefined
  readonly span: Span
}

/** The whole pattern: for checks that look across its pieces. */
export interface PatternFacts {
  readonly source: Source
  readonly pieces: readonly PieceFacts[]
  readonly lexicon: Lexicon
  /** Yarns that the materials list; undefined when there is no list. */
  readonly yarns: readonly { readonly letter: string; readonly span: Span }[] | undefined
  readonly seams: readonly SeamFacts[]
  /** Where the front-matter says the terms. */
  readonly termsSpan?: Span
  /** Texts outside the rows, each a section of the body, a remark between rows or a sentence of the front-matter. */
  readonly prose: readonly Span[]
  /** How many legs the pattern's own special stitches have, where their definitions say it. */
  readonly definitions: readonly { readonly words: readonly string[]; readonly legs: number }[]
  /** Special stitches that the pattern defines. */
  readonly defined: ReadonlySet<string>
  /** Stitches that were passed over and that no row takes up, by size. */
  readonly waiting: readonly Waiting[]
  /** Conventions of which some rows fit one way and some the other. */
  readonly split: readonly SplitConvention[]
  /** Conventions that nothing states and that change the counts. */
  readonly undecided: readonly ReadingPoint[]
}
