import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { stitchNamed } from '../../stitches/terms.ts'
import type { Span } from '../../text/span.ts'
import { allWords, placeOfKey, type SenseFacts } from './sense-facts.ts'

interface Use {
  readonly word: string
  readonly means: string
  readonly span: Span
}

/** One short word for two things: `MC` for the main colour and the magic circle, `sh` for two stitches, a stitch by another's name. */
export function abbreviationTwoMeanings(facts: SenseFacts): readonly Diagnostic[] {
  const { stitches, materials, terms } = facts.pattern
  const uses: readonly Use[] = [
    ...stitches.map(({ abbr, name }, index) => ({ word: abbr, means: name ?? 'a stitch of its own', span: placeOfKey(facts, `stitches.${index}.abbr`, `stitches.${index}`) })),
    ...(materials?.yarns ?? []).flatMap(({ letter }, index) => (letter === undefined ? [] : [{ word: letter, means: `yarn ${letter}`, span: placeOfKey(facts, `materials.yarns.${index}.letter`) }])),
  ]
  const twice = uses.flatMap((use, index): readonly Diagnostic[] => {
    const before = uses.slice(0, index).find(({ word }) => word.toLowerCase() === use.word.toLowerCase())
    return before ? [told(use, before.means, [{ span: before.span, text: before.means }])] : []
  })
  const asPlain = stitches.flatMap(({ abbr, name }, index): readonly Diagnostic[] => {
    const plain = stitchNamed(abbr.toLowerCase(), terms)
    const here = terms === 'US' ? plain?.us : plain?.uk
    // Textured stitches differ from designer to designer and are there to be defined; plain ones are the trade's.
    if (!plain || here !== abbr || !/^(?:sl st|ss|sc|hdc|htr|dc|tr|dtr|trtr|ttr)$/.test(abbr)) return []
    const usual = plain.name[terms === 'US' ? 'us' : 'uk']
    return name !== undefined && name.toLowerCase() === usual.toLowerCase() ? [] : [told({ word: abbr, means: name ?? 'a stitch of its own', span: placeOfKey(facts, `stitches.${index}.abbr`) }, usual, [])]
  })
  const ring = /\b(?:in|into|make an?|work an?|begin with an?|start with an?) (MC|MR)\b/.exec(allWords(facts))
  const letter = uses.find(({ word, means }) => ring !== null && word === ring[1] && means.startsWith('yarn'))
  return [...twice, ...asPlain, ...(letter ? [told(letter, `a ring (\`${ring![0]}\`)`, [])] : [])]
}

function told({ word, means, span }: Use, other: string, secondary: Diagnostic['secondary']): Diagnostic {
  return { code: 'abbreviation-two-meanings', message: `\`${word}\` stands for two things: ${other} and ${means}`, primary: { span, text: means }, secondary }
}
