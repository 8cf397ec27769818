import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { allWords, placeOfKey, toPublish, type SenseFacts } from './sense-facts.ts'

const told = /\b(?:weave|weaving|woven|bury|burying|darn|hide|sew in|run in|secure|neaten)\b|\b(?:ends|tails?)\b/i

/** A pattern that is to be published and says nowhere what becomes of the ends. */
export function finishingUnsaid(facts: SenseFacts): readonly Diagnostic[] {
  if (!toPublish(facts) || facts.pattern.body.children.length === 0 || told.test(allWords(facts))) return []
  return [{ code: 'finishing-unsaid', message: 'nothing says what becomes of the yarn ends', primary: { span: placeOfKey(facts, 'title'), text: 'no word of ends' }, secondary: [] }]
}
