import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { spanOf } from './passages.ts'
import { labelAt, type SenseFacts } from './sense-facts.ts'

/** Names of yarn that buyers of the other terms do not know, and what theirs are. Beside the other name they are a help and no slip. */
const words: Readonly<Record<'US' | 'UK', readonly (readonly [form: RegExp, own: string])[]>> = {
  US: [[/\baran(?:[- ]weight)?\b/i, 'worsted'], [/\bdouble knit(?:ting)?\b/i, 'DK'], [/\b\d{1,2}[- ]ply\b/i, 'a weight category'], [/\bsuper chunky\b/i, 'super bulky']],
  UK: [[/\bworsted\b/i, 'aran'], [/\bfingering\b/i, '4-ply'], [/\bsuper bulky\b/i, 'super chunky']],
}

/** A name of yarn from the other side of the ocean. Told once a word. */
export function wordOfOtherMarket(facts: SenseFacts): readonly Diagnostic[] {
  const { terms } = facts.pattern
  return words[terms].flatMap(([form, own]): readonly Diagnostic[] => {
    for (const passage of facts.prose.filter(({ kind }) => kind === 'summary' || kind === 'body' || kind === 'note')) {
      const match = form.exec(passage.text)
      if (!match || /[A-Z]/.test(match[0]) || /\b(?:US|UK|USA|British|American)\b/.test(passage.text) || own !== 'a weight category' && new RegExp(String.raw`\b${own}\b`, 'i').test(passage.text)) continue
      return [{
        code: 'word-of-other-market',
        message: `the pattern is in ${terms} terms, but \`${match[0]}\` is a yarn word of the ${terms === 'US' ? 'UK' : 'US'}`,
        primary: { span: spanOf(passage, match), text: `in ${terms} print: ${own}` },
        secondary: labelAt(facts, 'terms', `says ${terms}`),
      }]
    }
    return []
  })
}
