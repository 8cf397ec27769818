/** A place of the motif beside this one, to which a motif is joined as it is worked. */
export interface Neighbour {
  readonly space: boolean
  readonly corner: boolean
  /** `next ch-3 sp`: none is passed before it. */
  readonly next: boolean
  /** The piece that is named; left out for `previous motif`. */
  readonly piece?: string
}
