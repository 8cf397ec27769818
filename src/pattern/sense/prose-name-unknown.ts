import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import { sentencesOf, spanOf, type Sentence } from './passages.ts'
import { rowsNamed, sameName } from './row-words.ts'
import type { SenseFacts } from './sense-facts.ts'

/** A yarn letter, a size, a piece or a stitch that the text names and the pattern does not have. */
export function proseNameUnknown(facts: SenseFacts): readonly Diagnostic[] {
  return facts.prose.flatMap((passage) => sentencesOf(passage)).flatMap((sentence) => [
    ...yarnsUnknown(facts, sentence), ...sizesUnknown(facts, sentence), ...piecesUnknown(facts, sentence), ...stitchesUnknown(facts, sentence),
  ])
}

function yarnsUnknown({ pattern }: SenseFacts, sentence: Sentence): readonly Diagnostic[] {
  const letters = (pattern.materials?.yarns ?? []).flatMap(({ letter }) => letter ?? [])
  if (letters.length < 2 || letters.some((letter) => letter.length > 1)) return []
  return [...sentence.text.matchAll(/\b(?:yarn|colou?r|(?<=\d\s?(?:g|m|balls?) )of) ([B-HJ-Z])(?![\p{L}\d'’/-]|\.\p{L})/gu)]
    .filter((match) => !letters.includes(match[1]!))
    .map((match) => told(sentence, match, `yarn ${match[1]}`, `the materials list ${listOf(letters)}`))
}

function sizesUnknown({ pattern }: SenseFacts, sentence: Sentence): readonly Diagnostic[] {
  const { sizes } = pattern
  if (sizes.length === 0) return []
  const form = /\b[Ss]izes? ((?:X{0,4}[SL]|M|\d?XL|\d?XS|\d{1,2}X)(?![\p{L}\d])(?:(?:,| and| or| to|,? &) (?:X{0,4}[SL]|M|\d?XL|\d?XS|\d{1,2}X)(?![\p{L}\d]))*)/gu
  const letters = sizes.filter((size) => /^(?:X{0,4}[SL]|M|\d?XL|\d?XS|\d{1,2}X)$/.test(size))
  if (letters.length !== sizes.length) return []
  return [...sentence.text.matchAll(form)].flatMap((match) => {
    const unknown = match[1]!.split(/,? (?:and|or|to|&) |, /).find((size) => !sizes.includes(size))
    return unknown === undefined ? [] : [told(sentence, match, `size ${unknown}`, `the sizes are ${listOf(sizes)}`)]
  })
}

/** `Row 3 of the Brim`, where the piece is called Band. */
function piecesUnknown({ pattern }: SenseFacts, sentence: Sentence): readonly Diagnostic[] {
  return rowsNamed(sentence).flatMap(({ match, of }) => {
    if (of === undefined || !/^[A-Z]/.test(of) || pattern.pieces.some(({ name }) => sameName(name, of) || name.toLowerCase().includes(of.toLowerCase()) || of.toLowerCase().includes(name.toLowerCase().replace(/^the /, ''))) || /^(?:Chart|Size|Yarn|Part|Section|[A-Z])$/.test(of)) return []
    if (sameName(pattern.title, of) || pattern.title.toLowerCase().includes(of.toLowerCase())) return []
    return [told(sentence, match, of, `the pieces are ${listOf(pattern.pieces.map(({ name }) => name))}`)]
  })
}

const plainWords = /^(?:sts?|stitch(?:es)?|chs?|chains?|times|rows?|rounds?|rnds?|more|inc|dec|incs|decs|increases?|decreases?|loops?|lps?|picots?|of|ends?|strands?|yos?|legs?|knots?|markers?|pins?|beads?|buttons?|ss|slip)$/i

/** `Work 2 hcd in each st`, a word that stands where a stitch does. */
function stitchesUnknown({ facts }: SenseFacts, sentence: Sentence): readonly Diagnostic[] {
  const lexicon = facts[0]?.lexicon
  if (!lexicon) return []
  return [...sentence.text.matchAll(/\b(?:\d{1,2}|one) ([a-z]{2,8}) in(?:to)? (?:the )?(?:next|each|first|last|same) (?:sts?|stitch(?:es)?|chs?|chains?|sps?|spaces?|sc|dc|tr|hdc|htr)\b/gi)]
    .filter((match) => !plainWords.test(match[1]!) && !lexicon.stitchAt([match[1]!.toLowerCase()]))
    .map((match) => told(sentence, match, `\`${match[1]}\``, 'it stands where a stitch does', match[1]))
}

function told(sentence: Sentence, match: RegExpExecArray, what: string, note: string, group?: string): Diagnostic {
  return { code: 'prose-name-unknown', message: `the text names ${what}, which the pattern does not have`, primary: { span: spanOf(sentence, match, group), text: 'not in this pattern' }, secondary: [], note }
}
