import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { RowFacts } from './facts.ts'
import { rowName, shortened } from './row-words.ts'

/** Words that say where, in a way that is not known: the row comes out without them, which proves the count but not the place. */
export function wordsPassedOver({ source, row }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'words-passed-over')
  if (!trouble) return undefined
  return {
    code: 'words-passed-over',
    message: `${rowName(row)} comes out without these words, which are not understood: \`${shortened(source, trouble.span)}\``,
    primary: { span: trouble.span, text: 'passed over' },
    secondary: [],
    note: 'they count nothing and name no stitch; if they tell where the row lies, that was not looked at',
  }
}
