import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import { stitchOf, wordFor } from '../stitches/terms.ts'
import type { RowFacts } from './facts.ts'
import { rowName, tallyOf } from './row-words.ts'

/** Where the total is said kind by kind, each kind must come out: 16 dc and 7 spaces are not 16 dc and 8 spaces. */
export function kindMismatch({ source, row, lexicon }: RowFacts): Diagnostic | undefined {
  const { says } = row
  if (!says || row.agreement.kinds || !row.agreement.total) return undefined
  const slip = firstSlip(row)
  if (!slip) return undefined
  const what = slip.space ? spaceWord(slip.name) : wordFor(slip.name, lexicon.terms)
  return {
    code: 'kind-mismatch',
    message: `${rowName(row)} makes ${slip.makes} ${what}, but its total says ${slip.says}`,
    primary: { span: says.span, text: `says ${slip.says} ${what}, makes ${slip.makes}` },
    secondary: [],
    tally: tallyOf(source, row),
  }
}

function firstSlip(row: WorkedRow): { readonly name: string; readonly says: number; readonly makes: number; readonly space: boolean } | undefined {
  for (const [name, says] of Object.entries(row.says?.kinds ?? {})) {
    const makes = Object.entries(row.kinds).reduce((sum, [kind, count]) => sum + (kind === name || stitchOf(kind)?.base === name ? count : 0), 0)
    if (makes !== says) return { name, says, makes, space: false }
  }
  const all = Object.values(row.spaces).reduce((sum, count) => sum + count, 0)
  for (const [name, says] of Object.entries(row.says?.spaces ?? {})) {
    const makes = name === 'any' ? all : (row.spaces[name] ?? 0)
    if (makes !== says) return { name, says, makes, space: true }
  }
  return undefined
}

function spaceWord(name: string): string {
  return name === 'any' ? 'chain spaces' : name === 'chains' ? 'chains' : `${name} spaces`
}
