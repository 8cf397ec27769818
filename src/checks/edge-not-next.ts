import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { RowFacts } from './facts.ts'
import { edgeName, edgesNote } from './edge-words.ts'
import { rowName, tallyOf } from './row-words.ts'

/** A border that speaks of one edge while its hook stands at another has gone the other way round, or left an edge out. */
export function edgeNotNext({ source, row }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'other-edge')
  if (!trouble) return undefined
  return {
    code: 'edge-not-next',
    message: `${rowName(row)} goes on along ${edgeName(trouble.named)}, but the hook stands at ${edgeName(trouble.next)}`,
    primary: { span: trouble.span, text: `${edgeName(trouble.next)} comes next here` },
    secondary: [],
    tally: tallyOf(source, row),
    ...edgesNote(row),
  }
}
