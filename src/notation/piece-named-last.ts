import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'

/** The piece that the words end with which were taken from a token on, behind one of the words given: `the underside of each of next 2 ch of Body`. Takes nothing. */
export function pieceNamedLast(reader: Reader, from: number, behind: 'of' | 'of|on|to'): string | undefined {
  const { at } = reader
  for (let back = at - 2; back >= from; back -= 1) {
    reader.at = back
    const piece = reader.take(behind, 'the?') ? takePieceName(reader) : undefined
    if (piece !== undefined && reader.at === at) return piece
  }
  reader.at = at
  return undefined
}
