import type { Span } from './span.ts'

/** A text and where it came from. The text is kept exactly as it was read: no text is ever re-made to show it. */
export interface Source {
  readonly path: string
  readonly text: string
}

/** A place as people say it: the first line is 1, the first column is 1. */
export interface LineColumn {
  readonly line: number
  readonly column: number
}

const lineStartsOf = new WeakMap<Source, readonly number[]>()

/** Offsets at which the lines of a source begin. Worked out once a source. */
export function lineStarts(source: Source): readonly number[] {
  const known = lineStartsOf.get(source)
  if (known) return known
  const starts = [0]
  for (let at = source.text.indexOf('\n'); at !== -1; at = source.text.indexOf('\n', at + 1)) starts.push(at + 1)
  lineStartsOf.set(source, starts)
  return starts
}

/** Line and column of an offset. The only place where offsets become lines and columns. */
export function placeOf(source: Source, offset: number): LineColumn {
  const starts = lineStarts(source)
  let low = 0
  let high = starts.length - 1
  while (low < high) {
    const middle = (low + high + 1) >> 1
    if ((starts[middle] ?? 0) <= offset) low = middle
    else high = middle - 1
  }
  return { line: low + 1, column: offset - (starts[low] ?? 0) + 1 }
}

/** The text of a line (1-based), without its line end. */
export function lineText(source: Source, line: number): string {
  const starts = lineStarts(source)
  const start = starts[line - 1]
  if (start === undefined) return ''
  return source.text.slice(start, starts[line] ?? source.text.length).replace(/\r?\n$/, '')
}

/** What the designer typed in a span, exactly. */
export function textOf(source: Source, span: Span): string {
  return source.text.slice(span.start, span.end)
}
