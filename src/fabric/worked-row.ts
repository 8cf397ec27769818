import type { Span } from '../text/span.ts'
import type { MirroredPart } from './mirrored-words.ts'
import type { KindSlip } from './compare-total.ts'
import type { Place } from './place.ts'

/**
 * What a row came to when it was worked. Facts only: what is wrong with them is for `checks/` to say.
 * All counts are numbers of places (offers, works over, leaves) or of stitches (makes).
 */
export interface WorkedRow {
  /** As a person names it: `Row 2`, `Rnd 14`, `Foundation`. */
  readonly label: string
  readonly word: 'row' | 'round'
  /** Its number; unnumbered rows (`Next row:`) have the number they would have had. A foundation has none. */
  readonly number?: number
  /** Number of the older row that it is worked on. */
  readonly onRow?: number
  /** Its number begins again, for another part of the piece. */
  readonly anew?: boolean
  readonly side?: 'RS' | 'WS'
  /** The row as written that this real row came from; `Rows 4-8` gives five worked rows with one written row. */
  readonly written: WrittenRow
  readonly offers: number
  readonly worksOver: number
  /** Places left unworked; they stay in the fabric. */
  readonly leaves: number
  readonly makes: number
  /** Stitches by kind, in US words: `{ hdc2tog: 8, hdc: 34 }`. */
  readonly kinds: Readonly<Record<string, number>>
  /** Chain spaces by kind: `{ 'ch-2': 4 }`. */
  readonly spaces: Readonly<Record<string, number>>
  readonly says?: Says
  readonly verdict: Verdict
  /** Why the verdict is `cannot-tell`, in words a designer reads. */
  readonly reason?: string
  /** Readings taken and counts taken on trust, in words. */
  readonly assumed: readonly string[]
  readonly tally: readonly Step[]
  /** How often each repeat was worked in all. The span goes from the star or bracket to the end of what is repeated. */
  readonly repeats: readonly { readonly span: Span; readonly times: number }[]
  readonly troubles: readonly Trouble[]
  /** Whether what it says agrees with what it makes; true where it says nothing. */
  readonly agreement: { readonly total: boolean; readonly kinds: boolean; readonly change: boolean; readonly kindSlip?: KindSlip }
  /** Of a flat row on the row below: stitches that it steps in by at its start, and leaves at its end. */
  readonly steps?: { readonly start: number; readonly end: number }
  /** Along an edge without a number: by how many its total is off what the edge holds, one more or fewer. */
  readonly loose?: { readonly span: Span; readonly by: number; readonly holds: number }
  /** Of a border: the edges that it goes along, and how many places of each it uses. */
  readonly along?: readonly EdgeUse[]
  /** Places of another piece's edge that it is joined to at its end. */
  readonly joined?: { readonly piece: string; readonly edge: 'top' | 'underside' | 'side'; readonly count: number; readonly hand?: 'left' | 'right'; readonly row?: number; readonly span: Span }
  /** Yarns that the row names. */
  readonly yarns: readonly { readonly yarn: string; readonly span: Span }[]
  /** The row could not be counted: its numbers stand for nothing but what it says. */
  readonly uncounted?: boolean
  /** What it would be without the words that cannot be read, where those hold no number and no stitch. */
  readonly withoutUnread?: WorkedRow
  /** The words that cannot be decided. */
  readonly undecided?: Span
  /** The row that it refers to and that is not there; `itself` when it refers to itself. */
  readonly missing?: string
  /** All that it made, in the order of making, and the places that it left: what edges are made of. */
  readonly fabric: { readonly made: readonly Place[]; readonly left: readonly Place[]; readonly through?: readonly Place[]; readonly turned: boolean }
}

export type Verdict = 'adds-up' | 'does-not' | 'cannot-tell'

/** Where a written row stands and which of its parts a booklet prints. */
export interface WrittenRow {
  /** Label, text and total. */
  readonly span: Span
  readonly label: Span
  /** The instructions, without label and total. */
  readonly text: Span
  /** The first and last number of a range; equal for one row; undefined for an unnumbered row. */
  readonly first?: number
  readonly last?: number
  /** Words of the heading over its part of the piece, in small letters. */
  readonly heading?: string
  /** It states a count, if only for the last row of a range. */
  readonly totalled?: boolean
  /** Where the written row begins whose words it copies. */
  readonly copies?: number
  /** The total of that row. */
  readonly copiesTotal?: number
  /** It copies that row with its shaping reversed: its own words, where they can be turned round. */
  readonly reversed?: { readonly words?: readonly MirroredPart[] }
}

/** What the designer wrote about the row's count. */
export interface Says {
  readonly span: Span
  /** Stitches in all, when said. */
  readonly count?: number
  /** The slip stitch that closes the round is told with its stitches; `count` is without it. */
  readonly closing?: boolean
  /** By kind, when said: `{ dc: 16 }`; US words. */
  readonly kinds: Readonly<Record<string, number>>
  /** Chain spaces by kind, when said: `{ 'ch-1': 8 }`; a bare `sps` stands under `ch`. */
  readonly spaces: Readonly<Record<string, number>>
  /** Stitches by the letter of their yarn, when said: `12 A, 6 B`. */
  readonly colours?: Readonly<Record<string, number>>
  /** `(+6)`: the change against the row before. */
  readonly change?: number
  readonly changeSpan?: Span
  /** `[6 rnds]`: how many rows a range has. */
  readonly rows?: number
}

/** One stretch of an outline as a border uses it. */
export interface EdgeUse {
  readonly edge: 'top' | 'step' | 'row-ends' | 'underside'
  /** Rows that it belongs to, as a person names them. */
  readonly rows: readonly string[]
  readonly offers: number
  readonly worksOver: number
  /** Stitches that the border makes there. */
  readonly makes: number
  /** How many of them were worked through both layers. */
  readonly through?: number
  /** Of the edge that the border begins on: at which of its places, from 1. */
  readonly beginsAt?: number
}

/** One step of the row's arithmetic. */
export interface Step {
  readonly span: Span
  readonly worksOver: number
  readonly makes: number
  readonly soFar: number
  /** How often the step was worked, when it stands in a repeat. */
  readonly times: number
}

/** Row-ends that a border passes, on the way from one place that it works to the next. */
export interface Gap {
  /** The row of the first of them and of the last, as a person names it: `Row 8`, `Row 8 of Back`. */
  readonly from: string
  readonly to: string
  /** The words that work the last place before them, where they are not those that work the next. */
  readonly after?: Span
}

/** Something that did not come out, as a fact with numbers. */
export type Trouble =
  | { readonly kind: 'overrun'; readonly span: Span; readonly wants: number; readonly offers: number; readonly what?: string }
  | { readonly kind: 'left-over'; readonly span: Span; readonly count: number; readonly said?: number; readonly named?: { readonly count: number; readonly what: string } }
  | { readonly kind: 'does-not-divide'; readonly span: Span; readonly room: number; readonly each: number; readonly before: number; readonly after: number }
  | { readonly kind: 'no-such-place'; readonly span: Span; readonly what: string }
  | { readonly kind: 'row-ends-passed'; readonly span: Span; readonly count: number; readonly gap?: Gap }
  | { readonly kind: 'other-edge'; readonly span: Span; readonly named: string; readonly next: string }
  | { readonly kind: 'stated-apart'; readonly span: Span; readonly says: number; readonly makes: number; readonly scope: 'so-far' | 'side' | 'either' }
  | { readonly kind: 'sewn-apart'; readonly span: Span; readonly one: number; readonly other: number; readonly along?: boolean }
  | { readonly kind: 'places-apart'; readonly span: Span; readonly says: number; readonly worksOver: number; readonly what: 'row-end' | 'stitch' | 'chain' }
  | { readonly kind: 'out-of-apart'; readonly span: Span; readonly says: number; readonly there: number; readonly what: 'stitch' | 'chain' }
  | { readonly kind: 'rate-apart'; readonly span: Span; readonly told: number; readonly comes: number }
  | { readonly kind: 'neighbour-apart'; readonly span: Span; readonly joins: number; readonly holds: number; readonly piece: string }
  | { readonly kind: 'unreadable'; readonly span: Span; readonly reason: string; readonly quiet?: boolean; readonly broken?: boolean }
  | { readonly kind: 'words-passed-over'; readonly span: Span }
  | { readonly kind: 'unknown-stitch'; readonly span: Span; readonly word: string; readonly nearest?: string }
