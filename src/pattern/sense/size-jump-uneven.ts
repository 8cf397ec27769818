import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { placeOfKey, plainNumber, type SenseFacts } from './sense-facts.ts'

/** A jump between two sizes more than three times the usual one, in a finished measurement: a number of another size, or a digit. */
export function sizeJumpUneven(facts: SenseFacts): readonly Diagnostic[] {
  const { sizes, finished } = facts.pattern
  if (sizes.length < 4) return []
  return finished.flatMap(({ what, is }, index): readonly Diagnostic[] => {
    const jumps = is.slice(1).map((cm, at) => cm - is[at]!)
    // A list that does not grow is told as out of order.
    if (is.length !== sizes.length || jumps.some((jump) => jump < 0)) return []
    const usual = jumps.toSorted((a, b) => a - b)[Math.floor(jumps.length / 2)]!
    const at = jumps.findIndex((jump) => jump > 3 * usual && usual > 0)
    if (at === -1) return []
    return [{
      code: 'size-jump-uneven',
      message: `the ${what} grows by ${plainNumber(jumps[at]!)} cm from ${sizes[at]} to ${sizes[at + 1]}, and by about ${plainNumber(usual)} cm between other sizes`,
      primary: { span: placeOfKey(facts, `finished.${index}.is.${at + 1}`, `finished.${index}.is`), text: `${plainNumber(jumps[at]!)} cm more than ${sizes[at]}` },
      secondary: [],
    }]
  })
}
