/** More stitches than this in one pattern are not worked. */
export const mostStitches = 2_000_000

/** Raised when a row would pass the limit; caught where rows are worked, and told as a diagnostic. */
export class TooLarge extends Error {}

/** Raised when the repeats of a row stand so deep in one another that working it would not end. */
export class TooDeep extends Error {}
