/** What a pattern says, or is taken to say, about what its rows leave open. */
export interface Conventions {
  /** By stitch (US word): whether the turning chain of its height counts as one. */
  readonly turningChains: Readonly<Record<string, boolean>>
  /** Stitches of which a row says that their chain is none: a first row that does not speak of it is not read the other way. */
  readonly denied?: ReadonlySet<string>
  readonly slipStitchesCount?: boolean
  readonly chainsCount?: boolean
  /** A total of the pattern says that it counts the slip stitch that closes the round: a bare one may. */
  readonly joinsCount?: boolean
}
