import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { RowFacts } from './facts.ts'
import { edgesNote } from './edge-words.ts'
import { belowName, rowName, tallyOf } from './row-words.ts'

/** A row can work into a space, a ring or a chain only where the row below has one; a border only into what the edge has. */
export function placeMissing({ source, row, below }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'no-such-place')
  if (!trouble) return undefined
  if (row.along) {
    return {
      code: 'place-missing',
      message: `${rowName(row)} works into ${trouble.what}, but the edge that it goes along has none`,
      primary: { span: trouble.span, text: 'no such place is left here' },
      secondary: [],
      tally: tallyOf(source, row),
      ...edgesNote(row),
    }
  }
  return {
    code: 'place-missing',
    message: `${rowName(row)} works into ${trouble.what}, but ${belowName(below)} has none`,
    primary: { span: trouble.span, text: `no such place is there` },
    secondary: below?.says ? [{ span: below.says.span, text: `${rowName(below)} makes this` }] : [],
  }
}
