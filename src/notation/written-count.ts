import type { Span } from '../text/span.ts'
import type { Num } from './target.ts'

/** The name under which `2 joined corners` are counted. */
export const joinedCorner = 'joined corner'

/** The name under which `5 joins to the neighbor` are counted. */
export const joinToNeighbour = 'neighbour join'

/** A written count. */
export interface Total extends Span {
  readonly count?: Num
  readonly kinds: readonly { readonly kind: string; readonly count: Num }[]
  readonly spaces: readonly { readonly chains?: number; readonly chainsBySize?: Num; readonly count: Num }[]
  readonly change?: Num
  readonly rows?: Num
  /** `at end of Rnd 1`: the row it speaks of. */
  readonly atRow?: number
  /** `22, 30, 38, 46 dc`: of a range, one for each row. */
  readonly byRow?: readonly Num[]
  /** `each ch counts as 1 st` */
  readonly chainsCount?: boolean
  /** `49 sts: 48 sc and the closing sl st`: the join is told with the stitches; `48 sts, sl st not counted`: it is said not to be. */
  readonly closing?: boolean
  /** By yarn: `12 A, 6 B`. */
  readonly colours?: readonly { readonly yarn: string; readonly count: Num }[]
  /** Groups counted by name: `12 shells`, `4 corners`. */
  readonly groups: readonly { readonly name: string; readonly count: Num }[]
}

/** A count in the middle of a row: of all so far, of a side, or of either or the step before it. */
export interface Stated {
  readonly count: Num
  readonly kind?: string
  readonly scope: 'so-far' | 'side' | 'either'
}
