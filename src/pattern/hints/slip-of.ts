import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../fabric/worked-row.ts'
import type { CheckedPattern } from '../checked-pattern.ts'
import type { Slip } from './change.ts'

/** What a finding is about, as rows: undefined for one that stands in no row. */
export function slipOf(checked: CheckedPattern, diagnostic: Diagnostic): Slip | undefined {
  const { span } = diagnostic.primary
  const holds = ({ written }: WorkedRow): boolean => written.span.start <= span.start && span.end <= written.span.end
  const piece = checked.pieces.find(({ rows }) => rows.some(holds))?.piece
  if (!piece) return undefined
  const names = checked.pattern?.sizes ?? []
  const bySize = new Map<number, WorkedRow>()
  for (const worked of checked.pieces) {
    if (worked.piece !== piece || diagnostic.sizes && worked.size !== undefined && !diagnostic.sizes.includes(worked.size)) continue
    const written = worked.rows.filter(holds)
    const row = written.find(({ verdict }) => verdict === 'does-not') ?? written[0]
    if (row) bySize.set(worked.size === undefined ? 0 : names.indexOf(worked.size), row)
  }
  const [row] = bySize.values()
  return row && { checked, source: checked.source, diagnostic, piece, row, bySize, sizes: Math.max(1, names.length) }
}
