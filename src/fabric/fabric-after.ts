import { inSize } from '../notation/target.ts'
import { endsOf, type LaidRow } from './laid-row.ts'
import { Outline } from './outline.ts'
import { goesOver, overEnds } from './over-pieces.ts'
import type { FabricPart } from './parts.ts'
import type { PieceRun } from './piece-run.ts'
import type { FinishedEdge } from './place.ts'
import type { RealRow } from './real-rows.ts'
import type { RowSetting } from './row-setting.ts'
import { turnAfter } from './turns.ts'
import type { State } from './work-piece.ts'
import type { RowTry } from './work-row.ts'
import { workedOverSlips } from './worked-over-slips.ts'

/** A row that makes anything is laid on the fabric. The outline is the piece's own and grows with it. */
export function fabricAfter(row: RealRow, tried: RowTry, { outline, base, laid, turned, edge, rowsBefore }: State, where: Pick<LaidRow, 'side' | 'piece'>, { size, pieces }: Pick<RowSetting, 'size' | 'pieces'>): Pick<State, 'outline' | 'laid' | 'turned' | 'turnsAfter' | 'stays'> {
  const said = turnAfter(row.items)
  const behind = { turnsAfter: said === true, stays: said === false }
  if (tried.row.made.length === 0) {
    closeInPart(outline, row, size)
    return { outline, laid, turned, ...behind }
  }
  const over = tried.lies.legs && goesOver(tried.lies.legs, outline, (name) => outlinesOf(pieces.get(name.toLowerCase())), where.side)
  const lies: LaidRow = { name: row.label, ...where, ...(row.number !== undefined && { number: row.number }), ...calledBy(row), round: row.round, ...(!row.round && (tried.onRow === undefined ? edge.round : rowsBefore.get(tried.onRow)?.round) && { onRound: true }), ...(tried.tube && { tube: true }), ends: endsOf(tried.lies.places), ...tried.lies, ...(over && { goesOver: over, over: overEnds(over) }) }
  const after = { turned: tried.row.turned, ...behind }
  const again = workedOverSlips(laid, tried.row.made)
  if (!again) {
    outline.lay(lies, turned)
    closeInPart(outline, row, size)
    return { outline, laid: [...laid, { row: lies, turned }], ...after }
  }
  const anew = base?.copy() ?? new Outline()
  const all = [...again, { row: lies, turned }]
  for (const one of all) anew.lay(one.row, one.turned)
  return { outline: anew, laid: all, ...after }
}

/** `sew 8 row-ends, leave 7 row-ends open, sew 15` */
function closeInPart(outline: Outline, { items }: RealRow, size: number): void {
  for (const item of items) if (item.node === 'aside' && item.closed) outline.closeInPart(item.closed.portions.map(({ count, open }) => ({ count: inSize(count, size), open })))
}

/** A row that begins elsewhere leaves the part before it to wait. */
export function endedParts({ anew }: RealRow, { onRow, lies }: RowTry, { parts, entry, edge, number }: State): readonly FabricPart[] {
  return entry && (anew || onRow !== undefined || lies.crossings) ? [...parts, { name: entry.heading ?? '', places: edge.places, number }] : parts
}

/** The parts that a piece ends in; the last one is that at whose end the hook stands. */
export function partsAtEnd({ parts, entry, edge, number }: State): Pick<PieceRun, 'parts'> {
  return parts.length > 0 && entry?.heading !== undefined ? { parts: [...parts, { name: entry.heading, places: edge.places, number }] } : {}
}

function outlinesOf(edge: FinishedEdge | undefined): readonly Outline[] {
  return [edge, ...(edge?.others ?? [])].flatMap((one) => one?.outline?.() ?? [])
}

function calledBy({ entry: { label } }: RealRow): Pick<LaidRow, 'called'> {
  return label && label.numbers.length === 0 ? { called: label.name.replace(/[\s:.(]+$/, '').toLowerCase() } : {}
}
