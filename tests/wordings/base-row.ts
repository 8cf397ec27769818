/** One row of a pattern, worked by hand, and the ways in which people write it. */
export interface BaseRow {
  /** What is worked, in figures. */
  readonly name: string
  /** What lies below, in the words of a fence: `last=30`, `lastround=12`. */
  readonly on?: string
  /** Rows before the one in question. */
  readonly before?: readonly string[]
  /** Places of the row below that it takes up, a chain space being one. */
  readonly over: number
  /** Stitches that it makes. */
  readonly makes: number
  /** The same stitches by kind, in US words. */
  readonly kinds: Readonly<Record<string, number>>
  readonly spaces?: Readonly<Record<string, number>>
  /** The row in ten wordings, label and total included. `@` stands where the count of stitches is written. */
  readonly wordings: readonly string[]
}
