import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { PieceFacts } from './facts.ts'

/** What was found in a piece, in one of its sizes. */
export interface FoundInSize {
  readonly piece: PieceFacts
  readonly diagnostic: Diagnostic
}

/** One finding for one place: as it is in the first size, with the names of the sizes that it holds for, where it does not hold for all. */
export function toldOnceForSizes(found: readonly FoundInSize[]): readonly Diagnostic[] {
  return [...Map.groupBy(found, ({ diagnostic }) => diagnostic.primary.span.start).values()].map((same) => {
    const [{ piece, diagnostic }] = same as [FoundInSize, ...FoundInSize[]]
    const held = same.map((one) => piece.sizes[one.piece.size] ?? '')
    return { ...diagnostic, ...(held.length < Math.max(1, piece.sizes.length) && { sizes: held }) }
  })
}
