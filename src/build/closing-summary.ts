import { severityOf } from '../diagnostics/codes.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { shownText } from '../diagnostics/shown-line.ts'
import { counted } from '../diagnostics/words.ts'
import type { Verdict } from '../fabric/worked-row.ts'
import type { CheckedPattern, WorkedPiece } from '../pattern/checked-pattern.ts'

/** How many errors and how many warnings. */
export function countFindings(diagnostics: readonly Diagnostic[]): { readonly errors: number; readonly warnings: number } {
  const errors = diagnostics.filter(({ code }) => severityOf(code) === 'error').length
  return { errors, warnings: diagnostics.length - errors }
}

/**
 * What was checked and how it came out, a line a file, and one for all of them when there are several:
 * `skiff.md: 3 pieces, 2 sizes, 64 rows: all add up`.
 */
export function closingSummary(checked: readonly CheckedPattern[]): string {
  const lines = checked.map((one) => `${shownText(one.source.path)}: ${[...whatWasCounted(one), howItCameOut(one)].join(': ')}\n`)
  if (checked.length < 2) return lines.join('')
  const findings = findingsText(checked.flatMap(({ diagnostics }) => diagnostics))
  return `${lines.join('')}${counted(checked.length, 'file')}: ${findings || 'nothing to mend'}\n`
}

function whatWasCounted({ pattern, pieces }: CheckedPattern): readonly string[] {
  const rows = rowsBySize(pieces)
  const most = Math.max(0, ...rows)
  if (most === 0) return []
  const fewest = Math.min(...rows)
  return [[
    counted(new Set(pieces.map(({ piece }) => piece)).size, 'piece'),
    ...(pattern && pattern.sizes.length > 1 ? [counted(pattern.sizes.length, 'size')] : []),
    fewest === most ? counted(most, 'row') : `${fewest} to ${counted(most, 'row')}`,
  ].join(', ')]
}

function howItCameOut({ pieces, diagnostics, accepted = [] }: CheckedPattern): string {
  const findings = [findingsText(diagnostics), ...(accepted.length > 0 ? [`${accepted.length} accepted`] : [])].filter((words) => words !== '').join(', ')
  if (pieces.every(({ rows }) => rows.length === 0)) return findings || 'no rows'
  const wrong = mostInASize(pieces, 'does-not')
  const untold = mostInASize(pieces, 'cannot-tell')
  const rows = wrong + untold === 0
    ? ['all add up']
    : [
        ...(wrong > 0 ? [`${counted(wrong, 'row')} ${wrong === 1 ? 'does' : 'do'} not add up`] : []),
        ...(untold > 0 ? [`${counted(untold, 'row')} cannot be counted`] : []),
      ]
  return [...rows, ...(findings === '' ? [] : [findings])].join(', ')
}

function findingsText(diagnostics: readonly Diagnostic[]): string {
  const { errors, warnings } = countFindings(diagnostics)
  return [
    ...(errors > 0 ? [counted(errors, 'error')] : []),
    ...(warnings > 0 ? [counted(warnings, 'warning')] : []),
  ].join(', ')
}

/** A row that comes out wrong in two sizes is one row to a designer. */
function mostInASize(pieces: readonly WorkedPiece[], verdict: Verdict): number {
  return Math.max(...rowsBySize(pieces, verdict))
}

function rowsBySize(pieces: readonly WorkedPiece[], verdict?: Verdict): readonly number[] {
  const bySize = new Map<string | undefined, number>()
  for (const { size, rows } of pieces) {
    const here = verdict === undefined ? rows : rows.filter((row) => row.verdict === verdict)
    bySize.set(size, (bySize.get(size) ?? 0) + here.length)
  }
  return [...bySize.values()]
}
