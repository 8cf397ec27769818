import { checkPattern } from '../../src/pattern/check-pattern.ts'
import { severityOf } from '../../src/diagnostics/codes.ts'
import { placeOf } from '../../src/text/source.ts'
import type { DiagnosticCode } from '../../src/diagnostics/codes.ts'
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../src/fabric/worked-row.ts'
import type { CheckedPattern } from '../../src/pattern/checked-pattern.ts'

/** What lies under the rows and what the pattern says of itself, for rows that are worked without a file of their own. */
export interface Circumstances {
  /** So many sc lie below, worked flat. */
  readonly last?: number
  /** So many sc lie below, worked in the round. */
  readonly lastRound?: number
  readonly terms?: 'US' | 'UK'
  readonly sizes?: readonly string[]
  /** By stitch (US word): does its turning chain count? */
  readonly turning?: Readonly<Record<string, boolean>>
  readonly slipStitchesCount?: boolean
  readonly chainsCount?: boolean
  readonly stitches?: readonly { readonly abbr: string; readonly worksOver: number; readonly makes: number }[]
}

/** A diagnostic at its place in the rows as they were handed in: line and columns 1-based, the end column just after. */
export interface PlacedDiagnostic {
  readonly code: DiagnosticCode
  readonly severity: 'error' | 'warning'
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  readonly diagnostic: Diagnostic
}

/** Rows that were worked, and what there was to say of them. */
export interface Worked {
  readonly checked: CheckedPattern
  /** Of the first size, or of the one that is asked for. */
  readonly rows: (size?: string) => readonly WorkedRow[]
  /** The one row of that label; it throws when there is none, or more than one. */
  readonly row: (label: string, size?: string) => WorkedRow
  readonly diagnostics: readonly PlacedDiagnostic[]
}

const indent = 6

/** The rows of one piece as a pattern file that has what is needed to be checked, and nothing more. */
export function patternOf(rows: string, circumstances: Circumstances = {}): { readonly text: string; readonly firstLine: number } {
  const yesNo = (counted: boolean): string => (counted ? 'counted' : 'not counted')
  const { last, lastRound, sizes, turning, slipStitchesCount, chainsCount, stitches } = circumstances
  const conventions = [
    ...(turning
      ? [`  turning-chains: { ${Object.entries(turning).map(([stitch, counted]) => `${stitch}: ${yesNo(counted)}`).join(', ')} }`]
      : []),
    ...(slipStitchesCount === undefined ? [] : [`  slip-stitches: ${yesNo(slipStitchesCount)}`]),
    ...(chainsCount === undefined ? [] : [`  chains: ${yesNo(chainsCount)}`]),
  ]
  const base = last !== undefined ? [`Base row of ${last} sc.`] : lastRound !== undefined ? [`Base round of ${lastRound} sc.`] : []
  const before = [
    '---',
    'title: Rows on the bench',
    `terms: ${circumstances.terms ?? 'US'}`,
    ...(sizes ? [`sizes: [${sizes.join(', ')}]`] : []),
    ...(conventions.length > 0 ? ['conventions:', ...conventions] : []),
    ...(stitches
      ? ['stitches:', ...stitches.map((s) => `  - { abbr: ${s.abbr}, works-over: ${s.worksOver}, makes: ${s.makes} }`)]
      : []),
    'pieces:',
    '  - name: Bench',
    '    rows: |',
    ...base.map((line) => ' '.repeat(indent) + line),
  ]
  const lines = rows.split('\n').map((line) => (line === '' ? '' : ' '.repeat(indent) + line))
  return { text: [...before, ...lines, '---', ''].join('\n'), firstLine: before.length + 1 }
}

/** Works the rows of one piece. What a published pattern would need besides (a summary, a version) is not asked for. */
export function workRows(rows: string, circumstances: Circumstances = {}): Worked {
  const { text, firstLine } = patternOf(rows, circumstances)
  const checked = checkPattern({ path: 'bench.md', text })
  const rowsOf = (size?: string): readonly WorkedRow[] => {
    const found = checked.pieces.find((piece) => size === undefined || piece.size === size)
    if (!found) throw new Error(`no piece was worked${size === undefined ? '' : ` in size ${size}`}`)
    return found.rows
  }
  return {
    checked,
    rows: rowsOf,
    row: (label, size) => {
      const found = rowsOf(size).filter((row) => row.label === label)
      if (found.length !== 1) {
        const labels = rowsOf(size).map((row) => row.label)
        throw new Error(`${found.length} rows are called ${label}; there are ${labels.join(', ')}`)
      }
      return found[0]!
    },
    diagnostics: checked.diagnostics
      .filter(({ code }) => code !== 'key-missing-to-publish')
      .map((diagnostic) => {
        const start = placeOf(checked.source, diagnostic.primary.span.start)
        const end = placeOf(checked.source, diagnostic.primary.span.end)
        return {
          code: diagnostic.code,
          severity: severityOf(diagnostic.code),
          line: start.line - firstLine + 1,
          column: start.column - indent,
          endLine: end.line - firstLine + 1,
          endColumn: end.column - indent,
          diagnostic,
        }
      }),
  }
}
