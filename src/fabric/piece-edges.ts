import type { BorderEdge } from './border-edge.ts'
import type { Lexicon } from './lexicon.ts'
import type { Stretch } from './laid-row.ts'
import { motifEdge, type MotifSide } from './motif-sides.ts'
import { isStitch, type Place } from './place.ts'
import type { PieceRun } from './piece-run.ts'

/** One stretch of a finished piece's outline. */
export interface PieceEdge {
  /** `round`: the last round of a piece that closes on itself. The others as in an outline. */
  readonly edge: 'round' | Stretch['edge']
  /** Rows that it belongs to, as a person names them, in the order of the walk; none for a foundation. */
  readonly rows: readonly string[]
  /** Places that a hook can go into: stitches, row-ends or chains. */
  readonly places: number
  /** Of row-ends: their height in chains, by the stitches that they end with. */
  readonly height?: number
}

/** All round a finished piece, from the last stitch worked in the direction of work; of a tube its two ends. */
export function pieceEdges(run: PieceRun, lexicon: Lexicon): readonly PieceEdge[] {
  if (run.edge.round || run.outline.flatRows === 0) {
    const last = run.rows.findLast(({ fabric }) => fabric.made.length > 0)
    const top: PieceEdge = { edge: 'round', rows: last ? [last.label] : [], places: run.edge.places.length }
    const { bottom } = run.outline
    return [...(run.edge.places.length > 0 ? [top] : []), ...(bottom.length > 0 ? [{ edge: 'underside' as const, rows: [], places: bottom.length }] : [])]
  }
  return run.outline.walk(false).map(({ edge, rows, places }) => ({
    edge, rows: edge === 'underside' ? [] : rows.map(({ name }) => name), places: places.length,
    ...(edge === 'row-ends' && { height: places.reduce((sum, { into }) => sum + (lexicon.stitch(into?.kind ?? '')?.height ?? 1), 0) }),
  }))
}

/** Undersides of the chain that a piece began with. */
export function undersideOf({ outline }: PieceRun): readonly Place[] {
  if (outline.flatRows === 0) return outline.bottom
  return outline.walk(false).filter(({ edge, rows }) => edge === 'underside' && rows[0]!.foundation.length > 0).flatMap(({ places }) => places)
}

/** Stitches of an edge between two of its turns: a top, a step, a side. */
export interface Section {
  readonly edge: Stretch['edge']
  readonly stitches: number
  /** Of a top or a step: the number of its row. */
  readonly number?: number | undefined
  /** Its first or last stitch is a decrease, which may lie over the corner: one stitch belongs to either side. */
  readonly overCorner?: true
}

/** The edge of a piece that is to be sewn on. */
export interface SeamEdge {
  /** Stitches of the last round, or places all round a flat piece. */
  readonly stitches: number
  readonly round: boolean
  /** From the top on, counterclockwise as seen from the right side; empty where the piece does not tell. */
  readonly sections: readonly Section[]
  /** What lies between its corners, in the order of the sections. */
  readonly sides: readonly Omit<MotifSide, 'places'>[]
  /** Of a flat piece: those of its edges that its own rows make, and not the piece that it goes on from. */
  readonly own: readonly Section[]
  /** It ends in parts of their own, such as two shoulders: each has a top, and between them lies a neck. */
  readonly inParts: boolean
  /** The chain under a turning chain that counts as a stitch may be taken for a place of the lower edge. */
  readonly based: boolean
  /** The right side is told: else the order may as well be the other. */
  readonly sided: boolean
  /** Of a piece that ends in a round, and is no border: the chains that it began with, and how many flat rows lie on them. */
  readonly foot: { readonly chains: number; readonly rows: number }
}

/** What a seam meets. A border's stitches belong to the edge of the flat piece that they stand on. */
export function seamEdge(run: PieceRun): SeamEdge {
  const round = run.edge.round || run.outline.flatRows === 0
  const walk = round ? (run.border ? sectionsOn(run.edge.places, run.border) : []) : run.outline.walk(false).map(({ edge, rows, places }) => ({ edge, stitches: places.length, ...(edge !== 'row-ends' && { number: rows[0]?.number }) }))
  const sided = run.side !== undefined
  const { sides } = motifEdge(run)
  return {
    stitches: round ? run.edge.places.filter((place) => isStitch(place)).length : walk.reduce((sum, { stitches }) => sum + stitches, 0),
    foot: round && !run.border ? { chains: run.laid[0]?.row.foundation.length ?? 0, rows: run.laid.filter(({ row }) => !row.round).length } : { chains: 0, rows: 0 },
    round, sided, based: run.outline.base !== undefined, own: round ? [] : ownSections(run),
    sides: (run.side === 'WS' ? sides.toReversed() : sides).map(({ places: _, ...side }) => side),
    inParts: !round && run.rows.some(({ anew }) => anew === true),
    // A right-handed worker goes along a top from right to left, as seen from the side that is worked on.
    sections: fromTop(run.side === 'WS' ? walk.toReversed() : walk),
  }
}

/** Stretches of its own rows. Slip stitches that the last row counts are sewn with its others, though they give its sides no height. */
function ownSections({ outline, laid, rows: worked }: PieceRun): readonly Section[] {
  const own = new Set(laid.map(({ row }) => row))
  const last = worked.findLast(({ fabric }) => fabric.made.length > 0)
  const slips = last?.kinds['sl st'] ?? 0
  const top = laid.at(-1)?.row
  const withSlips = ({ edge, row, stitches, number }: Section & { readonly row: unknown }): Section => ({ edge, ...(number !== undefined && { number }), stitches: edge === 'top' && row === top && stitches > 0 && stitches + slips === last?.makes ? stitches + slips : stitches })
  return outline.walk(false).map(({ edge, rows, places }) => ({ edge, stitches: edge === 'row-ends' ? rows.filter((row) => own.has(row)).length : own.has(rows[0]!) ? places.length : 0, row: rows[0], ...(edge !== 'row-ends' && { number: rows[0]?.number }) })).map(withSlips).filter(({ stitches }) => stitches > 0)
}

/** A border's stitches, by the stretch of the outline that they go back to. */
function sectionsOn(places: readonly Place[], { stretchOf }: BorderEdge): readonly Section[] {
  const found: { stretch: Stretch; decreases: boolean[] }[] = []
  for (const place of places) {
    if (!isStitch(place)) continue
    let under: Place | undefined = place
    let decrease = false
    while (under && !stretchOf.has(under)) {
      decrease ||= /\dtog$/.test(under.kind)
      under = under.into
    }
    const stretch = under && stretchOf.get(under)
    if (!stretch) return []
    const last = found.at(-1)
    if (last?.stretch === stretch) last.decreases.push(decrease)
    else found.push({ stretch, decreases: [decrease] })
  }
  const first = found[0]
  if (first && found.length > 1 && found.at(-1)!.stretch === first.stretch) first.decreases.unshift(...found.pop()!.decreases)
  return found.map(({ stretch, decreases }) => ({ edge: stretch.edge, stitches: decreases.length, ...((decreases[0] || decreases.at(-1)) && { overCorner: true }) }))
}

/** Sections in their order, from the top on; none where there is no top. */
export function fromTop(sections: readonly Section[]): readonly Section[] {
  const top = sections.findIndex(({ edge }) => edge === 'top')
  return top < 0 ? [] : [...sections.slice(top), ...sections.slice(0, top)]
}
