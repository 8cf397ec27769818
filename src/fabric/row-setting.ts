import type { Instruction } from '../notation/syntax.ts'
import { deniedChains } from './denied-chains.ts'
import { joinedAbove } from './joined-above.ts'
import type { Lexicon } from './lexicon.ts'
import type { RealRow } from './real-rows.ts'
import type { RowSetting } from './walk.ts'
import type { PieceToWork } from './piece-run.ts'
import type { State } from './work-piece.ts'

/** What a row is worked by: the pattern's conventions, and what the rows so far have said and left. */
export function settingOf(piece: PieceToWork, row: RealRow, index: number, state: State, room: number): RowSetting {
  const plain = plainStitches(row.items, piece.lexicon)
  const onlySlips = plain.length > 0 && plain.every((stitch) => stitch === 'sl st')
  const below = state.entry === undefined ? piece.onFabric?.below : state.number
  return {
    lexicon: piece.lexicon, piece: piece.name.toLowerCase(), size: piece.size, rowIndex: index, conventions: { ...piece.conventions, denied: deniedChains(piece.entries, piece.lexicon), turningChains: { ...state.stated, ...piece.conventions.turningChains } }, readings: piece.readings, room, rowsBefore: state.rowsBefore, ...(below !== undefined && { below }), ...(state.yarn !== undefined && { yarn: state.yarn }), pieces: piece.pieceEdges ?? new Map(), hangsWith: piece.onFabric?.names ?? new Set(),
    base: plain.find((stitch) => stitch !== 'sl st') ?? state.kind, round: row.round, loop: row.loop, slipFabric: onlySlips && !hasChains(row.items), slipsFasten: onlySlips && hasChains(row.items),
    ...((state.entry === undefined && piece.onFabric || row.anew || joinedAbove(row.entry)) && { beginsPart: true }),
    ...(state.number !== undefined && !row.anew && piece.takenUpLater?.has(state.number) && { takenUpLater: true }),
    ...(below !== undefined && state.outline.flatRows === below && !state.gap && !state.trust && { rowsOnSide: below }),
    ...(piece.sewn && { sewn: true }), ...(piece.onFabric?.copies !== undefined && { copies: piece.onFabric.copies }),
    ...(piece.laidOn !== undefined && { laidOn: piece.laidOn }),
    ...(piece.onFabric?.name !== undefined && state.entry === undefined && { standsOn: piece.onFabric.name }),
    ...(piece.beside && state.entry === undefined && { beside: piece.beside }),
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
