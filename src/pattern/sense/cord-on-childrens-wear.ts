import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { denies, sentencesOf, spanOf } from './passages.ts'
import { labelAt, type SenseFacts } from './sense-facts.ts'

const child = /\b(?:baby|babies|newborns?|infants?|toddlers?|child(?:ren)?(?:[’']s)?|kid(?:s)?|girl(?:s)?|boy(?:s)?|\d+\s?(?:-\s?\d+\s?)?(?:months?|mths?|years?|yrs?))\b/i
const cord = /\b(?:drawstrings?|cords?|ribbons?|ties(?! (?:in|up|off|together|with)\b)|tie strings?|neck ties?|halter)\b/i
const atNeck = /\b(?:neck(?:line|band)?|hood|bonnet|throat|chin|ear ?flaps?)\b/i

/** A cord or tie at the neck or hood of something for a child. Hats with ties are outside the rules and inside the thinking. */
export function cordOnChildrensWear(facts: SenseFacts): readonly Diagnostic[] {
  const { madeFor, sizes, title, summary } = facts.pattern
  if (madeFor !== 'garment' && madeFor !== 'baby' || !child.test(`${title} ${summary ?? ''} ${sizes.join(' ')} ${madeFor === 'baby' ? 'baby' : ''}`)) return []
  for (const passage of [...facts.rows, ...facts.prose]) {
    for (const sentence of sentencesOf(passage)) {
      const match = cord.exec(sentence.text)
      if (!match || !atNeck.test(sentence.text) || denies(sentence.text, match.index) || /\bribbon (?:st|stitch|yarn)\b/i.test(sentence.text)) continue
      return [{
        code: 'cord-on-childrens-wear',
        message: `\`${match[0]}\` stands at the neck or hood of something for a child`,
        primary: { span: spanOf(sentence, match), text: 'can catch or strangle' },
        secondary: labelAt(facts, 'sizes', 'sizes for children'),
        note: 'no cords at hood or neck: outerwear in US sizes 2T to 12 (16 CFR 1120, ASTM F1816), clothes up to 7 years in Europe (EN 14682); a button or a flap does the same; rules differ and change',
      }]
    }
  }
  return []
}
