/** What all rows of a part have in common on the page. */
export interface PartSetting {
  /** `Row` or `Round` */
  readonly counting: string
  readonly sides: boolean
  /** How many sizes the pattern has; 1 for one. */
  readonly sizes: number
  /** Counts of four sizes and more stand under the text: no column is wide enough for them. */
  readonly countsBelow: boolean
}
