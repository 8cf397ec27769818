import { nearest } from '../diagnostics/nearest.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { allSpellings } from '../stitches/terms.ts'
import type { RowFacts } from './facts.ts'
import { rowName } from './row-words.ts'

/** A word that stands where a stitch should and is none: a slip of the pen, or a special stitch that is not defined. */
export function stitchUnknown({ row, lexicon }: RowFacts): Diagnostic | undefined {
  const trouble = row.troubles.find((found) => found.kind === 'unknown-stitch')
  if (!trouble) return undefined
  const meant = nearest(trouble.word, allSpellings(lexicon.terms))
  return {
    code: 'stitch-unknown',
    message: `${rowName(row)} uses \`${trouble.word}\`, which is no stitch of this pattern or of the trade`,
    primary: { span: trouble.span, text: 'no known stitch' },
    secondary: [],
    ...(meant && { hint: { text: `did you mean \`${meant}\`?` } }),
    note: 'a special stitch is defined under `stitches` in the front-matter',
  }
}
