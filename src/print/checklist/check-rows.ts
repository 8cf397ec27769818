import type { Booklet, Inline, Part, RealRow, RowLine, Section } from '../../booklet/booklet.ts'
import { stitchesShown } from '../../booklet/stitches-shown.ts'

/** A line of a checklist: a real row, or something to do between two rows. */
export type CheckLine = CheckRow | CheckStep

/** A real row. */
export interface CheckRow {
  readonly kind: 'row'
  readonly label: string
  readonly side: string
  /** Which sizes work it, and what is done about the yarn first; empty when all do and nothing is. */
  readonly first: string
  /** The short form, or the row's own words where there is none. */
  readonly work: string
  /** What is said instead when the work does not fit one line: `as Row 3`, `see Row 31 of the pattern`. */
  readonly instead: string
  /** It is worked as another row of the list. */
  readonly isCopy: boolean
  /** The label of the row that it is worked as. */
  readonly model?: string
  readonly change: string
  readonly stitches: string
}

/** Something to do, lettered when it belongs to the finishing. */
export interface CheckStep {
  readonly kind: 'step'
  readonly label: string
  readonly text: string
}

/** The lines of a part, one for each real row. Cautions, and what a line is like, are no steps to tick. */
export function checkLines(part: Part): readonly CheckLine[] {
  return part.lines.flatMap((line): readonly CheckLine[] =>
    line.kind === 'instruction' ? line.caution === true || line.about === true ? [] : [{ kind: 'step', label: '', text: wordsOf(line.text) }] : rowsOf(line).map((row, at) => checkRow(part, line, row, at)))
}

function checkRow({ counting }: Part, line: RowLine, row: RealRow, at: number): CheckRow {
  // A row that copies another, or goes on with the words of its range, is worked as that one.
  const model = row.as ?? (at > 0 ? rowsOf(line)[0]?.label : undefined)
  const here = model === undefined ? undefined : /^\d+(?:st|nd|rd|th)$/.test(model) ? `as the ${model}` : `as ${counting} ${model}`
  const as = row.asOf === undefined ? here : row.as === undefined ? `as for ${row.asOf}` : `as ${row.asOf}, ${counting} ${row.as}`
  const sizes = row.sizes === '' ? '' : `${row.sizes.replace(/^f/, 'F')}.`
  return {
    kind: 'row', label: row.label, side: row.side ?? '', change: row.change, stitches: inOneCell(row.stitches),
    first: [sizes, row.yarn].filter((text) => text !== '').join(' '),
    work: row.short ?? as ?? wordsOf(line.text),
    instead: as ?? `see ${counting} ${line.label} of the pattern`,
    isCopy: as !== undefined,
    ...(model === undefined || row.asOf !== undefined ? {} : { model }),
  }
}

/** The real rows of a line. A booklet that does not tell them apart has one text for all of them. */
function rowsOf(line: RowLine): readonly RealRow[] {
  return line.real ?? line.boxes.map((label, at): RealRow => ({
    label, sizes: '', yarn: '', change: at === 0 ? line.change : '', stitches: line.stitches, ...(line.side === undefined ? {} : { side: line.side }),
  }))
}

const wordsOf = (runs: RowLine['text']) => runs.map(({ text }) => text).join('')

/** `48 (56, 64)`; one figure when all are the same. */
function inOneCell(stitches: readonly string[]): string {
  const [first = '', ...others] = stitchesShown(stitches)
  return others.length === 0 ? first : `${first}\u00a0(${others.join(',\u00a0')})`
}

/** Steps of the finishing under their heading: the entries of its lists, lettered. */
export interface CheckSteps {
  readonly heading: string
  readonly steps: readonly CheckStep[]
}

/** What is left to do when the pieces are made. */
export function finishingSteps({ after }: Pick<Booklet, 'after'>): readonly CheckSteps[] {
  return after.flatMap((section) => {
    const texts = stepsOf(section)
    return texts.length === 0 ? [] : [{ heading: section.heading, steps: texts.map((text, at): CheckStep => ({ kind: 'step', label: letter(at), text })) }]
  })
}

function stepsOf({ blocks }: Section): readonly string[] {
  return blocks.flatMap((block) => (block.kind === 'list' ? block.items.map((item) => item.flatMap((inner) => (inner.kind === 'list' ? inner.items.flat() : [inner]))
    .map((inner) => ('inlines' in inner ? inlineText(inner.inlines) : '')).filter((text) => text !== '').join(' ')) : []))
}

const inlineText = (inlines: readonly Inline[]) => inlines.map(({ text }) => text).join('')

/** a to z, then aa, ab: more steps than letters are rare, and must still differ. */
function letter(at: number): string {
  const own = String.fromCharCode(97 + (at % 26))
  return at < 26 ? own : letter(Math.floor(at / 26) - 1) + own
}
