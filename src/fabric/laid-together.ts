import type { Instruction } from '../notation/syntax.ts'
import { wordsOf } from './joined-above.ts'
import type { PieceToWork } from './piece-run.ts'

/**
 * Two pieces lie on one another and a border goes through both: it is written on the one that faces, but where it names rows or a flap that only
 * the other has, it goes along the edge of that one, which is the larger.
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
    return has(facing) || others.length !== 1 ? piece : { ...piece, on: others[0]!, laidOn: lastRow(facing) }
  })
}

/** Parts that one of two pieces may have beyond the other. */
const nouns = /^(?:flap|bib|lid|tab)$/

const throughLayers = (items: readonly Instruction[]): boolean => items.some((item) => item.node === 'start' && item.target.walk === 'layers' || item.node === 'work' && item.layers === true)

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
