import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { counted } from '../../diagnostics/words.ts'
import { denies, numberForm, numberFrom, sentencesOf, spanOf } from './passages.ts'
import { labelAt, type SenseFacts } from './sense-facts.ts'

/** Things that are counted out: more of them in the text than in the list is a walk to the shop. */
const things = [
  { name: 'button', listed: /\bbuttons?\b/i }, { name: 'marker', listed: /\bmarkers?\b/i }, { name: 'eye', listed: /\beyes?\b/i },
  { name: 'buttonhole', listed: /\bbuttons?\b/i }, { name: 'bead', listed: /\bbeads?\b/i },
]

/** A sentence that takes more of a notion than any size has in its list: `sew on the 5 buttons`, and 4 are listed. */
export function notionCountMismatch(facts: SenseFacts): readonly Diagnostic[] {
  const notions = facts.pattern.materials?.notions ?? []
  return things.flatMap(({ name, listed }) => {
    const index = notions.findIndex(({ what, count }) => listed.test(what) && count !== undefined)
    const most = Math.max(...(notions[index]?.count ?? []))
    if (index === -1 || notions.filter(({ what }) => listed.test(what)).length > 1) return []
    const form = new RegExp(String.raw`\b(${numberForm})\s+(?:of the\s+|safety\s+|stitch\s+|locking\s+|small\s+|more\s+)*${name}s?\b`, 'gi')
    return [...facts.rows, ...facts.prose].flatMap((passage) => sentencesOf(passage).flatMap((sentence) => {
      if (denies(sentence.text) || /\b(?:each|every|per|or)\b/i.test(sentence.text)) return []
      return [...sentence.text.matchAll(form)].filter((match) => numberFrom(match[1]!) > most).map((match): Diagnostic => ({
        code: 'notion-count-mismatch',
        message: `the text takes ${counted(numberFrom(match[1]!), name)}, but the materials list ${most}`,
        primary: { span: spanOf(sentence, match), text: `${most} listed` },
        secondary: labelAt(facts, `materials.notions.${index}.count`, 'this many'),
      }))
    })).slice(0, 1)
  })
}
