import { placeOf, type Source } from '../text/source.ts'
import { severityOf } from './codes.ts'
import type { Diagnostic, TallyLine } from './diagnostic.ts'
import { frame } from './frame.ts'
import { coloured, plain, type Paint } from './paint.ts'
import { shownText } from './shown-line.ts'
import { tallyTable } from './tally-table.ts'
import { listOf } from './words.ts'
import { wrapped } from './wrap.ts'

/** How a report is written. */
export interface ReportOptions {
  /** Colour codes of a terminal. Colour only adds: without it the text is the same. */
  readonly colour?: boolean
  /** Source lines wider than this lose unlabelled stretches. In columns; 100 when left out. */
  readonly width?: number
  /** Sentences wider than this go on in another line, between words. Left out: they stay on one line, as a file or a program wants them. */
  readonly wrap?: number
}

/** Every diagnostic with its frame, facts and hint, errors first; an empty text when there are none. */
export function reportText(diagnostics: readonly Diagnostic[], source: Source, options: ReportOptions = {}): string {
  const paint = options.colour ? coloured : plain
  return errorsFirst(diagnostics)
    .map((diagnostic) => `${oneReport(diagnostic, source, paint, options).join('\n')}\n`)
    .join('\n')
}

/**
 * One line a diagnostic, for logs, errors first:
 * `patterns/lattice-runner.md:6:70: error[row-overruns]: row 8 works over 32 stitches, 5 more than row 7 makes`.
 */
export function shortReportText(diagnostics: readonly Diagnostic[], source: Source, options: ReportOptions = {}): string {
  const paint = options.colour ? coloured : plain
  return errorsFirst(diagnostics)
    .map((diagnostic) => `${placeText(diagnostic, source)}: ${headline(diagnostic, paint)}\n`)
    .join('')
}

/** Errors before warnings, each by their place. */
export function errorsFirst(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const rank = ({ code }: Diagnostic) => (severityOf(code) === 'error' ? 0 : 1)
  return [...diagnostics].sort((a, b) => rank(a) - rank(b) || a.primary.span.start - b.primary.span.start)
}

function oneReport(diagnostic: Diagnostic, source: Source, paint: Paint, { width = 100, wrap = Infinity }: ReportOptions): readonly string[] {
  const { code, tally, note, hint, otherHints = [], sizes } = diagnostic
  const { gutter, lines } = frame(diagnostic, source, { paint, width, wrap, severity: severityOf(code) })
  const margin = ' '.repeat(gutter)
  const fact = (name: string, text: string, style: 'strong' | 'hint' = 'strong'): readonly string[] => {
    const indent = gutter + ' =  '.length + name.length + 1
    return wrapped(shownText(text), wrap - indent).map((line, at) => (at === 0 ? `${margin} ${paint('gutter', '=')} ${paint(style, `${name}:`)} ${line}` : `${' '.repeat(indent)}${line}`))
  }
  const severity = severityOf(code)
  const [first = '', ...goesOn] = wrapped(shownText(diagnostic.message), wrap - 2, wrap - `${severity}[${code}]: `.length)
  return [
    `${paint(severity, `${severity}[${code}]`)}${paint('strong', `: ${first}`)}`,
    ...goesOn.map((line) => paint('strong', `  ${line}`)),
    `${margin}${paint('gutter', '-->')} ${placeText(diagnostic, source)}`,
    // Of a file without a text there is nothing to show.
    ...(source.text.trim() === '' ? [] : [...lines, paint('gutter', `${margin} |`)]),
    ...(tally && tally.length > 0 ? tallyLines(tally, margin, paint, wrap) : []),
    ...(note === undefined ? [] : fact('note', note)),
    ...(hint === undefined ? [] : fact('hint', hint.text, 'hint')),
    ...otherHints.flatMap(({ text }) => fact('or', text, 'hint')),
    ...(sizes === undefined || sizes.length === 0 ? [] : fact('sizes', `${listOf(sizes)} only`)),
    ...fact('more', `/help/${code}`),
  ]
}

/** The table stands behind its name, or below it where a narrow screen has no room for both. */
function tallyLines(tally: readonly TallyLine[], margin: string, paint: Paint, wrap: number): readonly string[] {
  const name = `${margin} ${paint('gutter', '=')} ${paint('strong', 'tally:')}`
  const beside = ' = tally: '.length
  if (wrap < narrow) return [name, ...tallyTable(tally, paint, wrap - margin.length - 3).map((row) => `${margin}   ${row}`)]
  const [head = '', ...rows] = tallyTable(tally, paint, wrap - margin.length - beside)
  return [`${name} ${head}`, ...rows.map((row) => `${margin}${' '.repeat(beside)}${row}`)]
}

const narrow = 80

function headline({ code, message }: Diagnostic, paint: Paint): string {
  const severity = severityOf(code)
  return `${paint(severity, `${severity}[${code}]`)}${paint('strong', `: ${shownText(message)}`)}`
}

function placeText({ primary }: Diagnostic, source: Source): string {
  const { line, column } = placeOf(source, Math.min(Math.max(0, primary.span.start), source.text.length))
  return `${shownText(source.path)}:${line}:${column}`
}
