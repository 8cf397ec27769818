import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import { placeOfKey, type SenseFacts } from './sense-facts.ts'

/** A yarn without its weight, fibre or ball cannot be bought, nor another put in its place. What no yarn has is told as missing to publish. */
export function yarnDetailsMissing(facts: SenseFacts): readonly Diagnostic[] {
  return (facts.pattern.materials?.yarns ?? []).flatMap((yarn, index): readonly Diagnostic[] => {
    const missing = (['weight', 'fibre', 'ball'] as const).filter((key) => yarn[key] === undefined).map((key) => `\`${key}\``)
    if (yarn.needs.length === 0 && facts.pattern.materials?.yarns.some(({ needs }) => needs.length > 0)) missing.push('`needs`')
    if (missing.length === 0) return []
    return [{
      code: 'yarn-details-missing',
      message: `${yarn.letter === undefined ? 'the yarn' : `yarn ${yarn.letter}`} is listed without ${listOf(missing)}`,
      primary: { span: placeOfKey(facts, `materials.yarns.${index}`), text: `lacks ${listOf(missing)}` },
      secondary: [],
    }]
  })
}
