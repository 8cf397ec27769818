/** Chains that bring the hook up to the height of a stitch (US words) at the start of a row. */
export const turningChains: Readonly<Record<string, number>> = { 'sl st': 0, sc: 1, hdc: 2, dc: 3, tr: 4, dtr: 5 }

/** Chains to turn with before a stitch (US word), when the handbooks give them. */
export function turningChain(stitch: string): number | undefined {
  return turningChains[stitch]
}

/** The chain from the hook that the first stitch of Row 1 goes into: the one after the turning chain. */
export function startChain(stitch: string): number | undefined {
  const height = turningChain(stitch)
  return height === undefined ? undefined : height + 1
}

/** A first row worked into a foundation chain: how high the turning chain is, and whether it counts as a stitch. */
export interface FirstRow {
  /** Chains of the turning chain. */
  readonly height: number
  readonly counts: boolean
}

/** Chains to make for so many stitches in Row 1. */
export function foundationChain(stitches: number, { height, counts }: FirstRow): number {
  return stitches + height - (counts ? 1 : 0)
}

/** Stitches that Row 1 has when it is worked into every chain that is left. */
export function firstRowStitches(chains: number, { height, counts }: FirstRow): number {
  return chains - height + (counts ? 1 : 0)
}
