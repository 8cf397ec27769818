import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import { denies, sentencesOf, spanOf } from './passages.ts'
import { piecesMeant, rowNumbered, rowsNamed, sameName } from './row-words.ts'
import type { SenseFacts } from './sense-facts.ts'

/** A row that the text names and that no piece has: `between Rnds 12 and 13`, and the head has 11. Told once a sentence. */
export function proseReferenceUnknown(facts: SenseFacts): readonly Diagnostic[] {
  if (facts.pieces.some(({ rows }) => rows.length === 0)) return []
  return facts.prose.flatMap((passage) => sentencesOf(passage).flatMap((sentence) => {
    // A chart has rows of its own, and another pattern too.
    if (denies(sentence.text) || /\b(?:chart|swatch|pattern [A-Z]|other pattern|diagram)\b/i.test(sentence.text)) return []
    return rowsNamed(sentence).flatMap(({ match, word, numbers, of }): readonly Diagnostic[] => {
      // Where no piece is named, a row of any will do: ears are sewn to the rounds of a head.
      const named = of !== undefined && facts.pieces.some(({ piece }) => sameName(piece.name, of))
      const meant = named ? piecesMeant(facts, sentence, of) : facts.pieces
      const missing = numbers.filter((number) => !meant.some((piece) => rowNumbered(piece, number)))
      if (missing.length === 0) return []
      const names = [...new Set(meant.map(({ piece }) => piece.name))]
      const last = Math.max(...meant.flatMap(({ rows }) => rows.map(({ number }) => number ?? 0)))
      const whose = names.length === 1 ? names[0]! : facts.pattern.pieces.length > 1 ? 'no piece' : 'the pattern'
      const rows = `${word}${missing.length === 1 ? '' : 's'} ${listOf(missing.map(String))}`
      return [{
        code: 'prose-reference-unknown',
        message: whose === 'no piece' ? `the text names ${rows}, but no piece has so many` : `the text names ${rows}, but ${whose} ends with ${word} ${last}`,
        primary: { span: spanOf(sentence, match, named ? match[0] : match[0].replace(/\s+of\s+.*$/is, '')), text: `no such ${word}` },
        secondary: [],
      }]
    }).slice(0, 1)
  }))
}
