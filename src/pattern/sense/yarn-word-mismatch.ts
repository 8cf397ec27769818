import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { yarnWeightLabel } from '../../measures/yarn-weights.ts'
import { denies, sentencesOf, spanOf } from './passages.ts'
import { placeOfKey, type SenseFacts } from './sense-facts.ts'

/** Names over the counter on which shops agree, and the category of the published table. */
const names: readonly (readonly [form: RegExp, weight: number])[] = [
  [/\b(?:DK|light worsted)(?:[- ]weight)?\b/, 3], [/(?<!light )\b(?:worsted|aran)(?:[- ]weight)?\b/i, 4], [/(?<!super )\b(?:bulky|chunky)(?:[- ]weight)?\b/i, 5], [/\bsuper (?:bulky|chunky)\b/i, 6],
]

/** The text names a yarn of another weight than the materials list. Told once; other yarns to put in its place are nobody's slip. */
export function yarnWordMismatch(facts: SenseFacts): readonly Diagnostic[] {
  const yarns = facts.pattern.materials?.yarns ?? []
  const weights = new Set(yarns.flatMap(({ weight }) => weight ?? []))
  if (weights.size === 0) return []
  for (const passage of facts.prose.filter(({ kind }) => kind === 'summary' || kind === 'body' || kind === 'note')) {
    for (const sentence of sentencesOf(passage)) {
      if (denies(sentence.text) || /\b(?:or|any|other|another|substitut\w*|larger|smaller|thicker|thinner|double|doubled|strands?|scrap|also|between|than|like|called|UK|US)\b/i.test(sentence.text)) continue
      const found = names.flatMap(([form, weight]) => {
        const match = form.exec(sentence.text)
        return match ? [{ match, weight }] : []
      })
      const [only, ...others] = found
      if (!only || others.length > 0 || weights.has(only.weight)) continue
      const listed = yarns.findIndex(({ weight }) => weight !== undefined)
      return [{
        code: 'yarn-word-mismatch',
        message: `the text names ${only.match[0]} yarn, but the materials list ${yarnWeightLabel(yarns[listed]!.weight!)}`,
        primary: { span: spanOf(sentence, only.match), text: `weight ${only.weight}` },
        secondary: [{ span: placeOfKey(facts, `materials.yarns.${listed}.weight`), text: `weight ${yarns[listed]!.weight}` }],
      }]
    }
  }
  return []
}
