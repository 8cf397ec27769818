import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { sentencesOf, spanOf } from './passages.ts'
import type { SenseFacts } from './sense-facts.ts'

/** Things that are made, the words of one line for much the same thing. */
const families: readonly RegExp[] = [
  /\b(?:hat|cap|beanie|bonnet|beret|crown|brim)s?\b/i, /\b(?:blanket|afghan|throw|coverlet)s?\b/i, /\b(?:cushion|pillow|bolster)s?\b/i,
  /\b(?:scarf|scarves|cowl|shawl|wrap|snood|stole|shawlette)s?\b/i, /\b(?:jumper|sweater|pullover|jersey|cardigan|jacket|top|tee|vest|waistcoat|tunic)s?\b/i,
  /\b(?:bag|tote|purse|pouch|basket|backpack)s?\b/i, /\b(?:sock|slipper|bootee|bootie|legwarmer)s?\b/i, /\b(?:mitten|mitt|glove|cuff)s?\b/i,
  /\b(?:coaster|mat|rug|runner|cloth|dishcloth|washcloth|doily|trivet|potholder|placemat|block|square|motif)s?\b/i,
  /\b(?:toy|doll|bear|rabbit|bunny|teddy|amigurumi|whale|seal)s?\b/i,
]

/** A sentence about another thing than the pattern's, once and nowhere else: text of another pattern that was left in. */
export function templateLeftover(facts: SenseFacts): readonly Diagnostic[] {
  const { title, summary, pieces, finished, seams } = facts.pattern
  const about = [title, summary ?? '', ...pieces.map(({ name, note }) => `${name} ${note ?? ''}`), ...finished.map(({ of }) => of ?? ''), ...seams.flatMap(({ join }) => join)].join(' ')
  const own = families.find((family) => family.test(about))
  if (!own) return []
  const words = facts.prose.map(({ text }) => text).join('\n')
  return facts.prose.filter(({ kind }) => kind === 'body').flatMap((passage) => sentencesOf(passage)).flatMap((sentence): readonly Diagnostic[] => {
    const match = /\b(?:your (?:finished |new )?|the finished )([a-z]+)\b/i.exec(sentence.text)
    const family = match && families.find((one) => new RegExp(`^${one.source}$`, 'i').test(match[1]!))
    if (!match || !family || family === own || family.test(about) || (words.match(new RegExp(family.source, 'gi')) ?? []).length > 1) return []
    return [{
      code: 'template-leftover',
      message: `the text says \`${match[0]}\`, but the pattern is of something else`,
      primary: { span: spanOf(sentence, match), text: `the only ${match[1]} in the text` },
      secondary: [],
    }]
  })
}
