import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { edgesNote } from './edge-words.ts'
import { rowName, tallyOf } from './row-words.ts'

/** A border that goes from stitch to stitch passes the ends of rows at a step; a whole side passed in silence is a side forgotten. */
export function rowEndsPassed({ source, row }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'row-ends-passed')
  if (!trouble) return undefined
  return {
    code: 'row-ends-passed',
    message: `${rowName(row)} goes past ${counted(trouble.count, 'row-end')} and says nothing of ${trouble.count === 1 ? 'it' : 'them'}`,
    primary: { span: trouble.span, text: `passes ${counted(trouble.count, 'row-end')}` },
    secondary: [],
    tally: tallyOf(source, row),
    ...edgesNote(row),
  }
}
