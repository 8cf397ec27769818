import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { edgesNote } from './edge-words.ts'
import { belowName, rowName, tallyOf } from './row-words.ts'

/** A row cannot work over more than the row below holds out to it. */
export function rowOverruns({ source, row, below }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'overrun')
  if (!trouble) return undefined
  if (trouble.what) {
    return {
      code: 'row-overruns',
      message: `${rowName(row)} asks for ${counted(trouble.wants, trouble.what)} here, and ${trouble.offers === 0 ? 'there is none' : `only ${counted(trouble.offers, trouble.what)} ${trouble.offers === 1 ? 'is' : 'are'} left`}`,
      primary: { span: trouble.span, text: `the edge has ${trouble.offers}` },
      secondary: [],
      tally: tallyOf(source, row),
      ...edgesNote(row),
    }
  }
  const more = trouble.wants - trouble.offers
  if (more <= 0) {
    return {
      code: 'row-overruns',
      message: `${rowName(row)} asks for more here than is left of ${belowName(below)}`,
      primary: { span: trouble.span, text: `${belowName(below)} runs out here` },
      secondary: below?.says && !row.along ? [{ span: below.says.span, text: `${rowName(below)} makes ${below.makes}` }] : [],
      tally: tallyOf(source, row),
      ...edgesNote(row),
    }
  }
  return {
    code: 'row-overruns',
    message: `${rowName(row)} works over ${counted(trouble.wants, 'stitch')}, ${more} more than ${belowName(below)} holds out to it`,
    primary: { span: trouble.span, text: `${belowName(below)} runs out here: it holds ${trouble.offers}` },
    secondary: below?.says ? [{ span: below.says.span, text: `${rowName(below)} makes ${below.makes}` }] : [],
    tally: tallyOf(source, row),
  }
}
