import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import { stitchNamed } from '../../stitches/terms.ts'
import type { WorkedPiece } from '../checked-pattern.ts'
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
const ofPart = /\b(?:each|every|per|sides?|between|apart|groups?|repeat|rep|corners?|skip|miss|next|more|fewer|less|extra|add|wide|edges?|about|around \d|up to|at least|multiple|increase|decrease|inc|dec|if|half|front|back|sleeves?|left|right|shells?|fans?|picots?|bobbles?|clusters?|spaces?|sps?|colou?rs?)\b/i
/** `slip stitch over the first 8 stitches`, `leave the last 6 stitches unworked`: stitches that a row is told to work or to leave are those of the row below. */
const ofRowBelow = /\b(?:(?:first|last|next|remaining|other|final|centre|center|middle|over|across|along|into|leav(?:e|es|ing)|work(?:s|ing)?) (?:the |these |those )?(?:first |last |next )?\d|unworked)/i
/** `Note:` heads a sentence, and tells no count. */
const heading = /^\W*(?:notes?|nb|tips?|hints?|remember|important)\W*:/i
/** Stitches of one yarn are not all of a row. */
const ofYarn = /\b(?:of|in|with) [A-Z]\b/

/**
 * A count that a sentence gives a row, and that the row does not make: `you should have 54 stitches at the end of Row 3`. Only
 * sentences whose meaning is plain: one count, and one row or the last one, or a remark that speaks of the row above it.
 */
export function proseCountMismatch(facts: SenseFacts): readonly Diagnostic[] {
  return facts.prose.flatMap((passage) => sentencesOf(passage).flatMap((sentence): readonly Diagnostic[] => {
    const told = countTold(facts, sentence)
    const meant = told && !ofPart.test(sentence.text) && !ofRowBelow.test(sentence.text) && !ofYarn.test(sentence.text) ? rowsMeant(facts, sentence) : undefined
    if (!told || !meant || meant.bySize.some((rows) => rows.length === 0 || rows.some(({ uncounted, verdict }) => uncounted || verdict !== 'adds-up'))) return []
    // Several pieces may have such a row; it is enough that one of them makes what is told.
    const wrong = meant.bySize.flatMap((rows, size) => (rows.some((row) => countsOf(row, told).includes(told.values[size] ?? told.values[0]!)) ? [] : [size]))
    // One number for several sizes need hold for one of them only.
    if (wrong.length === 0 || told.values.length === 1 && wrong.length < meant.bySize.length) return []
    return [meant.around === undefined ? ofRow(facts, sentence, told, meant.bySize, wrong) : ofPiece(sentence, told, meant.around, meant.bySize[wrong[0]!]!)]
  }))
}

function ofRow(facts: SenseFacts, sentence: Sentence, told: Told, bySize: readonly (readonly WorkedRow[])[], wrong: readonly number[]): Diagnostic {
  const size = wrong[0]!
  const row = bySize[size]![0]!
  const name = row.number === undefined ? row.label.toLowerCase() : `${row.word} ${row.number}`
  const makes = countsOf(row, told)[0]
  return {
    code: 'prose-count-mismatch',
    message: `the text gives ${told.values[size] ?? told.values[0]} ${told.stitch ?? 'stitches'} for ${name}${told.values.length > 1 ? ` in size ${facts.pattern.sizes[size]}` : ''}, but it makes ${makes}`,
    primary: { span: spanOf(sentence, told.match), text: `makes ${makes}` },
    secondary: [{ span: row.says?.span ?? row.written.label, text: `${name} in the rows` }],
    ...(told.values.length > 1 && onlyIn(facts, wrong)),
  }
}

function ofPiece(sentence: Sentence, told: Told, name: string, rows: readonly WorkedRow[]): Diagnostic {
  const counts = rows.map(({ makes }) => makes)
  return {
    code: 'prose-count-mismatch',
    message: `the text gives ${name} ${told.values[0]} ${told.stitch ?? 'stitches'} around, but its rounds make ${Math.min(...counts)} to ${Math.max(...counts)}, and none of them that`,
    primary: { span: spanOf(sentence, told.match), text: 'in no round' },
    secondary: [],
  }
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
  return /\b(?:have|has|having|remain(?:s|ing)?|are|ends? with|makes?|counts?|there (?:are|should)|total(?:s|ling)?|:)(?!\p{L})/iu.test(text.replace(heading, '')) ? only : undefined
}

interface Meant {
  /** The rows that the count may be of, smallest size first. */
  readonly bySize: readonly (readonly WorkedRow[])[]
  /** The piece of which some round is meant: `the ball has 48 stitches around`. */
  readonly around?: string
}

/** The rows that the count is told of; undefined where that is not plain. */
function rowsMeant(facts: SenseFacts, sentence: Sentence): Meant | undefined {
  const named = rowsNamed(sentence)
  const [row] = named
  if (named.length > 1 || row && row.numbers.length > 1) return undefined
  const meant = piecesMeant(facts, sentence, row?.of)
  const onePiece = new Set(meant.map(({ piece }) => piece.name)).size === 1
  if (row) return bySize(facts, meant, (piece) => rowNumbered(piece, row.numbers[0]!))
  if (sentence.kind === 'remark' && /\b(?:now|you (?:should )?(?:now )?have|there (?:are|should be))\b/i.test(sentence.text)) {
    const own = facts.pieces.filter(({ piece }) => piece.name === sentence.piece)
    return bySize(facts, own, ({ rows, between }) => {
      const remark = between.find(({ at }) => at === sentence.of.start)
      return remark && rows[remark.afterRow]
    })
  }
  if (!onePiece) return undefined
  if (/\b(?:the )?last (?:row|round|rnd)\b/i.test(sentence.text)) return bySize(facts, meant, ({ rows }) => rows.at(-1))
  if (/\bhas \d+(?: \([\d, ]+\))? \S+ (?:all )?around\b/i.test(sentence.text) && meant.every(({ rows }) => rows.some(({ word }) => word === 'round'))) {
    return { ...bySize(facts, meant, ({ rows }) => rows.filter(({ word, number }) => word === 'round' && number !== undefined)), around: meant[0]!.piece.name }
  }
  return undefined
}

function bySize({ pattern }: SenseFacts, pieces: readonly WorkedPiece[], pick: (piece: WorkedPiece) => WorkedRow | readonly WorkedRow[] | undefined): Meant {
  const sizes: readonly (string | undefined)[] = pattern.sizes.length > 0 ? pattern.sizes : [undefined]
  return { bySize: sizes.map((name) => pieces.filter(({ size }) => size === name).flatMap((piece) => pick(piece) ?? [])) }
}

/** Numbers that a row may be told with: all its stitches, those of the kind that is named, and its spaces counted in. */
function countsOf({ makes, kinds, spaces }: WorkedRow, { stitch }: Told): readonly number[] {
  const gaps = Object.values(spaces).reduce((sum, count) => sum + count, 0)
  const chains = Object.entries(spaces).reduce((sum, [kind, count]) => sum + count * Number(/\d+/.exec(kind)?.[0] ?? 0), 0)
  const ofKind = stitch === undefined ? [] : [Object.entries(kinds).reduce((sum, [kind, count]) => (kind === stitch || kind.startsWith(stitch) ? sum + count : sum), 0), kinds[stitch] ?? 0]
  return [...ofKind, makes, makes + gaps, makes + chains]
}
