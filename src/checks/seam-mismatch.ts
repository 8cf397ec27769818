import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted, listOf } from '../diagnostics/words.ts'
import type { PatternFacts } from './facts.ts'

/** Two edges that are sewn stitch to stitch have the same number of stitches, unless one is eased in. Told once a seam and size. */
export function seamMismatch({ seams, pieces }: PatternFacts): readonly Diagnostic[] {
  return seams.filter(({ ease }) => !ease).flatMap(({ join, span }) => {
    const bySize = Map.groupBy(pieces.filter(({ name }) => join.includes(name)), ({ size }) => size)
    // A row that does not add up makes the edge wrong too: that is the same slip.
    const wrong = [...bySize].filter(([, edges]) => edges.length > 1 && edges.every(({ sound }) => sound) && edges.every(({ edge }) => edge > 0) && new Set(edges.map(({ edge }) => edge)).size > 1)
    const first = wrong[0]
    if (!first) return []
    const [size, edges] = first
    const names = edges[0]!.sizes
    const held = wrong.map(([index]) => names[index] ?? '')
    const diagnostic: Diagnostic = {
      code: 'seam-mismatch',
      message: `the edges to be joined do not match: ${listOf(edges.map(({ name, edge }) => `${name} has ${counted(edge, 'stitch')}`))}${names[size] === undefined ? '' : ` in size ${names[size]}`}`,
      primary: { span, text: edges.map(({ edge }) => edge).join(' against ') },
      secondary: edges.flatMap(({ rows }) => rows.at(-1)?.says ?? []).map((says) => ({ span: says.span, text: 'this edge' })),
      ...(held.length < Math.max(1, names.length) && { sizes: held }),
    }
    return [diagnostic]
  })
}
