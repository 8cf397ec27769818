/** Counts of the sizes as they are shown in one line: one alone where a row has the same in every size, which reads sooner than a list. */
export function stitchesShown(stitches: readonly string[]): readonly string[] {
  return stitches.every((count) => count === stitches[0]) ? stitches.slice(0, 1) : stitches
}
