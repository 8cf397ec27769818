import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { rowName } from './row-words.ts'

/** A motif that is joined as it is worked meets its neighbour space by space. */
export function joinsMismatch({ row }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'neighbour-apart')
  if (!trouble) return undefined
  const { joins, holds, piece } = trouble
  return {
    code: 'joins-mismatch',
    message: `${rowName(row)} joins a side in ${counted(joins, 'space')}, but a side of ${piece === '' ? 'the motif before' : piece} has ${holds}`,
    primary: { span: trouble.span, text: `the first of ${joins} on this side` },
    secondary: [],
  }
}
