import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { RowFacts } from './facts.ts'
import { rowName } from './row-words.ts'

/** A row that changes the count should state it: it is the only place where a maker can check herself (common practice, no source). */
export function countMissing({ row, before }: RowFacts): Diagnostic | undefined {
  if (row.says || row.written.totalled || row.verdict !== 'adds-up' || !before || before.uncounted || row.makes === before.makes || row.makes === 0) return undefined
  // A loop to hang it by: a chain, and the slip stitch that fastens it.
  if (row.leaves > 0 && row.worksOver <= 1 && Object.keys(row.kinds).every((kind) => kind === 'sl st')) return undefined
  // A row that repeats one with a total makes what that one says.
  if (row.written.copiesTotal === row.makes) return undefined
  if (before.kinds['ch'] !== undefined && row.number === undefined) return undefined
  return {
    code: 'count-missing',
    message: `${rowName(row)} makes ${counted(row.makes, 'stitch')}, ${rowName(before)} made ${before.makes}, and no total is stated`,
    primary: { span: row.written.label.end > row.written.label.start ? row.written.label : row.written.text, text: `makes ${row.makes}` },
    secondary: [],
  }
}
