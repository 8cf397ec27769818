import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted, listOf } from '../diagnostics/words.ts'
import { placesOfEdge, type NamedEdge } from '../fabric/named-edges.ts'
import type { PatternFacts, PieceFacts, SeamFacts } from './facts.ts'
import { edgeNames, edgesInSize } from './seam-words.ts'
import { toldOnceForSizes, type FoundInSize } from './told-once-for-sizes.ts'

interface Part {
  readonly seam: SeamFacts
  readonly edge: NamedEdge
  readonly row: number | undefined
  readonly under: string | undefined
  readonly count: number
}

/**
 * An edge that is sewn in parts, as the long side of a gusset round three sides: the parts may leave an opening, but never take more than
 * there is, and nobody leaves a single place open.
 */
export function seamPartsMismatch({ seams, pieces }: PatternFacts): readonly Diagnostic[] {
  return toldOnceForSizes(pieces.flatMap((piece) => {
    const parts = Map.groupBy(seams.flatMap((seam) => partsOf(seam, piece)), ({ edge, row, under }) => `${edge} ${row} ${under}`)
    return [...parts.values()].flatMap((told) => (told.length > 1 ? wrongIn(piece, told) : []))
  }))
}

/** Only an edge that is one stretch is meant: the part of a `side` may be of either. */
function partsOf(seam: SeamFacts, { name, size }: PieceFacts): readonly Part[] {
  if (seam.grid || seam.ease) return []
  return seam.join.flatMap((joined, index) => {
    const { edge, part, count, row, under } = edgesInSize(seam, size)[index] ?? {}
    return joined === name && edge !== undefined && edge !== 'any' && edge !== 'side' && edge !== 'all' && part && count !== undefined ? [{ seam, edge, row, under, count }] : []
  })
}

function wrongIn(piece: PieceFacts, told: readonly Part[]): readonly FoundInSize[] {
  const { counts, are } = placesOfEdge(piece.edge, { edge: told[0]!.edge, ...(told[0]!.row !== undefined && { row: told[0]!.row }) })
  const [offers] = counts
  // Each of two that are made may be sewn by another of its parts; of a stepped edge the parts may leave out the steps.
  if (!piece.sound || told[0]!.under !== undefined || piece.make > 1 || piece.edge.round || offers === undefined || counts.length > 1) return []
  const sewn = told.reduce((sum, { count }) => sum + count, 0)
  if (sewn <= offers && sewn !== offers - 1) return []
  const [last, ...others] = told.toReversed()
  const edge = `the ${edgeNames[last!.edge]} of ${piece.name}`
  const diagnostic: Diagnostic = {
    code: 'seam-parts-mismatch',
    message: sewn > offers
      ? `the seams take ${listOf(told.map(({ count }) => String(count)))} of ${edge}, ${counted(sewn, are)} in all, but it has ${offers}`
      : `the seams take ${listOf(told.map(({ count }) => String(count)))} of the ${counted(offers, are)} of ${edge}, which leaves one open`,
    primary: { span: last!.seam.span, text: `${sewn} of ${offers}` },
    secondary: others.toReversed().map(({ seam, count }) => ({ span: seam.span, text: `${count} of them` })),
  }
  return [{ piece, diagnostic }]
}
