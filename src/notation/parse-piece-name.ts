import type { Reader } from './reader.ts'

/** Takes the name of one of the pattern's pieces, with or without `the`, or one of its copies. */
export function takePieceName(reader: Reader): string | undefined {
  const at = reader.at
  reader.take('the')
  const named = nameHere(reader)
  if (named !== undefined) return named
  // `the first leg`, `the other leg`: a copy of the piece.
  const copy = reader.take('first|second|third|fourth|other|same|next|left|right|1st|2nd|3rd') ? nameHere(reader) : undefined
  if (copy !== undefined) return copy
  reader.at = at
  return undefined
}

/** `right front neck`, `back neckline edge`: a piece, or a part of its edge. */
export function takePieceOrPart(reader: Reader): string | undefined {
  const name = takePieceName(reader)
  if (name !== undefined) reader.take('neck|neckline|armhole|shoulder', 'edge|line|opening?') || reader.take('top|bottom|side|tip|point|edge|vent|slit')
  return name
}

function nameHere(reader: Reader): string | undefined {
  const { pieces } = reader.vocabulary
  const takes = (name: string): boolean => reader.take(...name.toLowerCase().split(/\s+/).map((word) => word.replaceAll('|', '')))
  // `First Square (upper left)` is called First Square, where there is one.
  const name = pieces.find(takes) ?? pieces.find((name) => name.includes(' (') && pieces.filter((other) => shortName(other) === shortName(name)).length === 1 && takes(shortName(name)))
  // `leg 1`, `leg 2`: copies by number.
  if (name !== undefined && reader.peek()?.kind === 'number' && (reader.peek()?.value ?? 9) < 5 && !reader.vocabulary.stitchAt([reader.word(1)])) reader.at += 1
  return name
}

const shortName = (name: string): string => name.replace(/ \(.*\)$/, '')

/** `of Crown`, `on the body`: the piece that the row is worked on. */
export function takeOfPiece(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('of|on|from|along') && takePieceName(reader) !== undefined) return true
  reader.at = at
  return false
}
