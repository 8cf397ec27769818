import type { WorkedRow } from '../../fabric/worked-row.ts'
import type { Span } from '../../text/span.ts'
import type { Slip } from './change.ts'
import { writtenNumbers, type WrittenNumber } from './written-numbers.ts'

const notCounts = /(?:st|nd|rd|th)\b|[½¼¾]|\.\d|\s*[a-z]*tog|\s*(?:mm|cm|g)\b/iy

/** Numbers of a row that are counts: no ordinals, no lengths, no part of `sc2tog`, `ch-2 sp` or the name of another row. */
export function numbersOf(slip: Slip): readonly WrittenNumber[] {
  const { source: { text }, row: { written } } = slip
  return writtenNumbers(slip.source, written.text, slip.sizes).filter(({ span }) => {
    notCounts.lastIndex = span.end
    const before = text.slice(Math.max(written.text.start, span.start - 8), span.start)
    // How high a turning chain is changes no count.
    const head = /^\W*(?:turn\W+)?ch(?:ain)? $/i.test(text.slice(written.text.start, span.start))
    return !notCounts.test(text) && !head && !/[\d.]$|\b(?:rows?|rnds?|rounds?|legs?) ?$|[a-z]$/i.test(before)
      && (!/-$/.test(before) || slip.diagnostic.code === 'place-missing')
  })
}

/** Whether a number says how often something is worked: `6 times`, `x 6`, `6 more times`. */
export function saysHowOften({ source: { text } }: Pick<Slip, 'source'>, { span }: WrittenNumber): boolean {
  return /^[\])]?\s*(?:more )?(?:times|x\b|×)/i.test(text.slice(span.end, span.end + 12)) || /[x×]\s*$/i.test(text.slice(span.start - 3, span.start))
}

/** How often the words around a number are worked in all. */
export function timesAround(row: WorkedRow, span: Span): number {
  return row.repeats.filter((repeat) => repeat.span.start <= span.start && span.end <= repeat.span.end).reduce((times, repeat) => times * Math.max(1, repeat.times), 1)
}
