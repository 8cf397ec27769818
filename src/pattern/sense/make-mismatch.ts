import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { counted, timesInWords } from '../../diagnostics/words.ts'
import { denies, numberForm, numberFrom, sentencesOf, spanOf } from './passages.ts'
import { placeOfKey, type SenseFacts } from './sense-facts.ts'

/** Words of the making-up: other sentences may speak of any number of ears. */
const joining = /\b(?:sew|join|attach|pin|fix|stitch|fold|stuff|fill|place|add|lay|weave)(?:s|n|ed|ing)?\b/i

/** More of a piece in the text or in a seam than are told to be made: two ears are sewn on, and one is made. A pattern of one piece is a motif. */
export function makeMismatch(facts: SenseFacts): readonly Diagnostic[] {
  const { pieces, seams } = facts.pattern
  if (pieces.length < 2) return []
  return pieces.flatMap(({ name, make }, index): readonly Diagnostic[] => {
    const plain = name.replace(/^the /i, '')
    const made = labelOfMake(facts, index)
    for (const { join, edges, span } of seams) {
      // The top edge and the foundation edge of a piece that is sewn to itself are those of one.
      const own = join.flatMap((joined, part) => (joined === name ? [edges?.[0]?.[part]] : []))
      const times = own.includes(undefined) ? own.length : Math.max(0, ...own.map((edge) => own.filter((other) => other === edge).length))
      if (times > make) return [{ code: 'make-mismatch', message: `${counted(times, plain)} are joined, but ${plain} is made ${timesInWords(make)}`, primary: { span, text: `${times} of them` }, secondary: made }]
    }
    // `Ear 1` and `Ear 2` are pieces of their own.
    if (/\d$|s$/.test(plain)) return []
    const form = new RegExp(String.raw`\b(${numberForm})\s+(?:of the\s+|more\s+)?${escaped(plain)}(?:e?s)\b`, 'i')
    for (const passage of facts.prose) {
      for (const sentence of sentencesOf(passage)) {
        const match = form.exec(sentence.text)
        const told = match ? numberFrom(match[1]!) : 0
        if (!match || told <= make || !joining.test(sentence.text) || denies(sentence.text, match.index) || pieces.filter((piece) => piece.name.toLowerCase().includes(plain.toLowerCase())).length > 1) continue
        return [{
          code: 'make-mismatch',
          message: `the text tells of ${counted(told, plain.toLowerCase())}, but ${plain} is made ${timesInWords(make)}`,
          primary: { span: spanOf(sentence, match), text: `made ${timesInWords(make)}` },
          secondary: made,
        }]
      }
    }
    return []
  })
}

function labelOfMake(facts: SenseFacts, index: number) {
  return [{ span: placeOfKey(facts, `pieces.${index}.make`, `pieces.${index}.name`), text: facts.pattern.places.has(`pieces.${index}.make`) ? 'this many' : 'no `make`: once' }]
}

function escaped(name: string): string {
  return name.replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)
}
