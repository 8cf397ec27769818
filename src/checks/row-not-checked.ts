import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { PatternFacts, RowFacts } from './facts.ts'
import { rowName, shortened, withoutStop } from './row-words.ts'

/** What cannot be counted is never passed in silence, and never called wrong: the words may be right, and the engine's reading too small. */
export function rowNotChecked({ source, row }: RowFacts): Diagnostic | undefined {
  const unread = row.troubles.find((found) => found.kind === 'unreadable')
  if (unread) {
    return {
      code: 'row-not-checked',
      message: `${rowName(row)} is not counted: \`${shortened(source, unread.span)}\` is not understood`,
      primary: { span: unread.span, text: 'not understood' },
      secondary: [],
      note: 'it is to be counted by hand; the next one is counted on what this one says',
    }
  }
  if (row.verdict !== 'cannot-tell' || row.troubles.length > 0 || row.missing !== undefined || row.reason === 'the count of the row below is in doubt' || row.reason === 'the row below could not be counted') return undefined
  return {
    code: 'row-not-checked',
    message: `${rowName(row)} is not counted: ${row.reason ?? 'it cannot be told'}`,
    primary: { span: row.undecided ?? withoutStop(source, row.written.text), text: 'not counted' },
    secondary: [],
  }
}

/** A row that does not come out on a fabric that is in doubt is blamed for nothing; where nothing else is told either, it is told that it was not counted. */
export function rowInDoubt({ source, pieces }: PatternFacts): Diagnostic | undefined {
  const row = pieces.flatMap(({ rows }) => rows).find(({ verdict }) => verdict === 'cannot-tell')
  return row && {
    code: 'row-not-checked',
    message: `${rowName(row)} is not counted: how the pieces lie that it goes along is not known`,
    primary: { span: withoutStop(source, row.written.text), text: 'not counted' },
    secondary: [],
    note: 'it is to be counted by hand',
  }
}
