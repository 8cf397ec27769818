import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { edgesNote } from './edge-words.ts'
import { rowName } from './row-words.ts'

/** Along an edge one stitch more or fewer does not matter to a maker, if the other half does the same (common practice, no source). */
export function edgeOneOff({ row }: RowFacts): Diagnostic | undefined {
  if (!row.loose) return undefined
  const { by, holds, span } = row.loose
  return {
    code: 'edge-one-off',
    message: `${rowName(row)} says ${counted(row.makes, 'stitch')}, one ${by > 0 ? 'more' : 'fewer'} than the edge holds at an even rate`,
    primary: { span, text: `evenly comes to ${holds} in all` },
    secondary: row.says ? [{ span: row.says.span, text: `the total says ${row.makes}` }] : [],
    ...edgesNote(row),
  }
}
