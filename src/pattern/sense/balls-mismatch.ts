import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { counted } from '../../diagnostics/words.ts'
import { ballsToBuy } from '../../measures/yarn.ts'
import { denies, numberForm, numberFrom, sentencesOf, spanOf } from './passages.ts'
import { labelAt, onlyIn, plainNumber, sizeCount, type SenseFacts } from './sense-facts.ts'

const balls = new RegExp(String.raw`\b(${numberForm})((?:\s*[([]\s*\d{1,3}(?:\s*,\s*\d{1,3})*\s*[)\]])?)\s+(?:\d+ g )?(?:balls?|skeins?|hanks?)\b(?: of (?:yarn )?([A-Z])(?![\p{L}\d]))?`, 'giu')

/** Balls that the text gives, and that the grams of the materials do not fit into. More than are needed is let pass: some like a spare one. */
export function ballsMismatch(facts: SenseFacts): readonly Diagnostic[] {
  const yarns = facts.pattern.materials?.yarns ?? []
  return facts.prose.flatMap((passage) => sentencesOf(passage)).flatMap((sentence): readonly Diagnostic[] => {
    const [match, ...others] = [...sentence.text.matchAll(balls)]
    if (!match || others.length > 0 || denies(sentence.text) || /\b(?:each|every|per|block|square|motif|other|larger|smaller|from|left over)\b/i.test(sentence.text)) return []
    const index = match[3] === undefined ? (yarns.length === 1 ? 0 : -1) : yarns.findIndex(({ letter }) => letter === match[3])
    const yarn = yarns[index]
    const told = [numberFrom(match[1]!), ...(match[2]!.match(/\d+/g) ?? []).map(Number)]
    if (!yarn?.ball || yarn.needs.length === 0 || told.length > 1 && told.length !== sizeCount(facts)) return []
    const { ball, needs } = yarn
    const needed = Array.from({ length: sizeCount(facts) }, (_, size) => ballsToBuy(needs[size] ?? needs[0]!, ball))
    const short = needed.flatMap((count, size) => ((told[size] ?? told[0]!) < count ? [size] : []))
    // One number for several sizes may be that of the smallest.
    if (short.length === 0 || told.length === 1 && short.length < needed.length) return []
    const size = short[0]!
    return [{
      code: 'balls-mismatch',
      message: `the text gives ${counted(told[size] ?? told[0]!, 'ball')}${told.length > 1 ? ` for size ${facts.pattern.sizes[size]}` : ''}, but ${plainNumber(needs[size] ?? needs[0]!)} g in balls of ${plainNumber(ball.grams)} g are ${needed[size]}`,
      primary: { span: spanOf(sentence, match), text: `${needed[size]} to buy` },
      secondary: labelAt(facts, `materials.yarns.${index}.needs`, 'the grams'),
      ...(told.length > 1 && onlyIn(facts, short)),
    }]
  })
}
