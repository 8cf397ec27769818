import { counted } from '../diagnostics/words.ts'
import type { Trouble, Verdict, WorkedRow } from '../fabric/worked-row.ts'
import type { CheckedPattern, WorkedPiece } from '../pattern/checked-pattern.ts'
import { textOf, type Source } from '../text/source.ts'
import type { Run } from './booklet.ts'
import { figure } from './figures.ts'
import { outerRepeats, rowRuns } from './row-text.ts'
import { typeset } from './typeset.ts'

/** A piece in one size as a tech editor reads it: every row, what it was offered and what became of that. */
export interface LedgerPiece {
  readonly name: string
  /** The size's name, where the pattern has several. */
  readonly size?: string
  readonly counting: 'Row' | 'Round'
  readonly lines: readonly LedgerLine[]
}

/** A row, or neighbours that were written once and came to the same figures. Figures as they are shown; a dash where one is not known. */
export interface LedgerLine {
  /** `20`, `9–10`, `Foundation` */
  readonly label: string
  /** How many rows it stands for. */
  readonly rows: number
  readonly text: readonly Run[]
  readonly offers: string
  readonly worksOver: string
  readonly leaves: string
  readonly makes: string
  readonly says: string
  readonly verdict: Verdict
  /** `Agrees`, `1 stitch left over`, `Says 20, makes 18`, `Not stated`, `Not reckoned`. */
  readonly verdictText: string
  /** The row's sum, step by step; empty where it has one step only. */
  readonly tally: readonly LedgerStep[]
  /** Why it is not reckoned, and the readings that were taken. */
  readonly readings: readonly string[]
}

export interface LedgerStep {
  readonly text: string
  readonly worksOver: string
  readonly makes: string
  readonly soFar: string
}

/** Every piece of a pattern in every size. */
export function ledgerOf({ source, pieces }: CheckedPattern): readonly LedgerPiece[] {
  return pieces.map((worked) => pieceOf(worked, source))
}

function pieceOf({ piece, size, rows }: WorkedPiece, source: Source): LedgerPiece {
  const lines: LedgerLine[] = []
  let first: WorkedRow | undefined
  for (const row of rows) {
    const line = lineOf(row, source)
    const last = lines.at(-1)
    if (last && first && first.written.span.start === row.written.span.start && alike(last, line)) {
      lines[lines.length - 1] = { ...last, rows: last.rows + 1, label: range(first, row) }
    } else {
      lines.push(line)
      first = row
    }
  }
  return {
    name: piece.name, ...(size === undefined ? {} : { size }),
    counting: rows.find(({ number }) => number !== undefined)?.word === 'round' ? 'Round' : 'Row', lines,
  }
}

function alike(a: LedgerLine, b: LedgerLine): boolean {
  const figures = ({ offers, worksOver, leaves, makes, verdictText, readings }: LedgerLine) => [offers, worksOver, leaves, makes, verdictText, ...readings].join('\n')
  return figures(a) === figures(b)
}

const range = (first: WorkedRow, last: WorkedRow) => (first.number === undefined || last.number === undefined ? labelOf(first) : `${first.number}–${last.number}`)

const labelOf = ({ number, label }: WorkedRow) => (number === undefined ? label : String(number))

function lineOf(row: WorkedRow, source: Source): LedgerLine {
  const known = (count: number) => (Number.isFinite(count) && !row.uncounted ? figure(count) : '–')
  const repeats = outerRepeats(source, row.written.text, [row]).map(({ span }) => span)
  return {
    label: labelOf(row),
    rows: 1,
    text: rowRuns(source, row.written.text, repeats),
    offers: Number.isFinite(row.offers) ? figure(row.offers) : '–',
    worksOver: known(row.worksOver),
    leaves: known(row.leaves),
    makes: known(row.makes),
    says: saysText(row),
    verdict: row.verdict,
    verdictText: verdictText(row),
    tally: row.tally.length < 2 || row.uncounted ? [] : row.tally.map((step) => ({
      text: `${typeset(textOf(source, step.span).replace(/\s+/g, ' ').trim())}${step.times > 1 ? ` (${figure(step.times)} times)` : ''}`,
      worksOver: figure(step.worksOver), makes: figure(step.makes), soFar: figure(step.soFar),
    })),
    readings: [...(row.reason === undefined ? [] : [row.reason]), ...row.assumed].map(typeset),
  }
}

function saysText({ says }: WorkedRow): string {
  if (says === undefined) return '–'
  const kinds = Object.entries(says.kinds)
  if (says.count !== undefined) return figure(says.count)
  return kinds.length > 0 ? figure(kinds.reduce((sum, [, count]) => sum + count, 0)) : '–'
}

function verdictText(row: WorkedRow): string {
  if (row.verdict === 'cannot-tell') return 'Not reckoned'
  if (row.verdict === 'adds-up') return row.says === undefined ? 'Not stated' : 'Agrees'
  const [trouble] = row.troubles
  if (trouble !== undefined) return troubleText(trouble)
  const says = saysText(row)
  if (!row.agreement.total) return `Says ${says}, makes ${figure(row.makes)}`
  return row.agreement.kinds ? 'Says another change' : 'Says other kinds of stitches'
}

function troubleText(trouble: Trouble): string {
  if (trouble.kind === 'left-over') return `${counted(trouble.count, 'stitch')} left over`
  if (trouble.kind === 'overrun') return `Wants ${figure(trouble.wants)}, offers ${figure(trouble.offers)}`
  if (trouble.kind === 'does-not-divide') return `${counted(trouble.room, 'stitch')}, repeat of ${figure(trouble.each)}`
  return trouble.kind === 'row-ends-passed' ? `${counted(trouble.count, 'row-end')} passed over` : 'Does not come out'
}
