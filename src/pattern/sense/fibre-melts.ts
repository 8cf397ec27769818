import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import { denies, sentencesOf } from './passages.ts'
import { labelAt, placeOfKey, type SenseFacts } from './sense-facts.ts'

const melting = /\b(?:acrylic|nylon|polyamide|polyester|microfib(?:re|er))\b/gi
const hot = /\b(?:hot|heat|oven|pan|pot ?holders?|pots?|trivets?|stove|hob|baking)\b/i

/** Yarn that melts, in something that is made to hold hot pans. A scrubber of the same yarn is right. */
export function fibreMelts(facts: SenseFacts): readonly Diagnostic[] {
  const { madeFor, materials, title } = facts.pattern
  if (madeFor !== 'kitchen' || !hot.test(title) && !facts.prose.some((passage) => sentencesOf(passage).some(({ text }) => hot.test(text) && !denies(text)))) return []
  return (materials?.yarns ?? []).flatMap(({ fibre = '' }, index): readonly Diagnostic[] => {
    const found = [...new Set((fibre.match(melting) ?? []).map((word) => word.toLowerCase()))]
    if (found.length === 0) return []
    return [{
      code: 'fibre-melts',
      message: `the yarn holds ${listOf(found)}, which ${found.length === 1 ? 'melts' : 'melt'}, and the text speaks of heat`,
      primary: { span: placeOfKey(facts, `materials.yarns.${index}.fibre`), text: 'softens and melts' },
      secondary: labelAt(facts, 'made-for', 'made for the kitchen'),
      note: 'potholders and trivets are worked in all cotton or all wool (common practice)',
    }]
  })
}
