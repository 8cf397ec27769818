import type { WrittenEntry } from './real-rows.ts'

/** Under a heading `as for Front` means the rows that Front has under the same heading; all of its rows where it has no such heading. */
export function underHeading<Row extends { readonly entry: WrittenEntry }>(rows: readonly Row[], { heading }: WrittenEntry): readonly Row[] {
  const part = heading === undefined ? [] : rows.filter(({ entry }) => entry.heading === heading)
  return part.length > 0 ? part : rows
}
