import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { allWords, toPublish, type SenseFacts } from './sense-facts.ts'

const ends = /\b(?:fasten(?:ed|ing)?(?: it| them)? off|finish off|cut|break|carr(?:y|ied|ying)|drop(?:ped)?|strand(?:ed)?|floats?|leave (?:it|the yarn|[A-Z]\b)|run (?:it|[A-Z]) up|work(?:ing)? over (?:the )?(?:unused|other|resting))\b/i

/** The yarn is changed, and nothing says what becomes of the one that rests: cut, carried or dropped. Told once. */
export function yarnEndUnsaid(facts: SenseFacts): readonly Diagnostic[] {
  if (!toPublish(facts) || ends.test(allWords(facts))) return []
  const named = facts.pieces.flatMap(({ rows }) => rows).flatMap(({ yarns }) => yarns)
  const first = named[0]
  const second = named.find(({ yarn }) => yarn !== first?.yarn)
  if (!first || !second) return []
  return [{
    code: 'yarn-end-unsaid',
    message: `the yarn changes from ${first.yarn} to ${second.yarn}, but nothing says what becomes of ${first.yarn}`,
    primary: { span: second.span, text: `to ${second.yarn}` },
    secondary: [],
    note: 'a yarn that rests is cut, carried along or dropped until it is taken up again',
  }]
}
