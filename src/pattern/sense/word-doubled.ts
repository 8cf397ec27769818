import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { spanOf } from './passages.ts'
import type { SenseFacts } from './sense-facts.ts'

/** Small words that never stand twice in a row: what remains when a sentence was mended in haste. */
const doubled = /(?<![\d½¼¾]\s?)(?<![\p{L}’'-])(the|an?|in|to|of|and|each|next|for|with|from|is|are|at|on|or|your|this|into|round|as)\s+\1(?![\p{L}’'-])/giu

/** The same small word twice in a row, in prose; rows are read word by word anyway. */
export function wordDoubled({ prose }: SenseFacts): readonly Diagnostic[] {
  return prose.flatMap((passage) => [...passage.text.matchAll(doubled)].map((match): Diagnostic => ({
    code: 'word-doubled',
    message: `\`${match[1]!.toLowerCase()}\` stands twice in a row`,
    primary: { span: spanOf(passage, match), text: 'twice' },
    secondary: [],
  })))
}
