import { placeOf } from '../text/source.ts'
import { hindrances, type Collected } from './collect-patterns.ts'
import { reportHindrances } from './report-patterns.ts'

/** An error that Astro prints as it is: a name, the report, and no stack of our own program's calls. */
export function failedBuild(collected: readonly Collected[]): Error | undefined {
  const report = reportHindrances(collected, { colour: false, width: 100 })
  if (report === '') return undefined
  const error = new Error(`The patterns are not ready to publish.\n\n${report}\n`)
  error.name = 'PatternError'
  error.stack = ''
  const first = collected.find(({ diagnostics }) => hindrances(diagnostics).length > 0)
  const [hindrance] = first ? hindrances(first.diagnostics) : []
  if (first && hindrance) Object.assign(error, { loc: { file: first.source.path, ...placeOf(first.source, hindrance.primary.span.start) } })
  return error
}
