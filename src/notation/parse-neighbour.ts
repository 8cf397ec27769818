import { motifWord } from './motif-words.ts'
import { takePieceName } from './parse-piece-name.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Neighbour } from './neighbour.ts'

const matching = 'corresponding|matching|adjacent|opposite|facing|adjoining'

/**
 * Takes the place of the motif beside this one that a slip stitch goes into, whatever the row itself works over:
 *
 *   in corresponding ch-3 sp of previous motif   in next ch-1 sp of First square   in corner sp on adjacent motif   in matching corner
 */
export function takeNeighbour(reader: Reader): Neighbour | undefined {
  // From corner to corner a tile is joined to tiles of its own piece.
  if (reader.tiles) return undefined
  const { at } = reader
  reader.take('in|into|to|through|under|around')
  reader.take('the')
  const corresponds = reader.take(matching)
  const next = reader.take('next|following')
  if (!next) reader.take('any|either|one|a')
  const inTurn = reader.take(matching) || corresponds
  const thing = takeThing(reader)
  const here = reader.at
  const piece = reader.take('of|on|from|in|at') ? takePieceName(reader) : undefined
  const named = piece !== undefined || otherMotif(reader, here)
  if (!thing || !named && !inTurn) {
    reader.at = at
    return undefined
  }
  if (!named) reader.at = here
  return { space: thing.kind === 'space', corner: thing.where === 'corner', next: next && !inTurn, ...(piece !== undefined && { piece }) }
}

/** `of previous motif`, `on the adjoining square`, `of motif 1`. */
function otherMotif(reader: Reader, at: number): boolean {
  reader.at = at
  if (!reader.take('of|on|from|in|at')) return false
  reader.take('the')
  const which = reader.take('neighbour|neighbor|neighbouring|neighboring|previous|prev|other|first|second|third|last|next|joined|completed|adjacent|adjoining|corresponding|1st|2nd|3rd')
  while (reader.take('completed|joined|previous|adjacent|adjoining|row|of')) continue
  const motif = reader.take(motifWord)
  if (motif && reader.peek()?.kind === 'number') reader.at += 1
  return motif || which && reader.word(-1).startsWith('neighbo')
}
