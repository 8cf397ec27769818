import { placeOf, type Source } from '../text/source.ts'
import { severityOf } from './codes.ts'
import type { Diagnostic } from './diagnostic.ts'
import { frame } from './frame.ts'
import { coloured, plain, type Paint } from './paint.ts'
import { shownText } from './shown-line.ts'
import { tallyTable } from './tally-table.ts'
import { listOf } from './words.ts'

/** How a report is written. */
export interface ReportOptions {
  /** Colour codes of a terminal. Colour only adds: without it the text is the same. */
  readonly colour?: boolean
  /** Source lines wider than this lose unlabelled stretches. In columns; 100 when left out. */
  readonly width?: number
}

/** Every diagnostic with its frame, facts and hint, errors first; an empty text when there are none. */
export function reportText(diagnostics: readonly Diagnostic[], source: Source, options: ReportOptions = {}): string {
  const paint = options.colour ? coloured : plain
  return errorsFirst(diagnostics)
    .map((diagnostic) => `${oneReport(diagnostic, source, paint, options.width ?? 100).join('\n')}\n`)
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

function oneReport(diagnostic: Diagnostic, source: Source, paint: Paint, width: number): readonly string[] {
  const { code, tally, note, hint, otherHints = [], sizes } = diagnostic
  const { gutter, lines } = frame(diagnostic, source, { paint, width, severity: severityOf(code) })
  const margin = ' '.repeat(gutter)
  const fact = (name: string, text: string) => `${margin} ${paint('gutter', '=')} ${paint('strong', `${name}:`)} ${text}`
  return [
    headline(diagnostic, paint),
    `${margin}${paint('gutter', '-->')} ${placeText(diagnostic, source)}`,
    // Of a file without a text there is nothing to show.
    ...(source.text.trim() === '' ? [] : [...lines, paint('gutter', `${margin} |`)]),
    ...(tally && tally.length > 0 ? tallyLines(fact, margin, tallyTable(tally, paint)) : []),
    ...(note === undefined ? [] : [fact('note', shownText(note))]),
    ...(hint === undefined ? [] : [`${margin} ${paint('gutter', '=')} ${paint('hint', 'hint:')} ${shownText(hint.text)}`]),
    ...otherHints.map(({ text }) => `${margin} ${paint('gutter', '=')} ${paint('hint', 'or:')} ${shownText(text)}`),
    ...(sizes === undefined || sizes.length === 0 ? [] : [fact('sizes', `${shownText(listOf(sizes))} only`)]),
    fact('more', `/help/${code}`),
  ]
}

function tallyLines(
  fact: (name: string, text: string) => string, margin: string, [head = '', ...rows]: readonly string[],
): readonly string[] {
  return [fact('tally', head), ...rows.map((row) => `${margin}${' '.repeat(' = tally: '.length)}${row}`)]
}

function headline({ code, message }: Diagnostic, paint: Paint): string {
  const severity = severityOf(code)
  return `${paint(severity, `${severity}[${code}]`)}${paint('strong', `: ${shownText(message)}`)}`
}

function placeText({ primary }: Diagnostic, source: Source): string {
  const { line, column } = placeOf(source, Math.min(Math.max(0, primary.span.start), source.text.length))
  return `${shownText(source.path)}:${line}:${column}`
}
