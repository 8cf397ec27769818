import type { Instruction } from '../notation/syntax.ts'
import type { Target } from '../notation/target.ts'
import { borderEdge } from './border-edge.ts'
import { heldEdge, type Held } from './held.ts'
import { hasSpaces } from './find-place.ts'
import type { Stretch } from './laid-row.ts'
import type { Outline } from './outline.ts'
import type { Edge } from './place.ts'
import type { RealRow } from './real-rows.ts'
import { turnBefore } from './turns.ts'

interface Fabric {
  readonly held: readonly Held[]
  readonly piece: string
  readonly size: number
  readonly edge: Edge
  readonly outline: Outline
  readonly turnsAfter: boolean
  /** The outline is what seams leave open: a row of stitches alone may go over them, as a collar over the shoulders. */
  readonly sewn?: boolean
}

/** What a row works on: the row below, or, when it goes along the edges of flat rows, their outline. */
export function edgeFor(row: RealRow, { edge, outline, turnsAfter, held, piece, size, sewn }: Fabric): Edge {
  const waiting = held.length > 0 ? heldEdge(row.items, row.round, held, piece, size) : undefined
  if (waiting) return waiting
  if (edge.formsRing) return namesChains(row.items) ? edge : { places: [{ kind: 'ring', row: 0 }], round: true, chain: false }
  const border = row.round && !edge.round && outline.flatRows > 1 && edge.places.length > 0
  const atOpening = outline.opened && alongEdges(row.items)
  if (!atOpening && (edge.round || row.round) && outline.bottom.length > 0 && onFoundation(row.items) && (!hasSpaces(edge.places) || joinsUnder(row.items))) return { places: outline.bottom, round: row.round, chain: false }
  if (outline.flatRows === 0 && !outline.opened || !border && !sewn && !alongEdges(row.items) && !(onFoundation(row.items) && !edge.round && !edge.chain && !hasSpaces(edge.places))) return edge
  const said = turnBefore(row.items)
  const faced = said === undefined ? toFace(row, outline.side) : undefined
  const turned = said ?? faced ?? turnsAfter
  const stretches = beginsAtCorner(row.items) ? fromPoint(outline.walk(turned)) : outline.walk(turned)
  return { places: stretches.flatMap(({ places }) => places), round: row.round, chain: false, outline: { ...borderEdge(stretches, turned), ...(faced !== undefined && { faced: true }) } }
}

/** `Row 1 (RS): With RS facing and the foundation edge uppermost, join yarn`: the work lies so that this side faces the maker. */
function toFace({ side, items }: RealRow, below: RealRow['side']): boolean | undefined {
  return side && below && joinsAnew(items) ? side !== below : undefined
}

/** `Row 1 (RS): With RS facing, join yarn in first st of Row 9` of a piece that ends with a right-side row: nothing is turned, and the first stitch is that of Row 9. */
export function facesAgain({ side, round, items }: RealRow, { side: below, turned, edge, entry }: { readonly side?: RealRow['side']; readonly turned: boolean; readonly edge: Edge; readonly entry?: unknown }): boolean {
  return entry === undefined && !round && !edge.round && !edge.chain && turned && side !== undefined && side === below && items.some(({ node }) => node === 'start') && turnBefore(items) === undefined && !alongEdges(items)
}

/** `3 dc in the point, 11 dc down the sloping side`. */
function beginsAtCorner(items: readonly Instruction[]): boolean {
  const first = items.find(({ node }) => node === 'work' || node === 'group' || node === 'repeat' || node === 'start')
  return (first?.node === 'work' || first?.node === 'group') && first.target?.thing?.kind === 'stitch' && first.target.thing.where === 'corner'
}

/** Of a piece that ends in a point the one stitch there lies behind the hook, and is worked before the side. */
function fromPoint(stretches: readonly Stretch[]): readonly Stretch[] {
  const top = stretches.at(-1)
  return top?.edge === 'top' && top.places.length === 1 ? [top, ...stretches.slice(0, -1)] : stretches
}

/** `Dc in each ch around`: the chains of a ring are worked one by one. */
function namesChains(items: readonly Instruction[]): boolean {
  return items.some((item) => (item.node === 'work' || item.node === 'group') && item.target?.thing?.kind === 'chain' || item.node === 'repeat' && namesChains(item.items))
}

/** `Join yarn in first foundation ch`, `in the underside of each ch`: a chain where the last row has none. */
export function onFoundation(items: readonly Instruction[]): boolean {
  return items.some((item) => item.node === 'start' && (item.target.thing?.kind === 'chain' || item.target.walk === 'other-side') || (item.node === 'work' || item.node === 'group') && item.target?.edge === 'underside')
}

/** `Join yarn in the underside of first ch, sc in the underside of each of the 32 ch`: of no row that is named, and so of the first, be there spaces of chains on the last round or not. */
function joinsUnder(items: readonly Instruction[]): boolean {
  const under = items.filter((item) => (item.node === 'work' || item.node === 'group') && item.target?.edge === 'underside' && item.target.ofRow === undefined && item.target.held === undefined)
  return under.length > 0 && items.some((item) => item.node === 'start' && item.target.edge === 'underside' && item.target.ofRow === undefined)
}

/** Whether instructions name the edges of the fabric: row-ends, a side, the underside of the foundation. */
export function alongEdges(items: readonly Instruction[]): boolean {
  return items.some((item) => (item.node === 'work' || item.node === 'group') && alongEdge(item.target) || item.node === 'start' && alongEdge(item.target)
    || (item.node === 'repeat' || item.node === 'group') && alongEdges(item.items))
}

/** `Row 11` on a piece of 10 rows that names no edge and no other piece: it lies on Row 10, whatever the piece is sewn to later. */
export function goesOnFlat({ number, round, items }: { readonly number?: number; readonly round: boolean; readonly items: readonly Instruction[] }, below: number | undefined): boolean {
  return !round && number !== undefined && number > 1 && number - 1 === below && !alongEdges(items) && !namesPiece(items)
}

/** `sc in each of 12 sts of Back` */
function namesPiece(items: readonly Instruction[]): boolean {
  return items.some((item) => (item.node === 'work' || item.node === 'group' || item.node === 'start') && item.target?.ofPiece !== undefined || (item.node === 'repeat' || item.node === 'group') && namesPiece(item.items))
}

function alongEdge(target: Target | undefined): boolean {
  return target?.walk === 'edge' || target?.evenly === true || target?.thing?.kind === 'row-end' || target?.thing?.kind === 'edge'
}

/** The yarn is joined, or the words tell how the work lies for it. */
export function joinsAnew(items: readonly Instruction[]): boolean {
  return items.some((item) => item.node === 'start' && item.target.walk !== 'edge' || item.node === 'work' && item.layers === true || item.node === 'aside' && /\b(?:(?:re)?(?:join|attach)|facing|loop|standing)\b/.test(item.words ?? ''))
}
