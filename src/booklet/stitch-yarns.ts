import type { WorkedRow } from '../fabric/worked-row.ts'
import { textOf, type Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'

/** So many stitches in one yarn. */
interface Stretch {
  readonly yarn: string | undefined
  readonly stitches: number
}

/**
 * The yarn of each place that a row in several colours made: what is worked is in the yarn that was named last before it. Undefined where
 * the row has one yarn, or where the words between the yarns do not tell, stitch by stitch, what the row came to.
 */
export function stitchYarns(row: WorkedRow, source: Source, inHand: string | undefined): readonly (string | undefined)[] | undefined {
  if (new Set(row.yarns.map(({ yarn }) => yarn)).size < 2) return undefined
  const { text } = row.written
  const outer = row.repeats.filter(({ span }) => !row.repeats.some((other) => other.span !== span && other.span.start <= span.start && other.span.end >= span.end))
  const cuts = outer.filter(({ span }) => span.start >= text.start && span.end <= text.end).toSorted((a, b) => a.span.start - b.span.start)
  const found: (string | undefined)[] = []
  let at = text.start
  let yarn = inHand
  for (const cut of [...cuts, { span: { start: text.end, end: text.end }, times: 0 }]) {
    const before = stretches(row, source, { start: at, end: cut.span.start }, yarn)
    yarn = before.at(-1)?.yarn ?? yarn
    const inside = cut.times === 0 ? [] : stretches(row, source, cut.span, yarn)
    for (const { yarn: own, stitches } of [...before, ...Array.from({ length: cut.times }, () => inside).flat()]) {
      for (let one = 0; one < stitches; one += 1) found.push(own)
    }
    yarn = inside.at(-1)?.yarn ?? yarn
    at = cut.span.end
  }
  return found.length === row.fabric.made.length ? found : undefined
}

/** The words of a part of the row, cut where a yarn is named. A stretch without stitches still says which yarn is in hand. */
function stretches(row: WorkedRow, source: Source, part: Span, inHand: string | undefined): readonly Stretch[] {
  const named = row.yarns.filter(({ span }) => span.start >= part.start && span.end <= part.end).toSorted((a, b) => a.span.start - b.span.start)
  const starts = [{ yarn: inHand, from: part.start }, ...named.map(({ yarn, span }) => ({ yarn, from: span.end }))]
  return starts.map(({ yarn, from }, at) => ({ yarn, stitches: stitchesIn(textOf(source, { start: from, end: named[at]?.span.start ?? part.end })) }))
}

/** `sc in next 5 sts` has five, `2 sc in next st` two, `3 sc` three. Chains and joins have none. */
function stitchesIn(text: string): number {
  const worked = text.replace(/\b(?:join|sl st|ss|ch \d+|ch)\b.*$/is, '')
  let sum = 0
  for (const [, first, next, each] of worked.matchAll(/(?:(\d+)\s+)?\b[a-z]{2,5}\b(?:\s+in(?:to)?\s+(?:(?:the\s+)?next\s+(?:(\d+)\s+)?|each\s+of\s+(?:the\s+)?next\s+(\d+)\s+)(?:sts?|stitch(?:es)?|[a-z]{2,4})\b|(?=\s*[,;.]|\s*$))/gi)) {
    sum += Number(first ?? 1) * Number(next ?? each ?? 1)
  }
  return sum
}
