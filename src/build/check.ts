import { reportText, shortReportText, type ReportOptions } from '../diagnostics/report.ts'
import { shownText } from '../diagnostics/shown-line.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import { checkArguments, usage, type CheckArguments } from './check-arguments.ts'
import { checkBytes } from './check-bytes.ts'
import { closingSummary, countFindings } from './closing-summary.ts'
import { jsonReport } from './json-report.ts'
import { patternsIn, readFiles } from './read-files.ts'

/** How the command ends: 0 no error, 1 some error, 2 called wrongly or a file that cannot be read. */
type Ending = 0 | 1 | 2

process.exitCode = await main(checkArguments(process.argv.slice(2)))

async function main(asked: CheckArguments): Promise<Ending> {
  // The reader of a pipe may have seen enough (`| head`): that is no trouble of ours.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
  })
  if (asked.asks === 'help') return print(usage, 0)
  if (asked.asks === 'nothing sensible') return refuse([asked.reason, 'try: npm run check -- --help'])
  const paths = asked.files.length > 0 ? asked.files : await patternsIn('patterns').catch(() => [])
  if (paths.length === 0) return refuse(['there is no pattern file in patterns/'])
  const { files, unreadable } = await readFiles(paths, [process.cwd(), process.env['INIT_CWD'] ?? process.cwd()])
  if (unreadable.length > 0) return refuse(unreadable)
  const checked: CheckedPattern[] = []
  for (const file of files) {
    try {
      checked.push(checkBytes(file))
    } catch (error) {
      const trace = error instanceof Error ? error.stack : String(error)
      return refuse([`${file.path}: the rows could not be worked; this is our mistake, not your pattern's`, `${trace}`])
    }
  }
  const errors = checked.reduce((sum, { diagnostics }) => sum + countFindings(diagnostics).errors, 0)
  return print(textOf(checked, asked.form), errors > 0 ? 1 : 0)
}

function textOf(checked: readonly CheckedPattern[], form: 'report' | 'short' | 'json'): string {
  if (form === 'json') return `${JSON.stringify(jsonReport(checked), undefined, 2)}\n`
  const options: ReportOptions = { colour: coloursWanted(), width: reportWidth() }
  const write = form === 'short' ? shortReportText : reportText
  const reports = checked.map(({ diagnostics, source }) => write(diagnostics, source, options)).filter((report) => report !== '')
  const between = form === 'short' ? '' : '\n'
  return [...reports, closingSummary(checked)].join(between)
}

/** FORCE_COLOR and NO_COLOR decide, else whether a person is looking at a terminal that has colours. */
function coloursWanted(): boolean {
  const { FORCE_COLOR: forced, NO_COLOR: refused } = process.env
  if (forced !== undefined) return forced !== '0' && forced !== 'false'
  if (refused !== undefined && refused !== '') return false
  return process.stdout.isTTY === true && process.stdout.hasColors()
}

/** A terminal narrower than a report gets shorter source lines; the rest is line number and bar. */
function reportWidth(): number {
  const columns = process.stdout.columns
  return columns === undefined ? 100 : Math.max(40, Math.min(100, columns - 6))
}

function print(text: string, ending: Ending): Ending {
  process.stdout.write(text)
  return ending
}

function refuse(reasons: readonly string[]): Ending {
  process.stderr.write(reasons.map((reason) => `check: ${reason.split('\n').map(shownText).join('\n')}\n`).join(''))
  return 2
}
