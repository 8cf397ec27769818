import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { RowFacts } from './facts.ts'
import { rowName, shortened } from './row-words.ts'

/** A part of a row that says nothing the engine knows; the row is then not counted, and that is said. */
export function rowUnreadable({ source, row }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'unreadable')
  if (!trouble) return undefined
  return {
    code: 'row-unreadable',
    message: `${rowName(row)} has words that no count can be made of: \`${shortened(source, trouble.span)}\``,
    primary: { span: trouble.span, text: 'not understood' },
    secondary: [],
    note: 'the row is not counted; the next one is counted on what this one says',
  }
}
