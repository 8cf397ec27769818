import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { rowName, tallyOf } from './row-words.ts'

/** A row's total must be what the row makes. A row that says no total is never wrong. */
export function totalMismatch({ source, row }: RowFacts): Diagnostic | undefined {
  const { says } = row
  if (!says || row.agreement.total) return undefined
  const said = says.count ?? Object.values(says.kinds).reduce((sum, number) => sum + number, 0)
  // A total that tells the closing slip stitch with the stitches is answered in its own terms.
  const closing = says.closing && says.count !== undefined ? 1 : 0
  const [count, makes] = [said + closing, row.makes + closing]
  return {
    code: 'total-mismatch',
    message: `${rowName(row)} makes ${counted(makes, 'stitch')}${closing ? ' with the closing slip stitch' : ''}, but its total says ${count}`,
    primary: { span: says.span, text: `says ${count}, makes ${makes}` },
    secondary: [],
    tally: tallyOf(source, row),
  }
}
