import { takeOneRow } from './parse-one-row.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Target } from './target.ts'

/** `in the right-hand st of Row 6`: the stitch at that end of it. */
export function handedStitch(reader: Reader): Target | undefined {
  const { at, start } = reader
  reader.take('in|into|to|at', 'the?')
  const hand = (['left', 'right'] as const).find((side) => reader.take(side, '-?', 'hand'))
  if (hand) reader.take('end|corner|top|last|first')
  const row = hand && (reader.take('st|stitch') || takeStitchName(reader) !== undefined) && reader.take('of') ? takeOneRow(reader) : undefined
  if (row) return { walk: 'next', thing: { kind: 'stitch' }, hand: hand!, ...row, start, end: reader.end }
  reader.at = at
  return undefined
}

/** `in the st at the right-hand end of Row 8`: which of the row's stitches. */
export function takeHandOfRow(reader: Reader): Pick<Target, 'hand' | 'ofRow' | 'rowCalled' | 'ofPiece'> | undefined {
  const { at } = reader
  const hand = reader.take('at|on|nearest', 'the?') ? (['left', 'right'] as const).find((side) => reader.take(side, '-?', 'hand?')) : undefined
  const row = hand && reader.take('end|edge|side', 'of') ? takeOneRow(reader) : undefined
  if (row) return { hand: hand!, ...row }
  reader.at = at
  return undefined
}
