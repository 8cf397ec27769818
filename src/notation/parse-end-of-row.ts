import { placeEnds } from './place-ends.ts'
import { takeOneRow } from './parse-one-row.ts'
import { takePieceName } from './parse-piece-name.ts'
import { takeStitchName } from './parse-thing.ts'
import { takeWhereabouts } from './parse-where.ts'
import type { Reader } from './reader.ts'
import { takeOfRows } from './row-named.ts'
import type { Target } from './target.ts'

/** `in end of Row 2`, `in the other row-end of Row 7`, `at the right-hand end of Row 2`: one end of one row. */
export function endOfRow(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  const onSide = lastRowOnSide(reader)
  if (onSide) return { walk: 'edge', ...onSide, start, end: reader.end }
  if (reader.take('in|into|at|to|through|around|round', 'the|a?', 'other|opposite|same|second?')) {
    const left = reader.take('left', '-?', 'hand?')
    const right = !left && reader.take('right', '-?', 'hand?')
    const { at: here } = reader
    const facing = takeFacing(reader)
    // `the dc row-end of Row 1`: its stitch is that of its row.
    takeStitchName(reader)
    const row = !severalRows(reader) && (roundEnd(reader) || reader.take('end|side|edge', 'of') || reader.take('row', '-?', 'end|edge|side', 'of|at|on')) && takeOneRow(reader)
    if (row) {
      reader.take('of|on', 'both', 'pieces|panels|layers')
      return { walk: 'edge', ...row, ...((left || right) && { hand: left ? 'left' as const : 'right' as const }), ...(facing && { facing }), start, end: reader.end }
    }
    reader.at = here
    const piece = endOfPiece(reader)
    if (piece !== undefined) return { walk: 'edge', rowCalled: '', ofPiece: piece, start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `in last row of Edging at left side`: its end there. */
function lastRowOnSide(reader: Reader): Pick<Target, 'ofRow' | 'rowCalled' | 'ofPiece' | 'hand'> | undefined {
  const { at } = reader
  const row = reader.take('in|into|to|at', 'the?') && /^(?:last|first|final|top|bottom)$/.test(reader.word()) ? takeOneRow(reader) : undefined
  if (row && reader.take('at|on', 'the?')) {
    const hand = reader.take('left') ? 'left' : reader.take('right') ? 'right' : undefined
    reader.take('-?', 'hand?')
    if (hand && reader.take('side|edge|end')) return { ...row, hand }
  }
  reader.at = at
  return undefined
}

/** `in the end of the foundation edging`, `in the row-end of the Left edging at the lower left-hand corner`: of a row that is not named, as an edging has few. */
function endOfPiece(reader: Reader): string | undefined {
  const { at } = reader
  reader.take('lower|upper|bottom|top|near|far|free')
  reader.take('row', '-?')
  const piece = reader.take('end', 'of', 'the?') ? takePieceName(reader) : undefined
  const { at: behind } = reader
  const ends = piece !== undefined && (placeEnds(reader, 'with') || takeWhereabouts(reader) !== undefined)
  reader.at = ends ? behind : at
  return ends ? piece : undefined
}

/** `around the post of the edge st of Row 4`, `around the turning ch of Row 5`: what stands at the end of a row. */
function roundEnd(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('post', 'of', 'the?', 'edge|end|outer|last|first', 'st|stitch', 'of') || /^(?:around|round|the)$/.test(reader.word(-1)) && reader.take('turning', 'ch|chain', 'of')) return true
  reader.at = at
  return false
}

/** `side of Row 12, Row 11, Row 10 and Row 9`: one end of each of them. Takes nothing. */
function severalRows(reader: Reader): boolean {
  const { at } = reader
  // `in the side of Row 1 and 2 dc in …`: the number of what is worked next.
  const several = reader.take('end|side|edge') && takeOfRows(reader) !== undefined && reader.vocabulary.stitchAt([reader.word(), reader.word(1)]) === undefined
  reader.at = at
  return several
}

/** `neck-side`, `inner`, `outer-edge`: which of the two ends of a row is meant. */
function takeFacing(reader: Reader): Target['facing'] {
  const { at } = reader
  const inner = reader.take('neck|inner|inside|inward')
  // `at the neck edge of Row 4`: the edge is the end of that row.
  const told = (inner || reader.take('outer|outside|outward')) && (/^(?:side|edge)$/.test(reader.word()) && reader.word(1) === 'of' || reader.take('-?', 'side|edge|facing?', '-?'))
  if (told) return inner ? 'step' : 'away'
  reader.at = at
  return undefined
}
