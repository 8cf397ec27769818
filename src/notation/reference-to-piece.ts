import { numberAhead, takeNumber, takeTimesWord } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'
import { takeReversing } from './reversing.ts'
import { takeRowNamed } from './row-named.ts'
import { rowWords } from './row-numbers.ts'
import type { Block } from './row-reference.ts'
import type { Num } from './target.ts'

/** `As for Front`, `Same as Leg 1 to Rnd 9`, `Rows 1 to 3 of Panel twice`: rows of another piece, or of another part of this one. */
export interface PieceReference {
  readonly kind: 'piece'
  readonly name: string
  /** The row that it ends with, by its number or, in small letters, by its name: `to the end of the armhole row`. */
  readonly to?: Num | string
  readonly blocks?: readonly Block[]
  readonly reversing: boolean
  readonly start: number
  readonly end: number
}

/** `Rep Leg 1`, `Work as for Leg 1`: a piece of the pattern by its name. */
export function pieceAhead(reader: Reader): boolean {
  const { at } = reader
  const named = takePieceName(reader) !== undefined && (reader.done || /^[,;.]$/.test(reader.word()))
  reader.at = at
  return named
}

/** `as Rnds 1-3 of Square One`, `as for Row 4 of Sleeve`, `Rows 2 and 3 of Panel four times` */
export function ofPiece(reader: Reader, blocks: readonly Block[], start: number): PieceReference | undefined {
  reader.take('of', 'the?')
  const found = referredPiece(reader, start)
  if (!found) return undefined
  const { at } = reader
  const times = blocks.length === 1 && !blocks[0]!.times ? timesHere(reader) : undefined
  if (!times) reader.at = at
  return { ...found, blocks: times ? blocks.map((block) => ({ ...block, times })) : blocks, end: reader.end }
}

function timesHere(reader: Reader): Num | undefined {
  reader.take(',')
  const word = takeTimesWord(reader)
  if (word) return word
  const count = takeNumber(reader)
  return count && reader.take('times|time|x|×') ? count : undefined
}

/** A piece or part by its name, and how far it is worked. */
export function referredPiece(reader: Reader, start: number): PieceReference | undefined {
  const name = knownName(reader) ?? capitalName(reader) ?? takePieceName(reader)
  if (name === undefined) return undefined
  const to = takeTo(reader)
  // `as for Front border Rnd 2`
  const row = to === undefined ? takeRowNamed(reader) : undefined
  return { kind: 'piece', name, ...(to !== undefined && { to }), ...(row !== undefined && { blocks: [{ rows: [row] }] }), reversing: takeReversing(reader), start, end: reader.end }
}

/** The name of a piece or part that there is, with nothing of a longer name behind it. */
function knownName(reader: Reader): string | undefined {
  const { at } = reader
  const part = reader.take('the?') ? reader.vocabulary.parts?.find((name) => reader.take(...name.split(' '))) : undefined
  const name = part ?? takePieceName(reader)
  if (name !== undefined && (nameEnds(reader) || namesRow(reader) || tellsEnd(reader) || timesAhead(reader))) return name
  reader.at = at
  return undefined
}

function timesAhead(reader: Reader): boolean {
  const { at } = reader
  const ahead = timesHere(reader) !== undefined
  reader.at = at
  return ahead
}

/** A name that is written as one, be there such a piece or not. */
function capitalName(reader: Reader): string | undefined {
  const words: string[] = []
  const { at } = reader
  while (!nameEnds(reader) && !(words.length > 0 && (namesRow(reader) || tellsEnd(reader)))) {
    words.push(reader.peek()!.text)
    reader.at += 1
  }
  if (words.length > 0 && words.length <= 5 && /^[A-Z]/.test(words[0]!)) return words.join(' ')
  reader.at = at
  return undefined
}

/** A total may stand behind a dash that stands free: `as Round 1 of First square - 12 dc`. */
const totalAhead = (reader: Reader): boolean => /^[-–—]$/.test(reader.word()) && !reader.touches(0) && reader.peek(1)?.kind === 'number'

const nameEnds = (reader: Reader): boolean => reader.done || totalAhead(reader) || /^(?:[,;.:()!]|but|except|with|in|reversing|shaping|rev)$/.test(reader.word())

/** `Rnd 2`, behind the name of a piece. */
const namesRow = (reader: Reader): boolean => /^(?:row|rnd|round)$/.test(reader.word()) && numberAhead(reader, 1) !== undefined

function tellsEnd(reader: Reader): boolean {
  const { at } = reader
  const tells = takeTo(reader) !== undefined
  reader.at = at
  return tells
}

/** `to Row 9`, `to the end of Row 14 (18, 20)`, `as far as Row 6`, `through Rnd 3`, `up to and including Row 8`, `to the end of the armhole row`. */
function takeTo(reader: Reader): Num | string | undefined {
  const { at } = reader
  reader.take(',|(')
  if (reader.take('to|through|until|till') || reader.take('as', 'far', 'as') || reader.take('up', 'to') || reader.take('ending', 'with|after')) {
    reader.take('and', 'including')
    reader.take('the?', 'end', 'of')
    reader.take('the')
    const number = reader.take(rowWords) ? takeNumber(reader) : undefined
    const named = number ?? nameOfRow(reader)
    if (named !== undefined) {
      if (number && number.values.length > 1) reader.sizeLists.push(number)
      reader.take('inclusive')
      reader.take(')')
      return named
    }
  }
  reader.at = at
  return undefined
}

/** `armhole row`, `4th row`: a row by its name, or the number of that row. */
function nameOfRow(reader: Reader): Num | string | undefined {
  const { at, start } = reader
  if (reader.peek()?.kind === 'ordinal' && reader.take(reader.word(), rowWords)) return { values: [reader.peek(-2)!.value ?? 0], start, end: reader.end }
  const words: string[] = []
  while (!reader.done && words.length < 4 && reader.peek()!.kind === 'word') {
    words.push(reader.word())
    reader.at += 1
    if (/^(?:row|rnd|round)$/.test(words.at(-1)!) && words.length > 1) return words.join(' ')
  }
  reader.at = at
  return undefined
}
