import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { notionWords } from './notion-words.ts'
import { denies, sentencesOf, spanOf } from './passages.ts'
import type { SenseFacts } from './sense-facts.ts'

/** Something that a row or a note takes into the hand and that the materials do not list. Told once a thing, and only where notions are listed. */
export function notionNotListed(facts: SenseFacts): readonly Diagnostic[] {
  const { materials, pieces } = facts.pattern
  if (!materials || !facts.pattern.places.has('materials.notions')) return []
  const named = pieces.map(({ name }) => name.toLowerCase())
  return notionWords.flatMap(({ name, listed, used, unlike }): readonly Diagnostic[] => {
    if (materials.notions.some(({ what, for: use }) => listed.test(what) || listed.test(use ?? ''))) return []
    // A piece that is called a bell or a ribbon is made, not bought.
    if (named.some((piece) => listed.test(piece))) return []
    for (const passage of [...facts.rows, ...facts.prose]) {
      for (const sentence of sentencesOf(passage)) {
        const match = used.exec(sentence.text)
        if (!match || denies(sentence.text, match.index) || unlike?.test(sentence.text)) continue
        return [{
          code: 'notion-not-listed',
          message: `the text takes ${name}, but the materials list none`,
          primary: { span: spanOf(sentence, match), text: 'not among the notions' },
          secondary: [],
        }]
      }
    }
    return []
  })
}
