import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted, listOf, timesInWords } from '../diagnostics/words.ts'
import type { PatternFacts, SeamFacts } from './facts.ts'

/** A grid of 5 by 7 takes 35 motifs. Grids that share a motif, such as the two panels of a bag, take theirs together. */
export function gridCountMismatch({ seams, pieces }: PatternFacts): readonly Diagnostic[] {
  const grids = seams.filter(({ grid }) => grid)
  const inFirstSize = pieces.filter(({ size }) => size === 0)
  return sharing(grids).flatMap((together) => {
    const names = new Set(together.flatMap(({ join }) => join))
    const motifs = inFirstSize.filter(({ name }) => names.has(name))
    const takes = together.reduce((sum, { grid }) => sum + grid!.across * grid!.down, 0)
    const made = motifs.reduce((sum, { make }) => sum + make, 0)
    // Motifs of another seam, as those of a gusset, may be of the same kind.
    const elsewhere = seams.some(({ grid, join }) => !grid && join.some((name) => names.has(name)))
    if (takes === made || elsewhere && takes < made) return []
    const each = motifs.map(({ name, make }) => `${name} is made ${timesInWords(make)}`)
    return [{
      code: 'grid-count-mismatch',
      message: `${listOf(together.map(({ grid }) => `${grid!.across} by ${grid!.down}`))} ${together.length > 1 ? 'are' : 'is'} ${counted(takes, 'motif')}, but ${listOf(each)}${each.length > 1 ? `: ${made} in all` : ''}`,
      primary: { span: together[0]!.span, text: `takes ${takes}, made ${made}` },
      secondary: together.slice(1).map(({ span }) => ({ span, text: 'of the same motifs' })),
    } satisfies Diagnostic]
  })
}

/** Grids put together that have a motif in common. */
function sharing(grids: readonly SeamFacts[]): readonly (readonly SeamFacts[])[] {
  return grids.reduce<readonly (readonly SeamFacts[])[]>((parts, grid) => {
    const shares = (part: readonly SeamFacts[]): boolean => part.some(({ join }) => join.some((name) => grid.join.includes(name)))
    return [...parts.filter((part) => !shares(part)), [...parts.filter(shares).flat(), grid]]
  }, [])
}
