import type { TallyLine } from '../diagnostics/diagnostic.ts'
import { timesInWords } from '../diagnostics/words.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { textOf, type Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'

/** How a sentence names a row: `row 3`, `round 14`, `the foundation`. */
export function rowName(row: WorkedRow): string {
  if (row.number === undefined) return /^(foundation|base)/i.test(row.label) ? `the ${row.label.toLowerCase()}` : row.label.toLowerCase()
  return `${row.word} ${row.number}`
}

/** How a sentence names the row below; the very first row has a chain or nothing below it. */
export function belowName(row: WorkedRow | undefined): string {
  return row ? rowName(row) : 'the row below'
}

/** A row's text without the full stop at its end. */
export function withoutStop(source: Source, span: Span): Span {
  const text = textOf(source, span)
  return { start: span.start, end: span.start + text.replace(/[\s.,;]+$/, '').length }
}

/** Words of a row as a message quotes them: on one line, and not more than 60 signs. */
export function shortened(source: Source, span: Span): string {
  const words = textOf(source, span).replace(/\s+/g, ' ')
  return words.length > 60 ? `${words.slice(0, 57)}…` : words
}

/** The row's arithmetic as it is shown under a message. */
export function tallyOf(source: Source, row: WorkedRow): readonly TallyLine[] {
  return row.tally.map(({ span, worksOver, makes, soFar, times }) => ({
    text: withTimes(textOf(source, span).replace(/\s+/g, ' '), times),
    worksOver,
    makes,
    soFar,
  }))
}

/** How often a step was worked, unless its own words say just that: `[…] 6 times`, `(…) x 6`, `twice`. */
function withTimes(words: string, times: number): string {
  const said = times === 2 ? /\btwice\s*\W*$|\b2 times\W*$|[x×]\s*2\W*$/i : new RegExp(String.raw`\b${times} times(?: in all)?\W*$|[x×]\s*${times}\W*$|\b${times}\s*[x×]\W*$`, 'i')
  return times > 1 && !said.test(words) ? `${words} (${timesInWords(times)} in all)` : words
}
