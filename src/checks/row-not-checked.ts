import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { RowFacts } from './facts.ts'
import { rowName, withoutStop } from './row-words.ts'

/** What cannot be counted is never passed in silence. */
export function rowNotChecked({ source, row }: RowFacts): Diagnostic | undefined {
  if (row.verdict !== 'cannot-tell' || row.troubles.length > 0 || row.missing !== undefined || row.reason === 'the count of the row below is in doubt' || row.reason === 'the row below could not be counted') return undefined
  return {
    code: 'row-not-checked',
    message: `${rowName(row)} is not counted: ${row.reason ?? 'it cannot be told'}`,
    primary: { span: row.undecided ?? withoutStop(source, row.written.text), text: 'not counted' },
    secondary: [],
  }
}
