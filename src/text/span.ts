/** A stretch of a source, from `start` up to but not including `end`. Both are 0-based offsets in UTF-16 units. */
export interface Span {
  readonly start: number
  readonly end: number
}

/** The smallest span that holds both. */
export function join(a: Span, b: Span): Span {
  return { start: Math.min(a.start, b.start), end: Math.max(a.end, b.end) }
}
