import { existsSync } from 'node:fs'
import { dirname, resolve } from 'node:path'
import { severityOf } from '../diagnostics/codes.ts'
import { coloured, plain } from '../diagnostics/paint.ts'
import { reportText, shortReportText, type ReportOptions } from '../diagnostics/report.ts'
import { shownText } from '../diagnostics/shown-line.ts'
import type { CheckedPattern } from '../pattern/checked-pattern.ts'
import { onLines } from './check-text.ts'
import { closingSummary } from './closing-summary.ts'
import type { FileBytes } from './read-files.ts'
import { watchFiles } from './watch-files.ts'
import { whatChanged } from './what-changed.ts'

/** What is watched and how it is shown. */
export interface Watching {
  readonly checked: readonly CheckedPattern[]
  /** The files that were checked, in the same order. */
  readonly files: readonly FileBytes[]
  readonly form: 'report' | 'short'
  readonly options: ReportOptions
  /** The files as they are now; one that is just being saved may be missing. */
  readonly read: () => Promise<readonly FileBytes[]>
  readonly check: (file: FileBytes) => CheckedPattern | { readonly reasons: readonly string[] }
  readonly print: (text: string) => void
  /** Where relative paths may lead from. */
  readonly folders: readonly string[]
  /** Comes when the person ends it. */
  readonly until: Promise<unknown>
}

/** Checks again after every save, and prints what changed, until the person ends it. Gives the patterns as they were last. */
export async function watchPatterns({ checked, files: first, form, options, read, check, print, folders, until }: Watching): Promise<readonly CheckedPattern[]> {
  const known = new Map(first.map(({ path, bytes }, at) => [path, { bytes, checked: checked[at]! }]))
  let busy: Promise<void> = Promise.resolve()
  const again = async (): Promise<void> => {
    const files = await read().catch(() => [])
    for (const file of files) {
      const before = known.get(file.path)
      // An editor that saves what it has read touches a file and changes nothing.
      if (before && Buffer.compare(before.bytes, file.bytes) === 0) continue
      const now = check(file)
      if ('reasons' in now) {
        print(now.reasons.map((reason) => `${reason}\n`).join(''))
        continue
      }
      known.set(file.path, { bytes: file.bytes, checked: now })
      print(changedText(before?.checked, now, form, options))
    }
    for (const path of known.keys()) {
      if (files.length === 0 || files.some((file) => file.path === path)) continue
      known.delete(path)
      print(`${shownText(path)}: gone\n`)
    }
  }
  const paths = [...known.keys()].flatMap((path) => folders.map((folder) => resolve(folder, path))).filter((path) => existsSync(dirname(path)))
  const checkAgain = (): void => {
    busy = busy.then(again)
  }
  const stop = watchFiles(paths, checkAgain)
  print('watching; Ctrl-C ends it\n')
  // What was saved between the first check and the watching has told nobody.
  checkAgain()
  await until
  stop()
  await busy
  return [...known.values()].map((one) => one.checked)
}

/** What a save brought: a line for each finding that is mended, new findings in full, and how the file now comes out. */
export function changedText(before: CheckedPattern | undefined, now: CheckedPattern, form: 'report' | 'short', options: ReportOptions): string {
  const { fresh, gone } = whatChanged(before, now)
  const paint = options.colour ? coloured : plain
  const mended = gone.map(({ code, message }) => `${paint('hint', 'mended')}: ${severityOf(code)}[${code}]: ${shownText(message)}\n`).join('')
  const write = form === 'short' ? shortReportText : reportText
  const found = write(fresh, now.source, options)
  return ['\n', mended, ...(mended !== '' && found !== '' && form === 'report' ? ['\n'] : []), found, ...(found !== '' && form === 'report' ? ['\n'] : []), onLines(closingSummary([now]), options.wrap)].join('')
}
