import type { Lexicon } from './lexicon.ts'

/**
 * How many stitches a border usually works in the end of one row, by the height of its stitch: one for sc; three in two rows, one or two
 * for hdc; two, or three in two rows, for dc (common practice, no source).
 */
const byHeight: Readonly<Record<number, readonly number[]>> = { 0: [1, 1, 1], 1: [1, 1, 1], 2: [1.5, 1, 2], 3: [2, 1.5, 2], 4: [3, 2, 2.5], 5: [4, 3, 2] }

/** Stitches to the end of a row that ends with this stitch, the usual rate first. */
export function rowEndRates(stitch: string, lexicon: Lexicon): readonly number[] {
  return byHeight[Math.round(lexicon.stitch(stitch)?.height ?? 1)] ?? [1, 1, 1]
}
