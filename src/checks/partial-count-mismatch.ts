import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { rowName, tallyOf } from './row-words.ts'

const made = { 'so-far': 'has made so far', side: 'has made along this side', either: 'has made just before' }

/** A count in the middle of a row is where a maker stops to compare. */
export function partialCountMismatch({ source, row }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'stated-apart' || found.kind === 'places-apart' || found.kind === 'out-of-apart' || found.kind === 'sewn-apart')
  if (!trouble) return undefined
  if (trouble.kind === 'sewn-apart') return {
    code: 'partial-count-mismatch',
    message: trouble.along ? `${rowName(row)} closes and leaves open ${counted(trouble.one, 'row-end')} of ${trouble.other}` : `${rowName(row)} sews ${counted(trouble.one, 'place')} to ${trouble.other}`,
    primary: { span: trouble.span, text: `${trouble.one} and ${trouble.other}` },
    secondary: [],
  }
  if (trouble.kind === 'out-of-apart') return {
    code: 'partial-count-mismatch',
    message: `${rowName(row)} speaks of ${counted(trouble.says, trouble.what)} there, but ${trouble.there === 1 ? 'there is 1' : `there are ${trouble.there}`}`,
    primary: { span: trouble.span, text: `says ${trouble.says}, there ${trouble.there === 1 ? 'is' : 'are'} ${trouble.there}` },
    secondary: [],
  }
  if (trouble.kind === 'places-apart') return {
    code: 'partial-count-mismatch',
    message: `${rowName(row)} speaks of ${counted(trouble.says, trouble.what)} in its middle, but goes over ${trouble.worksOver} there`,
    primary: { span: trouble.span, text: `says ${trouble.says}, goes over ${trouble.worksOver}` },
    secondary: [],
    tally: tallyOf(source, row),
  }
  return {
    code: 'partial-count-mismatch',
    message: `${rowName(row)} speaks of ${counted(trouble.says, 'stitch')} in its middle, but ${made[trouble.scope]} ${trouble.makes}`,
    primary: { span: trouble.span, text: `says ${trouble.says}, makes ${trouble.makes}` },
    secondary: [],
    tally: tallyOf(source, row),
  }
}
