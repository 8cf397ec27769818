import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { RowFacts } from './facts.ts'
import { rowName, withoutStop } from './row-words.ts'

/** `Rep Row 3` needs a row 3 before it; a row cannot repeat itself. */
export function rowReferenceUnknown({ source, row }: RowFacts): Diagnostic | undefined {
  if (row.missing === undefined) return undefined
  const itself = row.missing === 'itself'
  return {
    code: 'row-reference-unknown',
    message: itself ? `${rowName(row)} refers to itself` : `${rowName(row)} refers to ${row.word} ${row.missing}, which does not stand before it`,
    primary: { span: withoutStop(source, row.written.text), text: itself ? 'takes in the row itself' : 'no such row before this one' },
    secondary: [],
  }
}
