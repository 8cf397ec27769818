import { once } from 'node:events'
import { shownText } from '../diagnostics/shown-line.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import { checkArguments, usage } from './check-arguments.ts'
import { checkBytes } from './check-bytes.ts'
import { checkText } from './check-text.ts'
import { countFindings } from './closing-summary.ts'
import { patternsIn, readFiles, type FileBytes } from './read-files.ts'
import { terminalOptions } from './terminal-options.ts'
import { watchPatterns } from './watch-patterns.ts'

/** How the command ends: 0 no error, 1 some error, 2 called wrongly or a file that cannot be read. */
type Ending = 0 | 1 | 2

/** Works the patterns that `words` (the command's own, without the program) ask for, prints the report and says how the command ends. */
export async function checkCommand(words: string[]): Promise<Ending> {
  const asked = checkArguments(words)
  // The reader of a pipe may have seen enough (`| head`): that is no trouble of ours.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error
  })
  if (asked.asks === 'help') return print(usage, 0)
  if (asked.asks === 'nothing sensible') return refuse([asked.reason, 'try: npm run check -- --help'])
  const paths = asked.files.length > 0 ? asked.files : await patternsIn('patterns').catch(() => [])
  if (paths.length === 0) return refuse(['there is no pattern file in patterns/'])
  const { files, unreadable } = await readFiles(paths, foldersToLookIn())
  if (unreadable.length > 0) return refuse(unreadable)
  const checked: CheckedPattern[] = []
  for (const file of files) {
    const one = checkOne(file)
    if ('reasons' in one) return refuse(one.reasons)
    checked.push(one)
  }
  const options = terminalOptions(process.stdout, process.env)
  print(checkText(checked, asked.form, options), 0)
  if (!asked.watch) return endingOf(checked)
  const last = await watchPatterns({
    checked, files, form: asked.form === 'short' ? 'short' : 'report', options,
    read: async () => (await readFiles(asked.files.length > 0 ? asked.files : await patternsIn('patterns'), foldersToLookIn())).files,
    check: checkOne,
    print: (text) => void process.stdout.write(text),
    folders: foldersToLookIn(),
    until: Promise.race(['SIGINT', 'SIGTERM'].map((signal) => once(process, signal))),
  })
  return endingOf(last)
}

function foldersToLookIn(): readonly string[] {
  return [process.cwd(), process.env['INIT_CWD'] ?? process.cwd()]
}

function checkOne(file: FileBytes): CheckedPattern | { readonly reasons: readonly string[] } {
  try {
    return checkBytes(file)
  } catch (error) {
    const trace = error instanceof Error ? error.stack : String(error)
    return { reasons: [`${file.path}: the rows could not be worked; this is our mistake, not your pattern's`, `${trace}`] }
  }
}

function endingOf(checked: readonly CheckedPattern[]): Ending {
  return checked.some(({ diagnostics }) => countFindings(diagnostics).errors > 0) ? 1 : 0
}

function print(text: string, ending: Ending): Ending {
  process.stdout.write(text)
  return ending
}

function refuse(reasons: readonly string[]): Ending {
  process.stderr.write(reasons.map((reason) => `check: ${reason.split('\n').map(shownText).join('\n')}\n`).join(''))
  return 2
}
