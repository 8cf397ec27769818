import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { RowFacts } from './facts.ts'
import { belowName, rowName } from './row-words.ts'

/** A row can work into a space, a ring or a chain only where the row below has one. */
export function placeMissing({ row, before }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'no-such-place')
  if (!trouble) return undefined
  return {
    code: 'place-missing',
    message: `${rowName(row)} works into ${trouble.what}, but ${belowName(before)} has none`,
    primary: { span: trouble.span, text: `no such place is there` },
    secondary: before?.says ? [{ span: before.says.span, text: `${rowName(before)} makes this` }] : [],
  }
}
