import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { placeOfKey, type SenseFacts } from './sense-facts.ts'

/** A stitch that the pattern defines without saying how it is worked, in a pattern that is to be published. */
export function specialStitchIncomplete(facts: SenseFacts): readonly Diagnostic[] {
  if (facts.pattern.version === undefined) return []
  return facts.pattern.stitches.flatMap(({ abbr, how }, index): readonly Diagnostic[] => (how === undefined
    ? [{ code: 'special-stitch-incomplete', message: `\`${abbr}\` is defined, but not how it is worked`, primary: { span: placeOfKey(facts, `stitches.${index}.abbr`, `stitches.${index}`), text: 'no `how`' }, secondary: [] }]
    : []))
}
