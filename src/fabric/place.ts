import type { Chain } from '../notation/syntax.ts'
import type { Held } from './held.ts'
import type { Outline } from './outline.ts'
import type { BorderEdge } from './border-edge.ts'

/** Anything that a hook can go into. Places are never changed once they are made, so that rows can share them. */
export interface Place {
  /** A stitch's US word, `ch` (a chain of the foundation, or one chain named singly), `space`, `ring`, `gap`. */
  readonly kind: string
  /** Of a space: its chains. */
  readonly chains?: number
  /** What it was worked into: the first place, when it was worked over several. */
  readonly into?: Place | undefined
  /** Loop of `into` that it took; the other loop is free for later. */
  readonly loop?: 'back' | 'front' | 'third'
  /** Stitches made together in one place have the same number. */
  readonly group?: number
  /** A space made inside a group in one place: a corner. */
  readonly corner?: boolean
  /** On the outside of motifs that were joined. */
  readonly outer?: boolean
  /** Fastened to a motif beside it. */
  readonly joined?: boolean
  /** A turning or beginning chain that counts as this stitch. */
  readonly turning?: boolean
  /** A slip stitch that only carries the yarn along, or steps in at an edge. */
  readonly travel?: boolean
  /** Letter of the yarn that it was worked with, where the rows tell it. */
  readonly yarn?: string
  /** Index of the row that made it. */
  readonly row: number
  /** Of a chain of a foundation: the piece that begins with it, in small letters. */
  readonly piece?: string
}

export const isSpace = (place: Place): boolean => place.kind === 'space' || place.kind === 'gap'
export const isStitch = (place: Place): boolean => place.kind !== 'space' && place.kind !== 'gap' && place.kind !== 'ring' && place.kind !== 'row-end'
/** What a walk along stitches passes over: spaces, and the ends of rows at an edge. */
export const isPassed = (place: Place): boolean => isSpace(place) || place.kind === 'row-end'

/** What the rows so far hold out to the next row, in its working order. */
export interface Edge {
  readonly places: readonly Place[]
  /** Closed to a ring. */
  readonly round: boolean
  /** The foundation chain, while it may still be worked along its other side; from the hook outwards. */
  readonly foundation?: readonly Place[]
  /** A turning chain already made that counts as the next row's first stitch. */
  readonly carry?: Chain
  /** The next row works the chain itself: its first chains are for turning. */
  readonly chain: boolean
  /** The chain was said to form a ring: the next round goes into the ring, unless it names the chains. */
  readonly formsRing?: boolean
  /** The places are the outline of a flat piece, which a border goes along. */
  readonly outline?: BorderEdge
  /** The places are stitches that waited. */
  readonly held?: Held
  /** The chain was closed by a slip stitch in its first chain. */
  readonly closedInFirst?: boolean
  /** A joined round that was turned: its first place is the stitch of the join. */
  readonly turnedRound?: boolean
  /** Slip stitches that are no places and lie behind its last one: the row below began with them. */
  readonly slips?: number
  /** Of an edge all round borders that are sewn to one another: the names of their pieces, in small letters. */
  readonly ofPieces?: ReadonlySet<string>
}

/** What a piece that is finished holds out to others, and how many of it there are. */
export interface FinishedEdge {
  readonly places: readonly Place[]
  /** Undersides of its foundation. */
  readonly foundation: () => readonly Place[]
  /** The outline of all that it hangs together with. */
  readonly outline?: () => Outline
  /** Those of its other copies, where these are told apart. */
  readonly others?: readonly FinishedEdge[]
  readonly copies: number
  /** All its rows came out. */
  readonly sound: boolean
}

/** Before anything is worked. */
export const nothing: Edge = { places: [], round: false, chain: false }
