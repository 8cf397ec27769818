import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { rowName, tallyOf } from './row-words.ts'

/** A number of stitches along an edge, and a rate beside it that comes to another. */
export function rateMismatch({ source, row }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'rate-apart')
  if (!trouble) return undefined
  return {
    code: 'rate-mismatch',
    message: `${rowName(row)} works ${counted(trouble.told, 'stitch')} along the edge, but at its rate the edge takes ${trouble.comes}`,
    primary: { span: trouble.span, text: `says ${trouble.told}, the rate comes to ${trouble.comes}` },
    secondary: [],
    tally: tallyOf(source, row),
  }
}
