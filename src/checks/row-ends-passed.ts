import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { edgesNote, rowEnds } from './edge-words.ts'
import { rowName, tallyOf } from './row-words.ts'

/** A border that goes from stitch to stitch passes the ends of rows at a step; a whole side passed in silence is a side forgotten. */
export function rowEndsPassed({ source, row }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'row-ends-passed')
  if (!trouble) return undefined
  const { gap } = trouble
  return {
    code: 'row-ends-passed',
    message: `${rowName(row)} goes past ${counted(trouble.count, 'row-end')} and says nothing of ${trouble.count === 1 ? 'it' : 'them'}`,
    primary: { span: trouble.span, text: gap?.after ? `goes on here, past the ${rowEnds(gap.from, gap.to)}` : `passes ${gap ? `the ${rowEnds(gap.from, gap.to)}` : counted(trouble.count, 'row-end')}` },
    secondary: gap?.after ? [{ span: gap.after, text: 'before them it works here' }] : [],
    tally: tallyOf(source, row),
    ...edgesNote(row),
  }
}
