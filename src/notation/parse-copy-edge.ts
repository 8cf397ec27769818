import { undersideNamed } from './parse-edge.ts'
import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'
import type { Target } from './target.ts'

/** Which of the copies of a piece is meant: they are taken one after the other. */
const copy = 'a|an|one|each|every|another|next|last|final|first|second|third|fourth|fifth|sixth|following|remaining'

/**
 * An edge of the next copy of a piece, and not of the piece that is worked on:
 *
 *   along the foundation ch of a Pennant   across the top of the next flag   over the last row of each pocket
 */
export function edgeOfCopy(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  if (reader.take('along|across|over|down|up|on')) {
    const under = undersideNamed(reader) || reader.take('the?', 'foundation|bottom|lower', 'edge|side|row')
    const named = under || reader.take('the?', 'top|upper|last', 'edge|side|row|rnd|round?') || reader.take('the?', 'edge|sts|stitches')
    if (named && reader.take('of', 'the?') && reader.take(copy)) {
      const ofPiece = takePieceName(reader)
      if (ofPiece !== undefined) return { walk: 'each', ofPiece, ...(under && { edge: 'underside' }), toEnd: true, start, end: reader.end }
    }
  }
  reader.at = at
  return undefined
}
