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
 *   in corner sp of the square before   in ch-1 sp between the two free corners of Square Two
 */
export function takeNeighbour(reader: Reader): Neighbour | undefined {
  // From corner to corner a tile is joined to tiles of its own piece.
  if (reader.tiles) return undefined
  const { at } = reader
  reader.take('in|into|to|through|under|around')
  reader.take('the')
  const corresponds = reader.take(matching)
  const next = reader.take('next|following')
  if (!next) reader.take('any|either|one|a|free|first|second|third|fourth|last', 'free?')
  const inTurn = reader.take(matching) || corresponds
  const thing = takeThing(reader)
  if (thing) takeWhichOfSide(reader)
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

/** `between the two free corners`, `on its free side`, `at the middle of the free side`, `opposite the join`: where on the motif beside the place lies. Two corners lie at the ends of a side. */
function takeWhichOfSide(reader: Reader): void {
  const { at } = reader
  if (reader.take('between', 'the|its?', 'two|2?', 'free|unjoined|outer|open?', 'corners', 'sps?')) return
  if (reader.take('at|in', 'the', 'middle|center|centre', 'of', 'the|its', 'free|unjoined|open|next?', 'side|edge')) return
  if (reader.take('on|along', 'the|its', 'free|unjoined|open|opposite', 'side|edge') || reader.take('opposite', 'the|any', 'join|joins')) return
  reader.at = at
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
  if (motif) reader.take('before|behind', 'it|this?', 'one?') || reader.take('just|already|you?', 'just|have?', 'made|worked|joined|finished|completed', 'before|last?')
  return motif || which && reader.take('one') || which && reader.word(-1).startsWith('neighbo')
}
