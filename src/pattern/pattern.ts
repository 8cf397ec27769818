import type { EdgeWords } from '../fabric/named-edges.ts'
import type { Root } from 'mdast'
import type { Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'

/** A pattern file, read and validated, with every place kept. Counts are not worked here. */
export interface Pattern {
  readonly source: Source
  /** Words for a file name and an address: `skiff-cushion`. From the file's name. */
  readonly slug: string
  readonly title: string
  readonly number?: number
  readonly summary?: string
  readonly designer?: string
  readonly version?: string
  /** ISO date, `2026-11-02`. */
  readonly date?: string
  readonly access: 'free' | 'sold'
  readonly terms: Terms
  readonly level?: 'basic' | 'easy' | 'intermediate' | 'complex'
  readonly madeFor?: 'home' | 'garment' | 'toy' | 'baby' | 'pet' | 'kitchen'
  /** Names of the sizes, smallest first. Empty for one size. */
  readonly sizes: readonly string[]
  /** Whether papers are printed for each size alone as well as for all of them. */
  readonly papers?: 'all sizes' | 'each size'
  readonly gauge?: Gauge
  readonly conventions: Conventions
  readonly materials?: Materials
  readonly stitches: readonly SpecialStitch[]
  readonly pieces: readonly Piece[]
  readonly seams: readonly Seam[]
  readonly finished: readonly Finished[]
  readonly licence?: string
  readonly contact?: string
  readonly errata?: string
  /** Who else had a part in it. */
  readonly credits?: readonly { readonly part: string; readonly by: string }[]
  readonly changes: readonly Change[]
  /** Warnings that the designer lets stand. */
  readonly accepted: readonly Acceptance[]
  /** The Markdown body, offsets counted in the whole file. */
  readonly body: Root
  /** Where a key of the front-matter stands, by path: `pieces.0.rows`, `materials.yarns.1.letter`. The span is the value's. */
  readonly places: ReadonlyMap<string, Span>
}

export type Terms = 'US' | 'UK'

/** So many stitches and rows over a distance, in a stitch, with a hook. */
export interface Gauge {
  /** The US word, whatever the terms of the pattern; as written where it is no stitch (`pattern stitch`). */
  readonly stitch?: string
  readonly sts: number
  readonly rows: number
  /** In centimetres. */
  readonly over: number
  /** In millimetres. */
  readonly hook?: number
  /** `as worked`, `washed and dried flat`. */
  readonly after?: string
}

/** What the pattern says about the things that its rows leave open. Undefined means that it does not say. */
export interface Conventions {
  /** By the stitch (US word) at whose height the turning chain stands: does it count as a stitch? */
  readonly turningChains: Readonly<Record<string, boolean>>
  readonly slipStitchesCount?: boolean
  /** Do chains count as stitches in totals? */
  readonly chainsCount?: boolean
}

export interface Materials {
  readonly yarns: readonly Yarn[]
  /** In millimetres. */
  readonly hooks: readonly number[]
  readonly notions: readonly Notion[]
}

export interface Yarn {
  readonly letter?: string
  readonly name?: string
  /** Yarn weight category 0 to 7 of the published table. */
  readonly weight?: number
  readonly fibre?: string
  readonly ball?: { readonly grams: number; readonly metres: number }
  readonly colour?: string
  readonly for?: string
  /** What to look for in another yarn. */
  readonly substitute?: string
  /** Grams, one number for each size; one number alone is for every size. */
  readonly needs: readonly number[]
}

export interface Notion {
  readonly what: string
  readonly count?: readonly number[]
  /** As written, one for each size: `200 g`. */
  readonly amount?: readonly string[]
  readonly for?: string
}

/** A stitch that this pattern defines. Numbers as in the stitch table. */
export interface SpecialStitch {
  readonly abbr: string
  readonly name?: string
  readonly worksOver: number
  readonly makes: number
  /** The US word of the stitch whose height it has. */
  readonly height?: string
  readonly how?: string
  readonly span: Span
}

/** One thing worked from one start. */
export interface Piece {
  readonly name: string
  readonly make: number
  readonly shape?: 'flat' | 'tube' | 'cone' | 'ball'
  readonly drawn?: 'as worked' | 'upside down'
  /** Its two sides are to be alike. */
  readonly symmetrical?: boolean
  /** The piece that it goes on from, on the same fabric. */
  readonly on?: string
  /** Others that it goes over, where they are told. */
  readonly onAlso?: readonly string[]
  /** It is another copy of the piece of that name. */
  readonly copyOf?: string
  readonly note?: string
  /** The text of the `|` block in the source, indentation included; the rows are read from the source itself. */
  readonly rows: Span
  readonly nameSpan: Span
}

export interface Seam {
  /** Names of pieces. */
  readonly join: readonly string[]
  /** Of each piece which of its copies is told, from 0. */
  readonly copies?: readonly (number | undefined)[]
  /** The words of an edge are not understood: how the pieces lie is not known. */
  readonly unread?: true
  /** By size, or once for all of them: of each piece the edge that is named. Left out where none is. */
  readonly edges?: readonly (readonly (EdgeWords | undefined)[])[]
  /** Motifs side by side, and below one another. */
  readonly grid?: { readonly across: number; readonly down: number }
  /** What a joined grid is called. */
  readonly name?: string
  readonly by?: string
  /** How the sides lie: laid together or apart, or edge to edge with the right sides up. */
  readonly sides?: 'together' | 'apart' | 'up'
  readonly ease?: boolean
  /** Told in a row: a piece that is longer may stand out beyond the other, as a flap does. */
  readonly within?: boolean
  /** How many stitches are eased in, by size, where its words say so. */
  readonly eases?: readonly number[]
  readonly span: Span
}

/** A finished measurement. Centimetres, one for each size. */
export interface Finished {
  readonly what: string
  readonly of?: string
  readonly is: readonly number[]
  readonly span: Span
}

/** A warning that the designer has looked at and lets stand. */
export interface Acceptance {
  /** As it is written: it may be no code at all. */
  readonly code: string
  readonly codeSpan: Span
  /** The row as it is named; undefined for a warning that stands in no row. */
  readonly row?: string
  readonly piece?: string
  readonly why: string
  readonly span: Span
}

export interface Change {
  readonly version: string
  readonly date: string
  readonly what: string
}
