import type { Instruction } from '../notation/syntax.ts'
import { alongEdges, joinsAnew } from './edge-for.ts'
import { joinedAbove, tellsItsBeginning, wordsOf } from './joined-above.ts'
import type { PieceToWork } from './piece-run.ts'
import { yarnAtEnd } from './yarn-at-end.ts'

/**
 * The pieces, each on the one where the yarn is: an edging of the pouch that joins no yarn goes on from the flap that was worked on it last,
 * when that joined none either, or says that its yarn is kept. A hook has one yarn (mathematics of the craft: it cannot be in two places).
 */
export function whereTheYarnIs(pieces: readonly PieceToWork[]): readonly PieceToWork[] {
  return pieces.map((piece, index) => {
    if (piece.on === undefined || !goesOn(piece) || !alongEdges(firstWords(piece))) return piece
    let { on } = piece
    for (let at = on + 1; at < index; at += 1) {
      const between = pieces[at]!
      if (between.on === on && !isCut(between) && (goesOn(between) || between.yarnAtEnd === 'kept')) on = at
    }
    return on === piece.on ? piece : { ...piece, on }
  })
}

function firstWords({ entries }: PieceToWork): readonly Instruction[] {
  return entries[0] ? wordsOf(entries[0]) : []
}

/** It joins no yarn before it works. */
function goesOn(piece: PieceToWork): boolean {
  const words = firstWords(piece)
  const works = words.findIndex(({ node }) => node === 'work' || node === 'group' || node === 'repeat')
  const before = words.slice(0, works)
  return works >= 0 && !joinedAbove(piece.entries[0]!) && !joinsAnew(before) && !tellsItsBeginning(before)
}

function isCut({ entries, yarnAtEnd: told }: PieceToWork): boolean {
  return told === 'cut' || (entries.at(-1)?.read.items ?? []).some((item) => item.node === 'aside' && yarnAtEnd(item.words ?? '') === 'cut')
}
