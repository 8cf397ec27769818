import { weights } from '../sheet/measures.ts'
import type { Tag } from '../sheet/placed.ts'
import type { Place, Sheet } from '../sheet/sheet.ts'
import type { Line } from '../type/break-lines.ts'
import { baselineIn, lineHeight, styles } from '../type/styles.ts'

/** The head of a column, starting at `at` or ending at `to`, in mm. Without lines the column has no head. */
export type ColumnHead = { readonly lines: readonly Line[] } & ({ readonly at: number } | { readonly to: number })

const { columnHead } = styles
const padding = { above: 1.3, below: 1.1 }

/** Sets column heads between a heavy and a middle rule. On a page where a table goes on they are repeated, and are not part of the table. */
export function placeColumnHeads(sheet: Sheet, place: Tag | 'pagination', heads: readonly ColumnHead[]): void {
  const tall = Math.max(1, ...heads.map(({ lines }) => lines.length))
  const row = place === 'pagination' ? place : sheet.tag(place, 'TR')
  sheet.rule(sheet.y, weights.heavy)
  const last = sheet.y + padding.above + (tall - 1) * lineHeight(columnHead) + baselineIn(columnHead)
  for (const head of heads) {
    const cell: Place = row === 'pagination' ? row : head.lines.length === 0 ? sheet.tag(row, 'TD') : sheet.tag(row, 'TH', { scope: 'Column' })
    for (const [at, line] of head.lines.entries()) {
      const y = last - (head.lines.length - 1 - at) * lineHeight(columnHead)
      if ('to' in head) sheet.textTo(cell, line, columnHead, head.to, y)
      else sheet.text(cell, line, columnHead, head.at, y)
    }
  }
  sheet.y += columnHeadsHeight(tall)
  sheet.rule(sheet.y, weights.middle)
}

/** Height of column heads of so many lines, in mm. */
export const columnHeadsHeight = (lines: number) => padding.above + lines * lineHeight(columnHead) + padding.below
