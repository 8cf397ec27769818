import { takePieceName } from './parse-piece-name.ts'
import { takeTarget } from './parse-target.ts'
import type { Reader } from './reader.ts'
import type { Instruction, JoinedPlaces } from './syntax.ts'

/** `sl st in each of next 2 sts of Body` behind the stitches of a row, at its end: the row is joined there to an edge that it is worked sideways on to. Takes nothing. */
export function joinedPlaces(reader: Reader, before: readonly Instruction[]): JoinedPlaces | undefined {
  if (!before.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat')) return undefined
  const { at } = reader
  const target = takeTarget(reader)
  const piece = target && (target.ofPiece ?? (reader.take('of') ? takePieceName(reader) : pieceNamedLast(reader, at)))
  const ends = reader.done || /^[.;]$/.test(reader.word()) || reader.word() === ',' && reader.word(1) === 'turn'
  reader.at = at
  if (!target || piece === undefined || !ends || target.walk !== 'next' && target.walk !== 'first') return undefined
  const { edge, thing, count, start, end } = target
  const of = edge === 'underside' || thing?.kind === 'chain' ? 'underside' : thing?.kind === 'row-end' ? 'side' : thing?.kind === 'stitch' ? 'top' : undefined
  return of && { piece, edge: of, count: count ?? { values: [1], start, end } }
}

/** The piece that the words end with which were taken from a token on: `the underside of each of next 2 ch of Body`. */
function pieceNamedLast(reader: Reader, from: number): string | undefined {
  const { at } = reader
  for (let back = at - 2; back > from; back -= 1) {
    reader.at = back
    if (!reader.take('of|on|to', 'the?')) continue
    const piece = takePieceName(reader)
    if (piece !== undefined && reader.at === at) return piece
  }
  reader.at = at
  return undefined
}
