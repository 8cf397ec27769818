import type { Span } from '../text/span.ts'
import type { Neighbour } from './neighbour.ts'
import type { ClosedInPart } from './closed-in-part.ts'
import type { Sewn } from './sewn.ts'
import type { KeptBack, Num, Target, Thing } from './target.ts'
import type { Stated } from './written-count.ts'

/** What a beginning chain, skipped chains or a first stitch is said to count as. */
export interface CountsAs {
  /** US word; undefined when it counts as no stitch. */
  readonly stitch?: string
  /** `ch 5 (counts as dc, ch 2)`: the chains beyond the stitch. */
  readonly chains?: Num
  /** `in the place of the last ss`: the slip stitch that it rises from gives up its place to it. */
  readonly onSlip?: boolean
}

export type Instruction = Work | Chain | Skip | Group | Repeat | Shape | Blocks | Turn | Join | Start | Leave | Aside | Unreadable

/** Stitches of one kind. */
export interface Work extends Span {
  readonly node: 'work'
  /** US word; `st`, `inc` and `dec` stand for the stitch in hand. An unknown word stands as it is written. */
  readonly stitch: string
  readonly unknown?: boolean
  /** The stitch's name as it is written. */
  readonly name?: Span
  /** `…; 66 sc` at the row's end: work to do, or its total where nothing is left to work. */
  readonly maybeTotal?: boolean
  /** `dc in each of next 50 sts, last dc in top of tch`: one more, or the last of those before it. */
  readonly lastOfThese?: boolean
  /** `dc in first sc to join`: it closes the round. */
  readonly joins?: boolean
  /** `2 sc in next st`: 2. `Sc in next 2 sts`: undefined. `2 sc`: 2, and no target. */
  readonly count?: Num
  /** `8 sc` puts the number first, `sc 8` last. */
  readonly numberLast?: boolean
  readonly target?: Target
  /** `dc2tog over next 2 sts`, `cl over next 9 sts`. */
  readonly over?: Num
  /** `about 10 sc`: one more or less does not matter. */
  readonly about?: boolean
  /** The yarn that these stitches are worked with, by its letter. */
  readonly yarn?: string
  /** Its legs are told one by one, with what is skipped between them. */
  readonly legs?: boolean
  /** `sc through both layers`: these stitches alone, whatever follows. */
  readonly layers?: boolean
  readonly loop?: 'back' | 'front' | 'third'
  readonly counts?: CountsAs
  /** Of inc: how many in one place; of dec: how many together. */
  readonly of?: number
  /** The stitch that inc or dec is made of, when it is said (`sc inc`). */
  readonly base?: string
}

export interface Chain extends Span {
  readonly node: 'chain'
  readonly count: Num
  readonly counts?: CountsAs
  /** Said that it counts as no stitch. */
  readonly notCounted?: boolean
  /** `ch 1 between all groups`: made between the groups that are worked at once with it. */
  readonly between?: boolean
}

export interface Skip extends Span {
  readonly node: 'skip'
  readonly count: Num
  readonly thing?: Thing
  readonly from: 'next' | 'first' | 'same' | 'last'
  /** `skip next 6 unworked sc`: what another row of the same edge has left. */
  readonly unworked?: boolean
  /** The older row whose places are skipped. */
  readonly ofRow?: number
  /** `skip 7 sc after the top right corner`: they lie behind it. */
  readonly after?: Target['after']
  /** `Skip 3 ch (count as 1 tr)` */
  readonly counts?: CountsAs
  /** `Sk (sc, ch-2 sp, sc)`: things in order. */
  readonly list?: readonly { readonly count: Num; readonly thing: Thing }[]
}

/** `(2 dc, ch 2, 2 dc) in next ch-2 sp`: all in one place. */
export interface Group extends Span {
  readonly node: 'group'
  /** `(3 skipped ch count as 1 dc)` */
  readonly counts?: CountsAs
  readonly items: readonly Instruction[]
  readonly target: Target
}

/** How often a repeat is worked. */
export type Times =
  | { readonly kind: 'in-all'; readonly count: Num }
  | { readonly kind: 'more'; readonly count: Num }
  /** `rep from * 5 times`: read as 5 more or as 5 in all. */
  | { readonly kind: 'either'; readonly count: Num }
  /** `to ch-2 sp`: it ends before the next of these. */
  | { readonly kind: 'to-end'; readonly keepBack?: KeptBack; readonly edge?: boolean; readonly until?: Thing }
  | { readonly kind: 'once' }

export interface Repeat extends Span {
  readonly node: 'repeat'
  readonly items: readonly Instruction[]
  readonly times: Times
  /** From the star or bracket to the end of what is repeated: what is underlined. */
  readonly unit: Span
  /** What is repeated, without the star or brackets around it. */
  readonly body: Span
  /** `2x inc`: the number stands before what it multiplies, which may be the next stitch or all of the bracket. */
  readonly prefixed?: boolean
  /** `ending last rep at **`: how many of the items the last pass has. */
  readonly lastPass?: number
  /** `ending with dc in last 2 sts`: worked after the last pass, or instead of its tail. */
  readonly ending?: readonly Instruction[]
  /** `omitting last ch 3`: how many items the last pass leaves off at its end. */
  readonly omit?: number
  /** `rep from * twice more, then from * to ** once`: a further pass of so many items. */
  readonly thenPass?: number
  /** `(…) 5 times down the 10 row-ends`: the places that all its passes go over, as they are told behind it. */
  readonly told?: Target
}

/** `Inc 6 sts evenly around`, `dec 1 st at each end`: shaping told by its sum. */
export interface Shape extends Span {
  readonly node: 'shape'
  readonly by: 'inc' | 'dec'
  /** Stitches more or fewer at each place; undefined when no number is said. */
  readonly count?: Num
  readonly places: 'evenly' | 'each-end' | 'one-end'
  /** The target that is said: `(from 46 to 54)`. */
  readonly to?: Num
}

/** `4 solid`, `6 open`: squares of filet; `3 A` in a row of tiles: tiles worked from corner to corner. */
export interface Blocks extends Span {
  readonly node: 'blocks'
  readonly of: 'solid' | 'open' | 'tile'
  readonly count: Num
}

export interface Turn extends Span {
  readonly node: 'turn'
  readonly turns: boolean
  /** `Do not turn after Row 5`: of several rows the one for which it is said. */
  readonly afterRow?: number | 'last'
}

export interface Join extends Span {
  readonly node: 'join'
  /** A ring of chains is made by it. */
  readonly ring?: boolean
  /** `sl st in first ch`: said where the join goes. */
  readonly inFirst?: boolean
  /** Joined to another piece, by the chain that was made before. */
  readonly piece?: boolean
  readonly neighbour?: Neighbour
  /** `sl st in each of next 2 sts of Body` at the end of a row: so many places of that piece's edge are taken by it. */
  readonly along?: JoinedPlaces
}

/** Places of another piece's edge that a row is joined to. */
export interface JoinedPlaces {
  readonly piece: string
  readonly edge: 'top' | 'underside' | 'side'
  readonly count: Num
  /** Of a side: which, and the number of the row that is joined first, where the words tell. */
  readonly hand?: 'left' | 'right'
  readonly row?: Num
}

/** `Join B in any ch-2 sp`, `with A, sl st in first st`: where the hook begins. */
export interface Start extends Span {
  readonly node: 'start'
  readonly target: Target
  /** `in the second sc, which is the center of the corner`: it is said to be one. */
  readonly atCorner?: boolean
}

/** `leave rem sts unworked`: places left on purpose. */
export interface Leave extends Span {
  readonly node: 'leave'
  readonly count?: Num
  /** `(4 tr and the 3 ch)`: what they come to, told kind by kind beside their number. */
  readonly sum?: Num
  /** `leave last 4 sts unworked`: said that they are those at the end. */
  readonly last?: boolean
  /** `8 sc of Row 6 are left unworked` */
  readonly ofRow?: number
  /** `leave 7 sl sts unworked`: they lie there whether slip stitches are counted or not. */
  readonly slips?: boolean
  /** `leave 7 sc before the next corner unworked`: they lie before it. */
  readonly before?: Thing
  /** `leave the ends of the last 8 rows unworked`: row-ends of this side. */
  readonly rowEnds?: boolean
  /** `leave the underside of last 6 ch unworked`: chains, of a foundation those of its underside. */
  readonly chains?: boolean
}

/** `ch 30, sl st in 2nd ch from hook and in next 28 ch`: its chains, the one from the hook that the slip stitches begin in, and how many more of them there are. */
export interface Tie {
  readonly chains: Num
  readonly from: number
  readonly slips: Num | 'all'
}

/** Words that change no count: `fasten off`, `change to B`, `(see Note)`. */
export interface Aside extends Span {
  readonly node: 'aside'
  /** What it says, in small letters. */
  readonly words?: string
  /** Yarn letters that it names. */
  readonly yarn?: string
  /** A picot: it is no stitch and no space, but may be counted. */
  readonly picot?: boolean
  /** It fastens the row to another edge, whose other places wait. */
  readonly leaves?: boolean
  /** A chain that slip stitches go back along: it hangs from the row. */
  readonly tie?: Tie
  readonly neighbour?: Neighbour
  readonly stated?: Stated
  /** `sew the 9 sts to the 9 sts of Back`: edges that meet. */
  readonly sewn?: Sewn
  /** `sew 8 row-ends, leave 7 open, sew 15`: a side that is closed in part. */
  readonly closed?: ClosedInPart
  /** `on the flap only`: what follows goes into one layer again. */
  readonly oneLayer?: boolean
  /** `after the first earflap`: the row begins behind another part. */
  readonly behind?: boolean
  /** `ending in end of Row 17`: the place of the stitch worked last. */
  readonly endsIn?: Target
}

export interface Unreadable extends Span {
  readonly node: 'unreadable'
  readonly reason: string
  /** `cannot`: a form that no arithmetic decides (X); `broken`: a bracket too many or too few; `word`: not known; `quiet`: not known, but without number, stitch or work. */
  readonly why: 'cannot' | 'broken' | 'word' | 'quiet'
  /** `until piece measures 30 cm`: it only tells how many rows there are. */
  readonly byLength?: boolean
}
