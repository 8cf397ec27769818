import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { isTool, notionWords } from './notion-words.ts'
import { allWords, placeOfKey, type SenseFacts } from './sense-facts.ts'

/** A notion that nothing speaks of and that does not say what it is for. */
export function notionNotUsed(facts: SenseFacts): readonly Diagnostic[] {
  const words = `${allWords(facts)}\n${facts.pattern.pieces.map(({ note }) => note ?? '').join('\n')}`
  return (facts.pattern.materials?.notions ?? []).flatMap(({ what, for: use }, index): readonly Diagnostic[] => {
    const known = notionWords.find(({ listed, name }) => listed.test(what) && (name !== 'filling' || /fill|stuff|wadding|batting/i.test(what)))
    if (!known || isTool(what) || use !== undefined || known.listed.test(words) || known.used.test(words) || /\bfill/i.test(words) && known.name === 'filling') return []
    return [{
      code: 'notion-not-used',
      message: `\`${what}\` is listed, but no row and no note speaks of it`,
      primary: { span: placeOfKey(facts, `materials.notions.${index}.what`, `materials.notions.${index}`), text: 'not spoken of' },
      secondary: [],
      note: 'a notion that needs no word in the rows says what it is `for`',
    }]
  })
}
