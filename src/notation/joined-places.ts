import { isEndOfRow } from './end-of-row.ts'
import { takePieceName } from './parse-piece-name.ts'
import { takeTarget } from './parse-target.ts'
import { pieceNamedLast } from './piece-named-last.ts'
import type { Reader } from './reader.ts'
import type { Instruction, JoinedPlaces } from './syntax.ts'
import type { Target } from './target.ts'

/** `sl st in each of next 2 sts of Body` behind the stitches of a row, at its end: the row is joined there to an edge that it is worked sideways on to. Takes nothing. */
export function joinedPlaces(reader: Reader, before: readonly Instruction[]): JoinedPlaces | undefined {
  if (!before.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat')) return undefined
  const { at } = reader
  const target = takeTarget(reader)
  const piece = target && (target.ofPiece ?? (reader.take('of') ? takePieceName(reader) : pieceNamedLast(reader, at, 'of|on|to')))
  const ends = reader.done || /^[.;]$/.test(reader.word()) || reader.word() === ',' && reader.word(1) === 'turn'
  reader.at = at
  if (!target || piece === undefined || !ends) return undefined
  const { walk, count = { values: [1], start: target.start, end: target.end }, ofRow, ofRows, hand } = target
  const ofOne = walk === 'edge' && ofRow !== undefined
  const edge = ofOne || walk === 'next' || walk === 'first' || walk === 'last' ? edgeOfPlaces(target) : undefined
  const row = ofOne ? { values: [ofRow], start: target.start, end: target.end } : ofRows?.first
  return edge && { piece, edge, count, ...(row && { row }), ...(hand && { hand }) }
}

/** The edge of a piece that places lie on, by what they are. */
export function edgeOfPlaces(target: Target): JoinedPlaces['edge'] | undefined {
  if (target.edge === 'underside' || target.thing?.kind === 'chain') return 'underside'
  if (isEndOfRow(target) || target.thing?.kind === 'row-end') return 'side'
  return target.thing?.kind === 'stitch' ? 'top' : undefined
}
