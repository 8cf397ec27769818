import type { Booklet } from '../booklet/booklet.ts'

/** What a shopper sees of a pattern that is sold: what it makes and needs, and none of the work. */
export function withoutRows(booklet: Booklet): Booklet {
  const { key: _row, ...rest } = booklet
  return { ...rest, parts: rest.parts.map((part) => ({ ...part, line: '', lines: [] })), specialStitches: [], before: [], after: [] }
}
