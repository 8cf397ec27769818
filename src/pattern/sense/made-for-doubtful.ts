import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { Pattern } from '../pattern.ts'
import { denies, spanOf } from './passages.ts'
import { labelAt, type SenseFacts } from './sense-facts.ts'

interface Sign {
  readonly words: RegExp
  /** What `made-for` may then say. */
  readonly fits: readonly Pattern['madeFor'][]
  readonly likely: string
}

/** Words of a title or a summary that tell who or what a thing is for. */
const signs: readonly Sign[] = [
  { words: /\b(?:baby(?! (?:alpaca|camel|cashmere|llama|yak|yarn|wool|merino)\b)|babies|newborn|infant|cot blanket|pram blanket|teether|rattle|lovey|comforter)\b/i, fits: ['baby', 'toy', 'garment'], likely: 'baby' },
  { words: /\b(?:toy(?![ -]?(?:basket|bag|box|bin|hammock|storage|chest|net|tidy)\b)|doll(?![’']s (?:house|bed)\b)|teddy|plushie|softie|amigurumi)\b/i, fits: ['toy', 'baby', 'pet'], likely: 'toy' },
  { words: /\b(?:pot ?holder|oven (?:cloth|mitt|glove)|trivet|tea cosy|tea cozy|dishcloth)\b/i, fits: ['kitchen', 'home'], likely: 'kitchen' },
  { words: /\b(?:pot ?holder|oven (?:cloth|mitt|glove)|trivet)\b/i, fits: ['kitchen'], likely: 'kitchen' },
  { words: /\b(?:dog|cat|puppy|kitten) (?:coat|bed|jumper|sweater|toy|blanket|collar)\b/i, fits: ['pet'], likely: 'pet' },
]

/** `made-for` decides which cautions are printed; a baby's blanket that is said to be for the home goes out without them. */
export function madeForDoubtful(facts: SenseFacts): readonly Diagnostic[] {
  const { madeFor, title, places } = facts.pattern
  const titleSpan = places.get('title')
  if (madeFor === undefined || !titleSpan) return []
  const texts = [{ text: facts.pattern.source.text.slice(titleSpan.start, titleSpan.end), start: titleSpan.start, kind: 'summary' as const }, ...facts.prose.filter(({ kind }) => kind === 'summary')]
  for (const { words, fits, likely } of signs) {
    if (fits.includes(madeFor)) continue
    for (const passage of texts) {
      const match = words.exec(passage.text)
      if (!match || denies(passage.text)) continue
      return [{
        code: 'made-for-doubtful',
        message: `\`${match[0]}\` in the ${passage.text === title || passage.start === titleSpan.start ? 'title' : 'summary'} speaks for \`made-for: ${likely}\`, but the pattern says ${madeFor}`,
        primary: { span: spanOf(passage, match), text: `speaks for ${likely}` },
        secondary: labelAt(facts, 'made-for', `says ${madeFor}`),
        note: '`made-for` decides which cautions are printed',
      }]
    }
  }
  return []
}
