import type { WorkedRow } from '../../fabric/worked-row.ts'
import type { WorkedPiece } from '../checked-pattern.ts'
import type { Sentence } from './passages.ts'
import type { SenseFacts } from './sense-facts.ts'

/** Rows that a sentence names: `Row 3`, `between Rnds 4 and 9`, `Rounds 2, 4 and 6 of the ball`. */
export interface RowWords {
  readonly match: RegExpExecArray
  readonly word: 'row' | 'round'
  readonly numbers: readonly number[]
  /** The piece that stands after `of`, as it is written. */
  readonly of?: string
}

const unit = String.raw`(?!\s*(?:cm|mm|in\b|inch|m\b|g\b|%|times|st\b|sts|stitch|row|round|rnd|more|or so|½|¼|¾|[.,]\d|/\d))`
const named = new RegExp(
  String.raw`\b([Rr]ows?|[Rr]nds?|[Rr]ounds?)\s+(\d{1,4}${unit}(?:(?:\s*(?:,|-|–|and|&|to|or|through)\s*)+(?:[Rr]ows?\s+|[Rr]nds?\s+|[Rr]ounds?\s+)?\d{1,4}${unit})*)(?:\s+of\s+(?:the\s+|each\s+|your\s+)?([A-Z][\p{L}\d]*(?:\s+[A-Z][\p{L}\d]*)*|[a-z]+))?`, 'gu')

/** All rows that a sentence names by their numbers. */
export function rowsNamed({ text }: Sentence): readonly RowWords[] {
  return [...text.matchAll(named)].map((match) => ({
    match,
    word: /^row/i.test(match[1]!) ? 'row' : 'round',
    // `Round 2, 12 stitches` is one round; a list has its word in the plural.
    numbers: (match[2] ?? '').match(/\d+/g)!.map(Number).slice(0, /s$/i.test(match[1]!) ? undefined : 1),
    ...(match[3] !== undefined && { of: match[3] }),
  }))
}

/** The same name, whatever its capitals, its article and its plural. */
export function sameName(a: string, b: string): boolean {
  const plain = (name: string): string => name.toLowerCase().replace(/^the /, '').replace(/s$/, '')
  return plain(a) === plain(b)
}

/** Pieces that a sentence may speak of, in every size: the one it names, the one it stands in, else all of them. */
export function piecesMeant({ pieces }: SenseFacts, sentence: Sentence, of?: string): readonly WorkedPiece[] {
  const byName = of === undefined ? [] : pieces.filter(({ piece }) => sameName(piece.name, of))
  if (byName.length > 0) return byName
  const own = sentence.piece === undefined ? [] : pieces.filter(({ piece }) => piece.name === sentence.piece)
  if (own.length > 0 && sentence.kind === 'remark') return own
  const inWords = pieces.filter(({ piece }) => new RegExp(String.raw`\b${piece.name.replace(/^the /i, '').replace(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)}s?\b`, 'i').test(`${sentence.text} ${sentence.under ?? ''}`))
  const names = new Set(inWords.map(({ piece }) => piece.name))
  return names.size === 1 ? inWords : pieces
}

/** The row of a number, in a piece. */
export function rowNumbered({ rows }: WorkedPiece, number: number): WorkedRow | undefined {
  return rows.find((row) => row.number === number)
}
