import type { Part } from '../../booklet/booklet.ts'
import { gaps, live } from '../sheet/measures.ts'
import { styles } from '../type/styles.ts'
import { oneLine } from './heads.ts'

/** Edges of the columns of a row table, in mm from the left edge of the page. Figures end at theirs; side and work start at theirs. */
export interface PartColumns {
  readonly number: number
  /** Where a range's label may end when it has no side of its own. */
  readonly range: number
  readonly side?: number
  readonly work: { readonly start: number; readonly end: number }
  readonly repeats: { readonly right: number; readonly width: number }
  readonly change: { readonly right: number; readonly width: number }
  /** One for each size; none where the counts stand on a line of their own under the text. */
  readonly stitches: readonly number[]
  readonly stitchesWidth: number
  readonly pencil?: { readonly rule: number; readonly label: number }
}

/** The columns of a part's table. More sizes need more columns, and from four sizes on the counts go under the text. */
export function partColumns(part: Pick<Part, 'sides' | 'lines'>, sizes: number): PartColumns {
  const left = part.sides ? { number: 32.6, range: 40.6, side: 35, start: 43 } : { number: 37, range: 37, start: 40 }
  const { start, ...edges } = left
  if (sizes <= 1) {
    return {
      ...edges, work: { start, end: 126 }, repeats: { right: 141, width: 14.5 }, change: { right: 154, width: 12 },
      stitches: [166], stitchesWidth: 12, pencil: { rule: 170, label: 172.7 },
    }
  }
  if (sizes === 2) {
    return {
      ...edges, work: { start, end: 121 }, repeats: { right: 137, width: 15.5 }, change: { right: 150, width: 12 },
      stitches: [163, 177], stitchesWidth: 12.5, pencil: { rule: 180.4, label: 182 },
    }
  }
  if (sizes === 3) {
    return {
      ...edges, work: { start, end: 126 }, repeats: { right: 145, width: 18 }, change: { right: 161, width: 15 },
      stitches: [174, 185, 196], stitchesWidth: 10,
    }
  }
  // Figures for many sizes are wide, but seldom all of them: the work gets what a part's own figures leave free.
  const widest = (texts: readonly string[]) => Math.min(31, Math.max(13, ...texts.map((text) => oneLine(text, styles.figure).width + 0.5)))
  const rows = part.lines.filter((line) => line.kind === 'row')
  const [repeats, change] = [widest(rows.map((row) => row.repeats)), widest(rows.map((row) => row.change))]
  const right = live.right - change - gaps.under
  return {
    ...edges, work: { start, end: right - repeats - gaps.under }, repeats: { right, width: repeats }, change: { right: live.right, width: change },
    stitches: [], stitchesWidth: 0,
  }
}

/** How many cells a row of the table has: box, number, side, work, repeats, change, stitches. The Pencil column is room to write in, not a column of the table. */
export const cellCount = ({ side, stitches }: PartColumns) => 5 + (side === undefined ? 0 : 1) + stitches.length
