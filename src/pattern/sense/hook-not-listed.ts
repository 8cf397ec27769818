import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import { denies, sentencesOf, spanOf } from './passages.ts'
import { placeOfKey, plainNumber, type SenseFacts } from './sense-facts.ts'

/** A hook that the gauge, a row or a note names, and that the materials do not list. */
export function hookNotListed(facts: SenseFacts): readonly Diagnostic[] {
  const { materials, gauge } = facts.pattern
  const hooks = materials?.hooks ?? []
  if (hooks.length === 0) return []
  const listed = `the materials list ${listOf(hooks.map((hook) => `${plainNumber(hook, 3)} mm`))}`
  const told = new Set<number>()
  const found = (mm: number, span: { readonly start: number; readonly end: number }): readonly Diagnostic[] => {
    if (hooks.includes(mm) || told.has(mm)) return []
    told.add(mm)
    return [{ code: 'hook-not-listed', message: `a hook of ${plainNumber(mm, 3)} mm is used, but not listed`, primary: { span, text: 'not among the hooks' }, secondary: [], note: listed }]
  }
  return [
    ...(gauge?.hook === undefined ? [] : found(gauge.hook, placeOfKey(facts, 'gauge.hook', 'gauge'))),
    ...[...facts.rows, ...facts.prose].flatMap((passage) => sentencesOf(passage).flatMap((sentence) => {
      // A hook for another gauge is the maker's choice, and no hook of the pattern.
      if (denies(sentence.text) || /\b(?:gauge|tension|if|larger|smaller|steel|band|another|other|different|would|instead|gives?)\b/i.test(sentence.text)) return []
      return [...sentence.text.matchAll(/(?<![\d.–-])(\d{1,2}(?:\.\d{1,2})?) ?mm (?:crochet )?hook\b/gi)].flatMap((match) => found(Number(match[1]), spanOf(sentence, match)))
    })),
  ]
}
