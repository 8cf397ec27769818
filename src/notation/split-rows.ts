import type { Span } from '../text/span.ts'
import { readLabel, type RowLabel } from './labels.ts'

/** A line of a rows block, with the lines that go on from it. */
export type RowsEntry =
  | { readonly kind: 'row'; readonly label?: RowLabel; readonly text: Span; readonly span: Span }
  /** Printed and not counted: `Note:`, `Fasten off.` */
  | { readonly kind: 'between'; readonly span: Span }

const between = /^(?:notes?\s*:|fasten off|finish off|cut (?:the )?yarn|break (?:off )?yarn|stuff|weave in|sew|insert (?:the )?(?:eyes|stuffing)|block|place (?:the )?(?:safety )?eyes|embroider|\(?make (?:\d+|one|two|three|four|six)\b(?!\s*ch)[^:]*$)/i
const ownRow = /^(?:rep(?:eat)?\s+(?:the\s+)?(?:last|rows?|rnds?|rounds?|row|prev)|work (?:even|straight)|base (?:row|round|rnd) of|(?:cont(?:inue)?|dec|inc|increase|decrease)\b.*\b(?:until|every|each (?:end|row|rnd)|foll)\b)/i
const comment = /^#/

/**
 * Cuts a block of rows into its entries. A line without a label goes on with the row above, unless it can only be a row or a
 * remark of its own.
 */
export function splitRows(text: string, block: Span, sizes: number): readonly RowsEntry[] {
  const entries: RowsEntry[] = []
  for (const line of lines(text, block)) {
    const content = text.slice(line.start, line.end)
    if (content === '' || comment.test(content)) continue
    const label = between.test(content) ? undefined : readLabel(content, line.start, sizes)
    const last = entries.at(-1)
    const remark = between.test(content) || last !== undefined && isHeading(content, text.slice(last.span.start, last.span.end))
    if (label) entries.push({ kind: 'row', label, text: trimmed(text, label.end, line.end), span: line })
    else if (remark) entries.push({ kind: 'between', span: line })
    else if (!last || last.kind === 'between' || ownRow.test(content)) entries.push({ kind: 'row', text: line, span: line })
    else entries[entries.length - 1] = { ...last, text: { start: last.text.start, end: line.end }, span: { start: last.span.start, end: line.end } }
  }
  return entries
}

/** `First side of keyhole`, `Sleeve (make 2)`: a few words of no row, after a row that is at its end. */
function isHeading(content: string, above: string): boolean {
  return /^\p{Lu}[\p{L}’' -]{2,50}(?:\((?:make|both|worked)[^)]{0,20}\))?:?$/u.test(content) && /[.)\]]$/.test(above) && content.split(/\s+/).length <= 7
    && !/\b(?:sc|hdc|dc|tr|htr|dtr|sts?|ch|chain|sl|ss|inc|dec|join|turn|rep|repeat|rnds?|rows?|rounds?|work|sk|skip|miss|as|same|even|magic|ring|across|around)\b/i.test(content)
}

function lines(text: string, block: Span): readonly Span[] {
  const out: Span[] = []
  let start = block.start
  while (start < block.end) {
    const newline = text.indexOf('\n', start)
    const end = newline === -1 || newline >= block.end ? block.end : newline
    out.push(trimmed(text, start, end))
    start = end + 1
  }
  return out
}

function trimmed(text: string, start: number, end: number): Span {
  let [from, to] = [start, end]
  while (from < to && /\s/.test(text[from]!)) from += 1
  while (to > from && /\s/.test(text[to - 1]!)) to -= 1
  return { start: from, end: to }
}
