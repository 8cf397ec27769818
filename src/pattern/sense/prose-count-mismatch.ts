import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import { listOf } from '../../diagnostics/words.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { stitchNamed } from '../../stitches/terms.ts'
import { sentencesOf, spanOf, type Sentence } from './passages.ts'
import { piecesMeant, rowNumbered, rowsNamed } from './row-words.ts'
import { onlyIn, sizeCount, type SenseFacts } from './sense-facts.ts'

/** A number of stitches in a sentence: one for every size, or a list with one for each. */
interface Told {
  readonly match: RegExpExecArray
  readonly values: readonly number[]
  /** The stitch that it counts, where it names one. */
  readonly stitch?: string
}

/** What makes a number one of a part, and not of a row. */
const ofPart = /\b(?:each|every|per|sides?|between|apart|groups?|repeat|rep|corners?|skip|miss|next|more|fewer|less|extra|add|wide|edges?|about|around \d|up to|at least|multiple|increase|decrease|inc|dec|if|half|front|back|sleeves?|left|right)\b/i

/**
 * A count that a sentence gives a row, and that the row does not make: `you should have 54 stitches at the end of Row 3`. Only
 * sentences whose meaning is plain: one count, and one row or the last one, or a remark that speaks of the row above it.
 */
export function proseCountMismatch(facts: SenseFacts): readonly Diagnostic[] {
  return facts.prose.flatMap((passage) => sentencesOf(passage).flatMap((sentence): readonly Diagnostic[] => {
    const told = countTold(facts, sentence)
    if (!told || ofPart.test(sentence.text)) return []
    const rows = rowsMeant(facts, sentence)
    if (rows.length === 0 || rows.some(({ uncounted, verdict }) => uncounted || verdict !== 'adds-up')) return []
    const sizes = sizeCount(facts)
    // Several pieces may have such a row; it is enough that one of them makes what is told.
    const wrong = Array.from({ length: sizes }, (_, size) => size).filter((size) => {
      const said = told.values[size] ?? told.values[0]!
      const here = rows.filter((_, index) => Math.floor((index * sizes) / rows.length) === size || rows.length < sizes)
      return here.length > 0 && !here.some((row) => countsOf(row, told).includes(said))
    })
    // One number for several sizes need hold for one of them only.
    if (wrong.length === 0 || told.values.length === 1 && wrong.length < sizes) return []
    const size = wrong[0]!
    const row = rows[Math.floor((size * rows.length) / sizes)] ?? rows[0]!
    const name = row.number === undefined ? row.label.toLowerCase() : `${row.word} ${row.number}`
    return [{
      code: 'prose-count-mismatch',
      message: `the text gives ${told.values[size] ?? told.values[0]} ${told.stitch ?? 'stitches'} for ${name}${told.values.length > 1 ? ` in size ${facts.pattern.sizes[size]}` : ''}, but it makes ${listOf([...new Set(countsOf(row, told).slice(0, 1).map(String))])}`,
      primary: { span: spanOf(sentence, told.match), text: `makes ${countsOf(row, told)[0]}` },
      secondary: [{ span: row.says?.span ?? row.written.label, text: `${name} in the rows` }],
      ...(told.values.length > 1 && onlyIn(facts, wrong)),
    }]
  }))
}

/** The one count of a sentence that is said to be had, to remain or to stand in a row. */
function countTold(facts: SenseFacts, { text }: Sentence): Told | undefined {
  const list = String.raw`(\d{1,4})((?:\s*[([]\s*\d{1,4}(?:\s*,\s*\d{1,4})*\s*[)\]])?)`
  const counts = [...text.matchAll(new RegExp(String.raw`(?<![\d.,×x/½¼¾-]\s?)${list}\s+(sts?|stitches|[a-z]{2,6})(?![\p{L}\d])`, 'giu'))].flatMap((match): readonly Told[] => {
    const word = match[3]!.toLowerCase()
    const stitch = /^st/.test(word) ? undefined : stitchNamed(word, facts.pattern.terms)?.us
    if (!/^(?:sts?|stitches)$/.test(word) && stitch === undefined) return []
    return [{ match, values: [Number(match[1]), ...(match[2]!.match(/\d+/g) ?? []).map(Number)], ...(stitch !== undefined && { stitch }) }]
  })
  const [only, ...others] = counts
  if (!only || others.length > 0 || only.values.length > 1 && only.values.length !== sizeCount(facts)) return undefined
  return /\b(?:have|has|having|remain(?:s|ing)?|are|ends? with|makes?|counts?|there (?:are|should)|total(?:s|ling)?|:)(?!\p{L})/iu.test(text) ? only : undefined
}

/** The rows that the count is told of, smallest size first; none where that is not plain. */
function rowsMeant(facts: SenseFacts, sentence: Sentence): readonly WorkedRow[] {
  const named = rowsNamed(sentence)
  if (named.length > 1 || named.some(({ numbers }) => numbers.length > 1)) return []
  const [row] = named
  if (row) {
    const meant = piecesMeant(facts, sentence, row.of)
    const pieces = new Set(meant.map(({ piece }) => piece.name))
    const found = meant.flatMap((piece) => rowNumbered(piece, row.numbers[0]!) ?? [])
    return pieces.size === 1 || found.length <= sizeCount(facts) ? found : []
  }
  if (sentence.kind === 'remark' && /\b(?:now|you (?:should )?(?:now )?have|there (?:are|should be))\b/i.test(sentence.text)) {
    const at = sentence.of.start
    return facts.pieces.filter(({ piece }) => piece.name === sentence.piece).flatMap(({ rows, between }) => {
      const remark = between.find((one) => one.at === at)
      const above = remark ? rows[remark.afterRow] : undefined
      return above ? [above] : []
    })
  }
  if (/\b(?:the )?last (?:row|round|rnd)\b/i.test(sentence.text)) {
    const meant = piecesMeant(facts, sentence)
    return new Set(meant.map(({ piece }) => piece.name)).size === 1 ? meant.flatMap(({ rows }) => rows.at(-1) ?? []) : []
  }
  return []
}

/** Numbers that a row may be told with: all its stitches, those of the kind that is named, and its spaces counted in. */
function countsOf({ makes, kinds, spaces }: WorkedRow, { stitch }: Told): readonly number[] {
  const gaps = Object.values(spaces).reduce((sum, count) => sum + count, 0)
  const chains = Object.entries(spaces).reduce((sum, [kind, count]) => sum + count * Number(/\d+/.exec(kind)?.[0] ?? 0), 0)
  const ofKind = stitch === undefined ? [] : [Object.entries(kinds).reduce((sum, [kind, count]) => (kind === stitch || kind.startsWith(stitch) ? sum + count : sum), 0), kinds[stitch] ?? 0]
  return [...ofKind, makes, makes + gaps, makes + chains]
}
