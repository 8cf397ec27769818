import { takePieceName } from './parse-piece-name.ts'
import { takeTarget } from './parse-target.ts'
import type { Reader } from './reader.ts'
import type { Instruction, JoinedPlaces } from './syntax.ts'
import type { Num, Target } from './target.ts'

/** `sl st in each of next 2 sts of Body` behind the stitches of a row, at its end: the row is joined there to an edge that it is worked sideways on to. Takes nothing. */
export function joinedPlaces(reader: Reader, before: readonly Instruction[]): JoinedPlaces | undefined {
  if (!before.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat')) return undefined
  const { at } = reader
  const target = takeTarget(reader)
  const piece = target && (target.ofPiece ?? (reader.take('of') ? takePieceName(reader) : pieceNamedLast(reader, at)))
  const ends = reader.done || /^[.;]$/.test(reader.word()) || reader.word() === ',' && reader.word(1) === 'turn'
  reader.at = at
  if (!target || piece === undefined || !ends) return undefined
  const { walk, edge, thing, count = { values: [1], start: target.start, end: target.end }, ofRow, ofRows, hand } = target
  if (walk === 'edge' && ofRow !== undefined) return { piece, edge: 'side', count, row: { values: [ofRow], start: target.start, end: target.end }, ...(hand && { hand }) }
  if (walk === 'edge' && ofRows) return { piece, edge: 'side', count: asMany(ofRows), row: ofRows.first, ...(hand && { hand }) }
  if (walk !== 'next' && walk !== 'first' && walk !== 'last') return undefined
  const of = edge === 'underside' || thing?.kind === 'chain' ? 'underside' : thing?.kind === 'row-end' ? 'side' : thing?.kind === 'stitch' ? 'top' : undefined
  return of && { piece, edge: of, count, ...(ofRows && { row: ofRows.first }), ...(hand && { hand }) }
}

/** As many as there are rows: `the row-ends of Rows 1 and 2`. */
function asMany({ first, last }: NonNullable<Target['ofRows']>): Num {
  return { ...first, values: first.values.map((value, index) => Math.abs((last.values[index] ?? last.values[0]!) - value) + 1) }
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
