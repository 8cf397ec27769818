import type { Span } from '../text/span.ts'

/** A number in a row: one value for all sizes, or one for each size, smallest first. */
export interface Num extends Span {
  readonly values: readonly number[]
}

/** The part of `values` that holds for a size. A list that is too short gives its last value; a check speaks of it. */
export function inSize(num: Num, size: number): number {
  return num.values.length === 1 ? num.values[0]! : (num.values[size] ?? num.values.at(-1) ?? 0)
}

/** What an instruction is to be worked into, by the word that names it. */
export interface Thing {
  readonly kind: 'stitch' | 'chain' | 'space' | 'gap' | 'ring' | 'turning-chain' | 'row-end' | 'edge' | 'group' | 'loop' | 'join'
  /** Of a stitch: its US word; left out for `st`. Of a group: `shell`, `cl`. */
  readonly stitch?: string
  /** Of a space: how many chains it has, when the row says. */
  readonly chains?: Num
  /** `corner`, `side`: which spaces or stitches are meant; `inner`: the last stitch before an inner corner. */
  readonly where?: 'corner' | 'side' | 'inner'
  /** Of an inner corner: the decrease that lies in it already, and a stitch on either side. */
  readonly again?: true
  /** Of a corner: how many stitches were made in it, where that is told. */
  readonly size?: number
  /** Of inner corners: those at the bottom of slits and between points as well. */
  readonly valleys?: true
  /** `2 lower corners`: those that lie there; others may lie elsewhere. */
  readonly some?: boolean
  /** Of a row-end: US words of the stitches that its row may end with; \`sh\` for a row of shells. */
  readonly rows?: readonly string[]
  /** `3rd tr of every 5-tr scallop`, `of last shell`: which of so many stitches in one place. */
  readonly ofGroup?: { readonly nth: number; readonly size?: number }
}

/** Where a side ends: the corner space, or the corner stitch of an edge without spaces. */
export const corner: Thing = { kind: 'space', where: 'corner' }

/** Which edge of a piece a row names: a side made of row-ends, the underside of its foundation, its top, any one, or all round. */
export type EdgeName = 'side' | 'underside' | 'top' | 'next' | 'any' | 'all'

/** `to last 3 sts`, `to last tile`: so many are kept back, and of what. */
export interface KeptBack extends Num {
  readonly of?: Thing
}

/** Where an instruction goes. */
export interface Target extends Span {
  readonly walk:
    | 'next' // the next `count` places
    | 'each' // every place as far as `reach`
    | 'same' // the place just worked into
    | 'first' // the first `count` places of the row below
    | 'last' // the last `count` places of the row below
    | 'nth' // `Sc in 3rd ch of ch-5`: the nth chain of the next space
    | 'from-hook' // the nth chain from the hook
    | 'ring' // the ring, or a magic ring that is made now
    | 'skipped' // the places just skipped
    | 'other-side' // the underside of the foundation chain
    | 'below' // a stitch some rows below
    | 'edge' // row-ends and edges
    | 'layers' // through two layers at once
    | 'marked' // the marked stitch
  readonly count?: Num
  readonly thing?: Thing
  /** How far `each` goes: to the end, or to so many places before it. */
  readonly keepBack?: KeptBack
  /** Of an edge: which. */
  readonly edge?: EdgeName
  /** `in each of next 4 sts`: so many in each. */
  readonly eachOf?: boolean
  /** `every 3rd st` */
  readonly every?: number
  readonly loop?: 'back' | 'front' | 'third' | 'free'
  /** `in same sc as first sc`: the place in which the row began, wherever the hook stands. */
  readonly asFirst?: boolean
  /** `of Rnd 2`: the row whose places are meant; else the row below. */
  readonly ofRow?: number
  /** `row-end of the hem row`: the row is named by its label, in small letters; empty where any row of the piece may be meant. */
  readonly rowCalled?: string
  /** `front loops left in Round 8`: of that row, or those that it left of the row that it was worked on. */
  readonly leftBy?: boolean
  /** `row-ends of Rows 18 to 13`: the rows that they belong to, in the order in which they are come to. */
  readonly ofRows?: { readonly first: Num; readonly last: Num }
  /** `row-ends down to Row 1`, `up to Row 7 of First strap`: the row that they end with, or the one beside them that has none there. */
  readonly upTo?: Pick<Target, 'ofRow' | 'rowCalled' | 'ofPiece'>
  /** `3 sc for every 2 rows`: as many rows to so many stitches; those that were named before, unless it says its own. */
  readonly rate?: { readonly stitches?: Num; readonly rows: Num; readonly about: boolean }
  /** `60 sc evenly along 30 row-ends`: the number before is that of the stitches in all. */
  readonly evenly?: boolean
  /** `28 held sts`, `first ch of left underarm`: stitches that an earlier row passed over and that wait, or the chain over them; in these words. */
  readonly held?: string
  /** `8th front loop of Row 10`: so many are passed before it. */
  readonly passing?: number
  /** `the first of the 6 skipped sc`: how many there are, of which this is one. */
  readonly outOf?: Num
  /** `the first of the last 4 sc`: so many from the end of the row. */
  readonly fromEnd?: Num
  /** `19th tr after Tab A`, `3rd unworked st`: of the places that others have left. */
  readonly ofLeft?: boolean
  /** `first dc after any ch-2 sp`: behind the first of these, or the last of them. */
  readonly after?: { readonly thing: Thing; readonly last: boolean }
  /** `the 5th unworked st`: which stitch of the step that comes next. */
  readonly nthOfStep?: number
  /** `at the right-hand end of Row 2`: the end that is meant. */
  readonly hand?: 'left' | 'right'
  /** `the neck-side row-end of Row 6`, `the outer row-end`: the end that faces a step, or the one away from it. */
  readonly facing?: 'step' | 'away'
  /** `around Leg 1`: the piece whose edge is worked. */
  readonly ofPiece?: string
  /** `of second shoulder`: a part of the same piece that was worked apart; in these words. */
  readonly ofPart?: string
  /** `3 sc in the row-ends`: so many in each, or in all of them. */
  readonly fewInAll?: true
  /** `4 row-ends up to the top`: as far as their side goes. */
  readonly wholeWay?: true
  /** `9 row-ends of Left front`, `the underside of each of the 18 ch of Second half`: the piece that they are of. */
  readonly sideOf?: string
  /** `5 lps held tog`: all of them are one place. */
  readonly together?: boolean
  /** `across`, `around`, `to end`: said that it goes to the end. */
  readonly toEnd?: boolean
  /** `along the edge of each of next 6 tiles`: so many tiles, whose places the words do not tell. */
  readonly tiles?: Num
  /** `along the next square`: the side of one motif, as far as its next corner or join. */
  readonly motif?: boolean
  /** `across`, `along`: as far as this edge goes. */
  readonly across?: boolean
  /** `to centre ch-2 sp`: it ends before the next of these. */
  readonly until?: Thing
  /** `up to and including the hdc of the next corner`: the place at which it ends is worked too. */
  readonly including?: boolean
  /** `until there are 14 dc`: so many in all. */
  readonly untilMade?: Num
  /** `to marker`, `to 2 sts before m`: it ends at a marker, whose place the row does not tell. */
  readonly toMarker?: boolean
}
