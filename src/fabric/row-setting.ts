import type { Instruction } from '../notation/syntax.ts'
import type { Conventions } from './conventions.ts'
import { deniedChains } from './denied-chains.ts'
import { joinedAbove } from './joined-above.ts'
import type { Lexicon } from './lexicon.ts'
import type { OlderRow } from './older-row.ts'
import type { PartsJoined } from './parts.ts'
import type { FinishedEdge } from './place.ts'
import type { RealRow } from './real-rows.ts'
import type { PieceToWork } from './piece-run.ts'
import type { State } from './work-piece.ts'

/** What a row is worked by: the pattern's conventions, and what the rows so far have said and left. */
export interface RowSetting {
  readonly lexicon: Lexicon
  /** Name of the piece that the row belongs to, in small letters. */
  readonly piece: string
  readonly size: number
  readonly rowIndex: number
  readonly conventions: Conventions
  /** Stitch that `inc`, `dec` and plain shaping are made of in this row. */
  readonly base: string
  readonly round: boolean
  readonly loop?: 'back' | 'front' | 'third' | undefined
  /** The row is slip stitches throughout: then they are its stitches. */
  readonly slipFabric: boolean
  /** The row has no stitches but slip stitches between chains: they only fasten the chains. */
  readonly slipsFasten: boolean
  /** Readings chosen for this try, by the name of the place where the row can be read in two ways. */
  readonly readings: ReadonlyMap<string, number>
  /** It is joined anew beside another piece on the same row, and is the last one there or not. */
  readonly beside?: 'next' | 'last'
  /** A later piece takes up what is left of the row below. */
  readonly takenUpLater?: boolean
  /** It is the first row of a part: it begins at the stitches that it names, wherever they lie. */
  readonly beginsPart?: boolean
  /** The pattern tells of folding or sewing: an edge may be closed that no row works along. Of a piece that is laid on this one the last row, beside which a border may begin. */
  readonly sewn?: boolean; readonly laidOn?: number; readonly copies?: number
  /** It is worked as a row of another piece: the pieces that it names are those of that one. */
  readonly copied?: boolean
  /** Its shaping is reversed: it is worked over the edge from the other end. */
  readonly mirrored?: boolean
  /** Stitches that may still be made. */
  readonly room: number
  /** Number of the row below; how many row-ends a side of the piece has, where no row is in doubt and all have numbers. */
  readonly below?: number; readonly rowsOnSide?: number
  /** Letter of the yarn in hand when the row begins. */
  readonly yarn?: string
  /** Edges of the pieces worked before, by name in small letters: for `sc around Leg 1`. */
  readonly pieces: ReadonlyMap<string, FinishedEdge>
  /** Names of the pieces that this one hangs together with, in small letters: their edges lie along its outline. */
  readonly hangsWith: ReadonlySet<string>
  /** Of the first row of a piece: the piece that it goes on from, in small letters. */
  readonly standsOn?: string
  /** Parts that the row joins: their tops, and the one at which it begins. */
  readonly parts?: PartsJoined
  /** Earlier rows by number: what they made, and what of it the next row left. */
  readonly rowsBefore: ReadonlyMap<number, OlderRow>
  /** Slip stitches with which the row below was joined to another piece at its end. */
  readonly joinedBelow?: number
  /** Pieces whose row-ends the row names, in small letters. */
  readonly sidesNamed: ReadonlySet<string>
}

export function settingOf(piece: PieceToWork, row: RealRow, index: number, state: State, room: number): RowSetting {
  const plain = plainStitches(row.items, piece.lexicon)
  const onlySlips = plain.length > 0 && plain.every((stitch) => stitch === 'sl st')
  const below = state.entry === undefined ? piece.onFabric?.below : state.number
  return {
    lexicon: piece.lexicon, piece: (piece.called ?? piece.name).toLowerCase(), size: piece.size, rowIndex: index, conventions: { ...piece.conventions, denied: deniedChains(piece.entries, piece.lexicon), turningChains: { ...state.stated, ...piece.conventions.turningChains } }, readings: piece.readings, room, rowsBefore: state.rowsBefore, sidesNamed: sidesNamed(row.items), ...(below !== undefined && { below }), ...(state.yarn !== undefined && { yarn: state.yarn }), pieces: piece.pieceEdges ?? new Map(), hangsWith: piece.onFabric?.names ?? new Set(),
    base: plain.find((stitch) => stitch !== 'sl st') ?? state.kind, round: row.round, loop: row.loop, slipFabric: onlySlips && !hasChains(row.items), slipsFasten: onlySlips && hasChains(row.items),
    ...((state.entry === undefined && piece.onFabric || row.anew || joinedAbove(row.entry)) && { beginsPart: true }),
    ...(state.number !== undefined && !row.anew && piece.takenUpLater?.has(state.number) && { takenUpLater: true }),
    ...(below !== undefined && state.outline.flatRows === below && !state.gap && !state.trust && { rowsOnSide: below }),
    ...(piece.sewn && { sewn: true }), ...(piece.onFabric?.copies !== undefined && { copies: piece.onFabric.copies }),
    ...(piece.laidOn !== undefined && { laidOn: piece.laidOn }),
    ...(piece.onFabric?.name !== undefined && state.entry === undefined && { standsOn: piece.onFabric.name }),
    ...(state.joinedBelow !== undefined && { joinedBelow: state.joinedBelow }),
    ...(row.copies && { copied: true }), ...(piece.beside && state.entry === undefined && { beside: piece.beside }),
  }
}

/** Whether chains stand among the row's instructions, the one that begins it apart. */
function hasChains(items: readonly Instruction[], first = true): boolean {
  const own = items.filter(({ node }) => node !== 'aside' && node !== 'turn')
  return own.some((item, index) => item.node === 'chain' && !(first && index === 0) || (item.node === 'repeat' || item.node === 'group') && hasChains(item.items, false))
}

/** Plain stitches that a row names, in order: the first is what its inc and dec are made of. */
export function plainStitches(items: readonly Instruction[], lexicon: Lexicon): readonly string[] {
  const found: string[] = []
  for (const item of items) {
    if (item.node === 'work' && item.stitch !== 'inc' && item.stitch !== 'dec') {
      const stitch = lexicon.stitch(item.stitch)
      if (stitch) found.push(stitch.base && lexicon.stitch(stitch.base) && stitch.worksOver > 1 ? stitch.base : stitch.base && stitch.makes === 1 ? stitch.base : item.stitch)
    } else if (item.node === 'repeat' || item.node === 'group') found.push(...plainStitches(item.items, lexicon))
    else if (item.node === 'work' && item.base) found.push(item.base)
    else if (item.node === 'work' && found.length === 0) continue
  }
  return found
}

/** `9 row-ends of Left front, 9 row-ends of Back`: pieces, in small letters. */
function sidesNamed(items: readonly Instruction[]): ReadonlySet<string> {
  return new Set(items.flatMap((item) => (item.node === 'repeat' || item.node === 'group' ? [...sidesNamed(item.items)] : item.node === 'work' && item.target?.sideOf !== undefined ? [item.target.sideOf.toLowerCase()] : [])))
}
