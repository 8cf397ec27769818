import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import type { PieceFacts } from './facts.ts'
import { rowName, withoutStop } from './row-words.ts'

/** Steps on the two sides of a piece that differ by more than this are not taken for a pair. */
const nearly = 2

/** A row that steps in on both sides, or two rows after one another that step in on one side each, plainly mean to be symmetrical. */
export function stepLopsided({ source, rows }: PieceFacts): readonly Diagnostic[] {
  const told = new Set<number>()
  return rows.flatMap((row, index) => {
    const pair = row.verdict === 'adds-up' ? (ofOneRow(row) ?? ofTwoRows(rows[index - 1], row)) : undefined
    if (!pair || told.has(row.written.span.start)) return []
    told.add(row.written.span.start)
    return [{
      code: 'step-lopsided' as const,
      message: `${pair.words}: the two sides do not match`,
      primary: { span: withoutStop(source, row.written.text), text: pair.here },
      secondary: pair.other ? [{ span: withoutStop(source, pair.other.written.text), text: pair.there }] : [],
    }]
  })
}

interface Pair {
  readonly words: string
  readonly here: string
  readonly there: string
  readonly other?: WorkedRow
}

const differ = (one: number, other: number): boolean => one > 2 && other > 2 && one !== other && Math.abs(one - other) <= nearly

function ofOneRow(row: WorkedRow): Pair | undefined {
  const { start, end } = row.steps ?? { start: 0, end: 0 }
  if (!differ(start, end)) return undefined
  return { words: `${rowName(row)} leaves ${start} at the start and ${end} at the end`, here: `${start} left at the start, ${end} at the end`, there: '' }
}

/** Rows are turned between, so that the ends of two rows after one another are the two sides. */
function ofTwoRows(before: WorkedRow | undefined, row: WorkedRow): Pair | undefined {
  if (!before?.steps || !row.steps || !before.fabric.turned || before.written.span.start === row.written.span.start) return undefined
  for (const where of ['end', 'start'] as const) {
    const other = where === 'end' ? 'start' : 'end'
    if (before.steps[other] > 0 || row.steps[other] > 0 || !differ(before.steps[where], row.steps[where])) continue
    return {
      words: `${rowName(before)} leaves ${before.steps[where]} at the ${where}, ${rowName(row)} leaves ${row.steps[where]}`,
      here: `${row.steps[where]} left at the ${where}`, there: `${before.steps[where]} left at the ${where}`, other: before,
    }
  }
  return undefined
}
