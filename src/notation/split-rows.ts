import type { Span } from '../text/span.ts'
import { isHeading } from './headings.ts'
import { readLabel, type RowLabel } from './labels.ts'

/** A line of a rows block, with the lines that go on from it. */
export type RowsEntry =
  | { readonly kind: 'row'; readonly label?: RowLabel; readonly text: Span; readonly span: Span }
  /** Printed and not counted: `Note:`, `Fasten off.` */
  | { readonly kind: 'between'; readonly span: Span }

const between = /^(?:notes?\s*:|(?:(?:with|using) an? [a-z]+ (?:length|strand|piece) of [a-z]+,? )?(?:join|attach|add|make) an? (?:separate|spare|short|extra|new) (?:chain|ch|length)\b[^:]*\bch(?:ain)?s?\b[^:]*$|(?:drop (?:the )?loop from (?:the )?hook\.?\s*)?(?:(?:spare|separate) ch(?:ain)?\s*:\s*)?w(?:ith\b|\/) ?an? (?:separate|spare|extra|second|2nd|another|new|short) (?:length|strand|ball|piece|end|oddment)\b[^:]*\bch(?:ain)?\b[^:]*\b(?:cut|fasten off|fo|break|set aside)\b[^:]*$|(?:do not |don[’']t )?(?:(?:fasten|finish) off|f\.?o\b)|(?:do not |don[’']t )cut (?:the )?yarn|cut (?:the )?yarn|break (?:off )?yarn|stuff|weave in|sew|insert (?:the )?(?:eyes|stuffing)|block|place (?:the )?(?:safety )?eyes|embroider|(?:work|make) (?:one|1|two|2) (?:on|for|along|at|round|around) each\b|\(?make (?:\d+|one|two|three|four|six)\b(?!\s*(?:[([][\d, –-]+[)\]]\s*)*ch)[^:]*$)/i
const ownRow = /^(?:rep(?:eat)?\s+(?:the\s+)?(?:last|rows?|rnds?|rounds?|row|prev)|(?:rep(?:eat)?|work|do)\s+(?:the\s+)?(?:last|previous|these|those|both)\s+(?:[\p{L}\d]+\s+){0,3}?(?:rows?|rnds?|rounds?)\b|work (?:even|straight)|base (?:row|round|rnd) of|(?:cont(?:inue)?|dec|inc|increase|decrease)\b.*\b(?:until|every|each (?:end|row|rnd)|foll)\b)/iu
const comment = /^#/
/** `Ch 25. Work Rows 1 through 3 of Panel`, `Make 20 ch and work as for Back to Row 6`: behind the chain a row that points at others. */
const chainAndCopy = /^((?:(?:using|with) [^.,;:]{1,30},?\s+)?(?:foundation\b[^:.]{0,12}:\s*)?(?:(?:make|work|begin with|start with)\s+)?(?:ch(?:ain)?\s+\d[^.;,]*|\d+[^.;,]*\bch(?:ains?)?)(?:[.;,]|(?=\s+and\b)))\s+(?:and\s+)?(?:then\s+)?((?:work|follow|make|rep(?:eat)?|as|like)\s+(?:(?:as|like|in|the|same|way|exactly|given|for)\s+)*(?:the\s+)?(?:rows?|rnds?|rounds?|\d+(?:st|nd|rd|th)|\p{Lu})[^]*)$/iu

/**
 * Cuts a block of rows into its entries. A line without a label goes on with the row above, unless it can only be a row or a
 * remark of its own.
 */
export function splitRows(text: string, block: Span, sizes: number): readonly RowsEntry[] {
  const entries: RowsEntry[] = []
  const contentOf = ({ start, end }: Span): string => text.slice(start, end)
  const written = lines(text, block).filter((line) => contentOf(line) !== '' && !comment.test(contentOf(line)))
  const labels = written.map((line) => (between.test(contentOf(line)) ? undefined : readLabel(contentOf(line), line.start, sizes)))
  for (const [index, line] of written.entries()) {
    const content = contentOf(line)
    const above = entries.at(-1)
    const last = above?.kind === 'row' && !isBare(above) ? above : undefined
    const heads = isHeading(content, { above: last && contentOf(last.span), labelled: labels[index + 1] !== undefined })
    const label = heads && isUnnumbered(labels[index], line) ? undefined : labels[index]
    const remark = between.test(content) || heads && !label
    const copy = label ? undefined : chainAndCopy.exec(content)
    if (copy && (!above || above.kind === 'between')) {
      const [from, chain] = [line.end - copy[2]!.length, trimmed(text, line.start, line.start + copy[1]!.length)]
      entries.push({ kind: 'row', text: chain, span: chain }, { kind: 'row', text: { start: from, end: line.end }, span: { start: from, end: line.end } })
    } else if (label) entries.push({ kind: 'row', label, text: trimmed(text, label.end, line.end), span: line })
    else if (remark) entries.push({ kind: 'between', span: line })
    else if (!above || above.kind === 'between' || ownRow.test(content)) entries.push({ kind: 'row', text: line, span: line })
    else entries[entries.length - 1] = { ...above, text: { start: above.text.start, end: line.end }, span: { start: above.span.start, end: line.end } }
  }
  return entries
}

/** A label of which the line has not said more yet: `Row 5:` with its text on the next line. */
const isBare = ({ text }: Extract<RowsEntry, { kind: 'row' }>): boolean => text.start === text.end

/** `Decrease rounds:` on a line of its own names no row. */
const isUnnumbered = (label: RowLabel | undefined, line: Span): boolean => label !== undefined && label.numbers.length === 0 && label.end === line.end

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
