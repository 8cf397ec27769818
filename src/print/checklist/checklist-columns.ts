import type { Part } from '../../booklet/booklet.ts'
import { gaps, live, pencilBox } from '../sheet/measures.ts'
import { styles } from '../type/styles.ts'
import { oneLine } from '../pages/heads.ts'
import type { CheckRow } from './check-rows.ts'

/** Edges of the columns of a checklist, in mm from the left edge of the page. Figures end at theirs; side and work start at theirs. */
export interface ChecklistColumns {
  readonly number: number
  readonly side?: number
  readonly work: { readonly start: number; readonly end: number }
  readonly change: number
  readonly stitches: number
  /** Right edges of the boxes, one column for each copy. */
  readonly copies: readonly number[]
}

/** The most copies that a sheet has columns for. */
export const mostCopies = 4
const boxPitch = 16

/** Copies that a part has columns for: those to make and one to spare. */
export const copiesOf = ({ make = 1 }: Pick<Part, 'make'>): number => Math.min(mostCopies, make + 1)

/** The columns of a part's checklist. What fewer copies leave free the work gets, after the counts of all sizes. */
export function checklistColumns({ sides, copies, rows }: { readonly sides: boolean; readonly copies: number; readonly rows: readonly CheckRow[] }): ChecklistColumns {
  const widest = (texts: readonly string[], style: (typeof styles)['rowNumber' | 'figure' | 'columnHead']) => Math.max(0, ...texts.map((text) => oneLine(text, style).width))
  const stitches = 130 + (mostCopies - copies) * boxPitch
  const counts = Math.max(14, widest(rows.map((row) => row.stitches), styles.rowNumber))
  const change = Math.min(stitches - 18, stitches - counts - gaps.medium)
  const changes = Math.max(12, widest(rows.map((row) => row.change), styles.figure))
  const labels = live.left + Math.max(9, widest(rows.map((row) => row.label), styles.rowNumber))
  const start = Math.max(labels + 4, 31)
  return {
    number: Math.max(27, labels), ...(sides ? { side: start } : {}), work: { start: sides ? start + 10 : start, end: change - changes - gaps.under }, change, stitches,
    copies: Array.from({ length: copies }, (_, at) => live.right - (copies - 1 - at) * boxPitch),
  }
}

/** Left edge of a box whose column ends at `right`. */
export const boxLeft = (right: number): number => right - pencilBox.side
