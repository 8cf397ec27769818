import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { placeOfKey, toPublish, type SenseFacts } from './sense-facts.ts'

const told = /\b(?:work(?:ed|s|ing)?|made|crocheted|begins?|begun|starts?|started|joined|spiral|flat|in (?:the )?rounds?|in rows|pieces?|top[- ]down|bottom[- ]up|side to side|seam)\b/i

/** A pattern that is to be published and says nowhere, outside its rows, how it is built: where it begins, in rows or rounds, of how many pieces. */
export function constructionUnsaid(facts: SenseFacts): readonly Diagnostic[] {
  if (!toPublish(facts) || facts.pattern.body.children.length === 0 || facts.prose.some(({ text }) => told.test(text))) return []
  return [{ code: 'construction-unsaid', message: 'nothing outside the rows says how the work is built', primary: { span: placeOfKey(facts, 'title'), text: 'in rows or rounds, from where, of how many pieces' }, secondary: [] }]
}
