import type { WorkedRow } from '../../fabric/worked-row.ts'
import type { CheckedPattern } from '../../pattern/checked-pattern.ts'
import type { Span } from '../../text/span.ts'

/** What the row at an offset comes to, as a Markdown table with a line for each real row and size; undefined between rows. */
export function rowHover({ pieces }: CheckedPattern, offset: number): { readonly markdown: string; readonly span: Span } | undefined {
  const lines: string[] = []
  let span: Span | undefined
  for (const { size, rows } of pieces) {
    for (const row of rows) {
      const { written } = row
      if (offset < written.span.start || offset >= written.span.end) continue
      span = written.span
      lines.push(`| ${[row.label, ...(size === undefined ? [] : [size]), row.offers, ...(row.uncounted ? ['–', '–', '–'] : [row.worksOver, row.leaves, row.makes]), said(row)].join(' | ')} |`)
    }
  }
  if (!span) return undefined
  const sized = pieces.some(({ size }) => size !== undefined)
  const heads = ['row', ...(sized ? ['size'] : []), 'offers', 'works over', 'leaves', 'makes', 'says']
  const shown = lines.length > mostLines ? [...lines.slice(0, mostLines), `| … ${lines.length - mostLines} more |${' |'.repeat(heads.length - 1)}`] : lines
  return { markdown: [`| ${heads.join(' | ')} |`, `|${' --- |'.repeat(heads.length)}`, ...shown].join('\n'), span }
}

// A range of rows in many sizes would fill the screen.
const mostLines = 12

function said({ says, verdict, reason }: WorkedRow): string {
  const kinds = Object.values(says?.kinds ?? {})
  const count = says?.count ?? (kinds.length > 0 ? kinds.reduce((sum, each) => sum + each, 0) : undefined)
  const words = count === undefined ? 'nothing' : `${count}`
  if (verdict === 'adds-up') return words
  return verdict === 'does-not' ? `${words}: does not add up` : `${words}: ${reason ?? 'cannot be told'}`
}
