import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { rowName, tallyOf } from './row-words.ts'

/** A row's total must be what the row makes. A row that says no total is never wrong. */
export function totalMismatch({ source, row }: RowFacts): Diagnostic | undefined {
  const { says } = row
  if (!says || row.agreement.total) return undefined
  const count = says.count ?? Object.values(says.kinds).reduce((sum, number) => sum + number, 0)
  return {
    code: 'total-mismatch',
    message: `${rowName(row)} makes ${counted(row.makes, 'stitch')}, but its total says ${count}`,
    primary: { span: says.span, text: `says ${count}, makes ${row.makes}` },
    secondary: [],
    tally: tallyOf(source, row),
  }
}
