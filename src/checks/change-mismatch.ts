import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { signed } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { rowName, tallyOf } from './row-words.ts'

/** `(+6)` must be the difference between what this row makes and what the row before made. */
export function changeMismatch({ source, row, before }: RowFacts): Diagnostic | undefined {
  const { says } = row
  if (!says || says.change === undefined || row.agreement.change || !before) return undefined
  const change = row.makes - before.makes
  return {
    code: 'change-mismatch',
    message: `${rowName(row)} changes the count by ${signed(change)}, but it says ${signed(says.change)}`,
    primary: { span: says.changeSpan ?? says.span, text: `says ${signed(says.change)}, is ${signed(change)}` },
    secondary: [],
    tally: tallyOf(source, row),
    note: `${rowName(before)} makes ${before.makes}, ${rowName(row)} makes ${row.makes}`,
  }
}
