import type { WrittenEntry } from './real-rows.ts'

interface OfEntry {
  readonly entry: WrittenEntry
}

/** Under a heading `as for Front` means the rows that Front has under the same heading; all of its rows where it has no such heading. */
export function underHeading<Row extends OfEntry>(rows: readonly Row[], { heading }: WrittenEntry): readonly Row[] {
  const part = heading === undefined ? [] : rows.filter(({ entry }) => entry.heading === heading)
  return part.length > 0 ? part : rows
}

/** `As for First earflap`: the rows under that other heading of the same piece. */
export function ofPart<Row extends OfEntry>(rows: readonly Row[], name: string, { heading }: WrittenEntry): readonly Row[] {
  return rows.filter(({ entry }) => entry.heading !== undefined && entry.heading !== heading && entry.heading === name.toLowerCase())
}
