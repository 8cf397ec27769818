import type { PatternEntry } from '../components/pattern-entry.ts'
import { countFindings } from './closing-summary.ts'
import { collectPattern, hindrances } from './collect-patterns.ts'
import { publicTexts, type PublicTexts } from './find-leaks.ts'
import { digestOf } from './pattern-files.ts'
import type { FileBytes } from './read-files.ts'
import { reportHindrances } from './report-patterns.ts'
import { fullEntry, listedEntry } from './to-entry.ts'

/** A pattern as a build has worked it: plain data, which one thread can hand to another. */
export interface WorkedPattern extends PublicTexts {
  readonly file: FileBytes
  /** Of the file's bytes. */
  readonly digest: string
  readonly warnings: number
  /** As the public site may know it. */
  readonly listed: PatternEntry
  /** With its rows: the same, but for a pattern that is sold. */
  readonly full: PatternEntry
}

/** How reports are shown. */
export interface Shown {
  readonly colour: boolean
  readonly width: number
}

/** Works a pattern to all that its pages say; or gives the report on what keeps it from being published. */
export function workPattern(file: FileBytes, shown: Shown): WorkedPattern | string {
  const collected = collectPattern(file)
  const { diagnostics, sold } = collected
  if (hindrances(diagnostics).length > 0) return reportHindrances([collected], shown)
  const full = fullEntry(collected, [])
  return { file, digest: digestOf(file), warnings: countFindings(diagnostics).warnings, full, listed: sold ? listedEntry(collected, []) : full, ...publicTexts(full) }
}
