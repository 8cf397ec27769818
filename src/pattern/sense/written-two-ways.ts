import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { spanOf, type Passage } from './passages.ts'
import { toPublish, type SenseFacts } from './sense-facts.ts'

interface Choice {
  readonly ways: readonly (readonly [shown: string, form: RegExp])[]
  readonly in: 'rows' | 'all'
}

/** Things that a style sheet writes one way. Only what is the same word in two spellings stands here. */
const choices: readonly Choice[] = [
  { in: 'rows', ways: [['rep', /\brep\b/gi], ['repeat', /\brepeat\b/gi]] },
  { in: 'rows', ways: [['sk', /\bsk\b/gi], ['skip', /\bskip\b/gi]] },
  { in: 'rows', ways: [['Rnd', /^rnds?\b/gi], ['Round', /^rounds?\b/gi]] },
  { in: 'rows', ways: [[') 6 times', /[)\]]\s*\d+ times\b/gi], [') x 6', /[)\]]\s*[x×]\s*\d/gi]] },
  { in: 'rows', ways: [['(6)', /\(\d+(?: (?:sts?|sc|hdc|dc|tr))?\)\s*$/gi], ['[6]', /\[\d+(?: (?:sts?|sc|hdc|dc|tr))?\]\s*$/gi]] },
  { in: 'all', ways: [['color', /\bcolors?\b/gi], ['colour', /\bcolours?\b/gi]] },
  { in: 'all', ways: [['center', /\bcenters?\b/gi], ['centre', /\bcentres?\b/gi]] },
  { in: 'all', ways: [['gray', /\bgray\b/gi], ['grey', /\bgrey\b/gi]] },
]

/** One word written in two ways. Told once a word, at the first of the rarer spelling. */
export function writtenTwoWays(facts: SenseFacts): readonly Diagnostic[] {
  if (!toPublish(facts)) return []
  return choices.flatMap((choice): readonly Diagnostic[] => {
    const passages = choice.in === 'rows' ? facts.rows : [...facts.rows, ...facts.prose]
    const found = choice.ways.map(([shown, form]) => ({ shown, matches: passages.flatMap((passage) => matchesIn(passage, form)) }))
    if (found.some(({ matches }) => matches.length === 0)) return []
    const [rare, usual] = found.toSorted((a, b) => a.matches.length - b.matches.length)
    return [{
      code: 'written-two-ways',
      message: `\`${usual!.shown}\` is written ${usual!.matches.length} times and \`${rare!.shown}\` ${rare!.matches.length === 1 ? 'once' : `${rare!.matches.length} times`}`,
      primary: { span: rare!.matches[0]!, text: `\`${rare!.shown}\`` },
      secondary: [{ span: usual!.matches[0]!, text: `\`${usual!.shown}\`` }],
    }]
  })
}

function matchesIn(passage: Passage, form: RegExp) {
  return [...passage.text.matchAll(form)].map((match) => spanOf(passage, match))
}
