import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { RowFacts } from './facts.ts'
import { rowName, shortened } from './row-words.ts'
import { slipOfPen } from './slip-of-pen.ts'

/** A row that is written wrong, so that nobody can count it: a bracket that is not closed, a word with a slip of the pen. */
export function rowUnreadable(facts: RowFacts): Diagnostic | undefined {
  const { source, row } = facts
  const unread = row.troubles.filter((found) => found.kind === 'unreadable')
  const trouble = unread.find(({ broken }) => broken) ?? unread[0]
  const slip = trouble && slipOfPen(facts, trouble.span)
  if (!trouble || !slip && !trouble.broken) return undefined
  return {
    code: 'row-unreadable',
    message: `${rowName(row)} has words that no count can be made of: \`${shortened(source, trouble.span)}\``,
    primary: { span: slip?.span ?? trouble.span, text: 'not understood' },
    secondary: [],
    ...(slip && { hint: { text: `did you mean \`${slip.meant}\`?` } }),
    note: 'the row is not counted; the next one is counted on what this one says',
  }
}
