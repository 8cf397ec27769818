import type { Instruction } from '../notation/syntax.ts'
import { wordsOf } from './joined-above.ts'
import type { PieceToWork } from './piece-run.ts'
import type { WrittenEntry } from './real-rows.ts'

/**
 * Two pieces lie on one another and a border goes through both: it is written on the one that faces, but where it names rows or a flap that only
 * the other has, or goes on along that one alone, it goes along the edge of that one, which is the larger.
 */
export function onTheLarger(pieces: readonly PieceToWork[]): readonly PieceToWork[] {
  return pieces.map((piece, index) => {
    const facing = piece.on === undefined ? undefined : pieces[piece.on]
    if (!facing || facing.on !== undefined || piece.onGrid) return piece
    const words = piece.entries.flatMap(wordsOf)
    if (!throughLayers(words)) return piece
    const named = rowsNamed(words)
    const flap = words.flatMap((item) => (item.node === 'aside' && item.oneLayer ? (item.words ?? '').split(' ') : []))
    const has = (one: PieceToWork): boolean => named.every((row) => row <= lastRow(one)) && !flap.some((word) => nouns.test(word) && !one.name.toLowerCase().includes(word))
    const others = pieces.flatMap((other, at) => (at < index && at !== piece.on && other.on === undefined && has(other) ? [at] : []))
    const alone = new Set(piecesAlone(words))
    const goesOn = others.length === 1 && alone.size === 1 && alone.has(pieces[others[0]!]!.name.toLowerCase())
    return has(facing) && !goesOn || others.length !== 1 ? piece : { ...piece, entries: piece.entries.map((entry) => onLower(entry, facing.name)), on: others[0]!, laidOn: lastRow(facing) }
  })
}

/** Parts that one of two pieces may have beyond the other. */
const nouns = /^(?:flap|bib|lid|tab)$/

const throughLayers = (items: readonly Instruction[]): boolean => items.some((item) => item.node === 'start' && item.target.walk === 'layers' || item.node === 'work' && item.layers === true)

/** `join yarn in the row-end of Row 9 of Front`: the one that faces lies row on row on the other. */
function onLower(entry: WrittenEntry, facing: string): WrittenEntry {
  const items = entry.read.items.map((item): Instruction => {
    if (item.node !== 'start' || item.target.ofPiece?.toLowerCase() !== facing.toLowerCase()) return item
    const { ofPiece: _, ...target } = item.target
    return { ...item, target }
  })
  return { ...entry, read: { ...entry.read, items } }
}

/** `2 sc in each of next 4 row-ends of Back`, and not through both layers: names of pieces, in small letters. */
function piecesAlone(items: readonly Instruction[]): readonly string[] {
  return items.flatMap((item) => (item.node === 'repeat' || item.node === 'group' ? piecesAlone(item.items) : item.node === 'work' && item.layers !== true ? [item.target?.sideOf ?? item.target?.ofPiece ?? []].flat().map((name) => name.toLowerCase()) : []))
}

/** Numbers of the rows that are named as places. */
function rowsNamed(items: readonly Instruction[]): readonly number[] {
  return items.flatMap((item) => {
    const inside = item.node === 'repeat' || item.node === 'group' ? rowsNamed(item.items) : []
    const target = item.node === 'work' || item.node === 'group' || item.node === 'start' ? item.target : undefined
    return target?.ofRow === undefined ? inside : [...inside, target.ofRow]
  })
}

/** The highest number of a piece's rows. */
export function lastRow({ entries }: PieceToWork): number {
  return Math.max(0, ...entries.flatMap(({ label }) => label?.numbers ?? []))
}
