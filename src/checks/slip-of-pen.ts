import { nearest, slipsBetween } from '../diagnostics/nearest.ts'
import { isReadWhole } from '../fabric/readable.ts'
import type { Span } from '../text/span.ts'
import type { RowFacts } from './facts.ts'
import { nearWords } from './near-words.ts'

/** A word as it is written and as it was likely meant. */
export interface SlipOfPen {
  readonly span: Span
  readonly meant: string
}

// The words that rows are made of beside the stitches: the trade's usual ones (common practice, no source).
const wordsOfRows = [
  'across', 'again', 'along', 'around', 'back', 'before', 'beginning', 'behind', 'between', 'both', 'chain', 'center', 'centre', 'corner', 'corners', 'decrease', 'down', 'each', 'edge', 'end', 'ends', 'even', 'evenly', 'every',
  'fasten', 'first', 'following', 'foundation', 'from', 'front', 'half', 'hook', 'increase', 'into', 'join', 'last', 'leave', 'leaving', 'left', 'loop', 'loops', 'magic', 'miss', 'next', 'once', 'only', 'over', 'place', 'rejoin', 'remaining',
  'repeat', 'rest', 'right', 'ring', 'round', 'row', 'row-end', 'rows', 'same', 'second', 'side', 'skip', 'slip', 'space', 'spaces', 'starting', 'stitch', 'stitches', 'third', 'times', 'together', 'turn', 'turning', 'twice', 'underside', 'unworked', 'with', 'work', 'working', 'yarn',
]

/** The word of a stretch that is not understood which, with one slip mended, lets the whole row be read. `increasing` is no slip of `increase`. */
export function slipOfPen({ source, row, lexicon }: RowFacts, unread: Span): SlipOfPen | undefined {
  const { start, end } = row.written.text
  if (unread.start < start || unread.end > end) return undefined
  for (const found of source.text.slice(unread.start, unread.end).matchAll(/[a-z]+/gi)) {
    const [word] = found
    const meant = word.length > 2 && !wordsOfRows.includes(word.toLowerCase()) && !nearWords.has(word.toLowerCase()) ? nearest(word, wordsOfRows) : undefined
    if (meant === undefined || slipsBetween(word.toLowerCase(), meant) !== 1) continue
    const span = { start: unread.start + found.index, end: unread.start + found.index + word.length }
    const text = source.text.slice(0, span.start) + meant + source.text.slice(span.end)
    if (isReadWhole(text, start, end + meant.length - word.length, lexicon)) return { span, meant }
  }
  return undefined
}
