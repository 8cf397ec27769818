import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { listOf } from '../diagnostics/words.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import type { PieceFacts } from './facts.ts'
import { rowName, withoutStop } from './row-words.ts'

/** Steps on the two sides of a piece that differ by more than this are not taken for a pair. */
const nearly = 2

/** A row that steps in on both sides, or two rows after one another that step in on one side each, plainly mean to be symmetrical. */
export function stepLopsided(piece: PieceFacts, pieces: readonly PieceFacts[]): readonly Diagnostic[] {
  // In a piece with a row that does not add up the steps are in doubt as well: that is the same slip.
  if (!piece.sound) return []
  const found = inRows(piece, pieces.filter(({ name, size }) => name !== piece.name && size === piece.size))
  return found.length > 0 ? found : ofWholePiece(piece)
}

/** A piece that is said to be symmetrical has the same steps on both its sides, wherever they were made. */
function ofWholePiece({ name, symmetrical, edge }: PieceFacts): readonly Diagnostic[] {
  const under = edge.sections.findIndex((section) => section.edge === 'underside')
  if (!symmetrical || under < 0) return []
  const steps = (from: number, to?: number): readonly number[] => edge.sections.slice(from, to).filter((section) => section.edge === 'step').map(({ stitches }) => stitches)
  const [one, other] = [steps(1, under), steps(under + 1).toReversed()]
  if (one.length === other.length && one.every((stitches, index) => stitches === other[index])) return []
  const words = (side: readonly number[]): string => (side.length === 0 ? 'none' : listOf(side.map(String)))
  return [{
    code: 'step-lopsided',
    message: `${name} is to be alike on both sides, but the steps of one side, from the top down, are ${words(one)}, and of the other ${words(other)}`,
    primary: { span: symmetrical, text: 'its sides do not match' },
    secondary: [],
  }]
}

function inRows({ source, rows, fabric }: PieceFacts, others: readonly PieceFacts[]): readonly Diagnostic[] {
  const told = new Set<number>()
  const next = nextPairs(rows)
  return rows.flatMap((row, index) => {
    if (others.some((other) => other.rows.some((mirrored) => isMirrored(row, mirrored)))) return []
    const pair = ofOneRow(row) ?? (next.has(row) ? undefined : ofTwoRows(rows[index - 1], row))
    if (!pair || told.has(row.written.span.start) || others.some((other) => other.fabric === fabric && goesOver(other, rows.slice(Math.max(0, index - 2), index)))) return []
    told.add(row.written.span.start)
    return [{
      code: 'step-lopsided' as const,
      message: `${pair.words}: the two sides do not match`,
      primary: { span: withoutStop(source, row.written.text), text: pair.here },
      secondary: pair.other ? [{ span: withoutStop(source, pair.other.written.text), text: pair.there }] : [],
    }]
  })
}

/** A border with a total of its own works over both steps and comes out: they were counted as they are. */
function goesOver({ rows }: PieceFacts, below: readonly WorkedRow[]): boolean {
  const labels = new Set(below.map(({ label }) => label))
  return rows.some(({ says, verdict, along = [] }) => says !== undefined && verdict === 'adds-up' && along.filter((use) => use.edge === 'step' && use.rows.some((row) => labels.has(row)) && use.offers > 0 && use.worksOver === use.offers).length > 1)
}

/** Where another piece has the same steps the other way round, as a back to its front, both are meant as they are. */
function isMirrored({ number, steps }: WorkedRow, other: WorkedRow): boolean {
  return steps !== undefined && steps.start > 0 && steps.start !== steps.end && other.number === number && other.steps?.start === steps.end && other.steps.end === steps.start
}

/** Of rows that step in one after another two and two are a pair: the next pair may step in by less, so that both edges are curves. */
function nextPairs(rows: readonly WorkedRow[]): ReadonlySet<WorkedRow> {
  return new Set(runsOfSteps(rows).flatMap((run) => {
    // Of an uneven number of them the first may stand alone.
    const from = run.length % 2 === 1 && !inPairs(run) && inPairs(run.slice(1)) ? 1 : 0
    return run.filter((_, index) => index >= from && (index - from) % 2 === 0)
  }))
}

const inPairs = (run: readonly WorkedRow[]): boolean => run.every((row, index) => index % 2 === 0 || oneStep(row) === oneStep(run[index - 1]!))

/** Rows after one another that step in on the same end of the row each. */
function runsOfSteps(rows: readonly WorkedRow[]): readonly (readonly WorkedRow[])[] {
  const runs: WorkedRow[][] = []
  for (const [index, row] of rows.entries()) {
    const before = rows[index - 1]
    if (oneStep(row) === undefined) continue
    if (before && oneStep(before) !== undefined && before.fabric.turned && (before.steps!.start > 0) === (row.steps!.start > 0)) runs.at(-1)!.push(row)
    else runs.push([row])
  }
  return runs
}

/** How far a row steps in that does so on one side alone. */
function oneStep({ steps }: WorkedRow): number | undefined {
  return steps && (steps.start > 0) !== (steps.end > 0) ? Math.max(steps.start, steps.end) : undefined
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
