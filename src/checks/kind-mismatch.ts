import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { KindSlip } from '../fabric/compare-total.ts'
import { wordFor, type Terms } from '../stitches/terms.ts'
import type { RowFacts } from './facts.ts'
import { rowName, tallyOf } from './row-words.ts'

/** Where the total is said kind by kind, each kind must come out: 16 dc and 7 spaces are not 16 dc and 8 spaces. */
export function kindMismatch({ source, row, lexicon }: RowFacts): Diagnostic | undefined {
  const slip = row.agreement.kindSlip
  if (!row.says || !slip || row.agreement.kinds || !row.agreement.total) return undefined
  const what = wordOf(slip, lexicon.terms)
  const told = (count: number): string => `${count} ${count === 1 && slip.sort !== 'stitch' ? what.replace(/^stitches/, 'stitch').replace(/s$/, '') : what}`
  return {
    code: 'kind-mismatch',
    message: `${rowName(row)} makes ${told(slip.makes)}, but its total says ${slip.says}`,
    primary: { span: row.says.span, text: `says ${told(slip.says)}, makes ${slip.makes}` },
    secondary: [],
    tally: tallyOf(source, row),
  }
}

function wordOf({ name, sort }: KindSlip, terms: Terms): string {
  if (sort === 'colour') return `stitches in ${name}`
  if (sort === 'group' || name === 'sh') return name === 'sh' ? 'shells' : `${name}s`
  if (sort === 'stitch') return wordFor(name, terms)
  return name === 'any' ? 'chain spaces' : name === 'chains' ? 'chains' : `${name} spaces`
}
