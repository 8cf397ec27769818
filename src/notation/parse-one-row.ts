import { numberAhead } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Target } from './target.ts'

/** Words before `row` that tell which stitches it has, how many rows are meant, or one that comes next. */
const noLabel = /^(?:each|ea|every|all|any|next|same|other|previous|prev|following|this|that|each|of|the|in|rem|remaining|shell|shells|step|button|side)$/

/**
 * Takes one row by its number, by its piece, or by its label:
 *
 *   Row 4   the 4th row   yoke Row 1   Row 1 of the yoke   the hem row   the divide row   the last row
 */
export function takeOneRow(reader: Reader): Pick<Target, 'ofRow' | 'ofPiece' | 'rowCalled'> | undefined {
  const { at } = reader
  const ofPiece = takePieceName(reader)
  const ofTheirs = ofPiece === undefined ? undefined : takeRowNamed(reader)
  if (ofTheirs !== undefined) return { ofRow: ofTheirs, ofPiece: ofPiece! }
  reader.at = at
  const ofRow = takeRowNamed(reader, 'the?')
  if (ofRow !== undefined) return { ofRow, ...pieceBehind(reader) }
  reader.take('the')
  const rowCalled = label(reader)
  if (rowCalled !== undefined) return { rowCalled, ...pieceBehind(reader) }
  reader.at = at
  return undefined
}

/** `hem row`, `button hole row`: at the most two words and the row. */
function label(reader: Reader): string | undefined {
  const words: string[] = []
  while (words.length < 2 && !/^(?:row|rnd|round)$/.test(reader.word())) {
    const plain = reader.peek()?.kind === 'word' && numberAhead(reader) === undefined && !noLabel.test(reader.word()) && reader.vocabulary.stitchAt([reader.word()]) === undefined
    if (!plain) return undefined
    words.push(reader.word())
    reader.at += 1
  }
  if (words.length === 0 || !reader.take('row|rnd|round') || reader.peek()?.kind === 'number') return undefined
  return `${words.join(' ')} ${reader.word(-1)}`
}

function pieceBehind(reader: Reader): Pick<Target, 'ofPiece'> {
  const { at } = reader
  const ofPiece = reader.take('of|on') ? takePieceName(reader) : undefined
  if (ofPiece === undefined) reader.at = at
  return ofPiece === undefined ? {} : { ofPiece }
}
