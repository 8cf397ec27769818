import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { belowName, rowName, tallyOf } from './row-words.ts'

/** A row cannot work over more than the row below holds out to it. */
export function rowOverruns({ source, row, before }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'overrun')
  if (!trouble) return undefined
  const more = trouble.wants - trouble.offers
  return {
    code: 'row-overruns',
    message: `${rowName(row)} works over ${counted(trouble.wants, 'stitch')}, ${more} more than ${belowName(before)} holds out to it`,
    primary: { span: trouble.span, text: `${belowName(before)} runs out here: it holds ${trouble.offers}` },
    secondary: before?.says ? [{ span: before.says.span, text: `${rowName(before)} makes ${before.makes}` }] : [],
    tally: tallyOf(source, row),
  }
}
