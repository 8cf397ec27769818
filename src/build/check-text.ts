import { notCheckedByMachine } from '../diagnostics/editors-list.ts'
import { reportText, shortReportText, type ReportOptions } from '../diagnostics/report.ts'
import { shownText } from '../diagnostics/shown-line.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import { wrapped } from '../diagnostics/wrap.ts'
import { listOf } from '../diagnostics/words.ts'
import { placeOf } from '../text/source.ts'
import type { CheckForm } from './check-arguments.ts'
import { closingSummary } from './closing-summary.ts'
import { jsonReport } from './json-report.ts'
import { sarifReport } from './sarif-report.ts'

/** What the command prints of checked patterns in a form. */
export function checkText(checked: readonly CheckedPattern[], form: CheckForm, options: ReportOptions): string {
  if (form === 'json') return `${JSON.stringify(jsonReport(checked), undefined, 2)}\n`
  if (form === 'sarif') return `${JSON.stringify(sarifReport(checked), undefined, 2)}\n`
  const write = form === 'short' ? shortReportText : reportText
  const reports = checked.map(({ diagnostics, source }) => write(diagnostics, source, options)).filter((report) => report !== '')
  const accepted = checked.map(acceptedText).join('')
  const foot = form === 'short' ? '' : `not checked by machine: ${listOf(notCheckedByMachine.map(({ inShort, what }) => inShort ?? what))}: /help/editors-list\n`
  return [...reports, ...[accepted, `${closingSummary(checked)}${foot}`].filter((text) => text !== '').map((text) => onLines(text, options.wrap))].join(form === 'short' ? '' : '\n')
}

/** Sentences on lines of a terminal; the second line of one is set in. */
export function onLines(text: string, wrap: number | undefined): string {
  if (wrap === undefined) return text
  return text.split('\n').map((line) => wrapped(line, wrap - 2, wrap).join('\n  ')).join('\n')
}

/** A line for each warning that the designer lets stand. */
export function acceptedText({ source, accepted = [] }: CheckedPattern): string {
  return accepted.map(({ diagnostic: { code, primary }, why }) => {
    const { line, column } = placeOf(source, primary.span.start)
    return `accepted by the designer: ${shownText(source.path)}:${line}:${column}: ${code}: ${shownText(why)}\n`
  }).join('')
}
