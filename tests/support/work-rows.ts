import { severityOf } from '../../src/diagnostics/codes.ts'
import type { DiagnosticCode } from '../../src/diagnostics/codes.ts'
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../src/fabric/worked-row.ts'
import { checkOnce, checkPattern } from '../../src/pattern/check-pattern.ts'
import type { CheckedPattern } from '../../src/pattern/checked-pattern.ts'
import { placeOf } from '../../src/text/source.ts'
import { fenceAttributes } from './fence-attributes.ts'
import { wrapRows } from './wrap-rows.ts'

/** A diagnostic at its place in the rows as they were handed in: line and columns 1-based, the end column just after. */
export interface PlacedDiagnostic {
  readonly code: DiagnosticCode
  readonly severity: 'error' | 'warning'
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  readonly message: string
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

/**
 * Works the rows of one piece; what lies below and what the pattern says of itself stand in the words of a fence
 * (`last=34 turning=dc:counted`). What a pattern needs only to be published is not asked for. Without `hints` no changes are tried, which
 * is quicker where thousands of rows are worked.
 */
export function workRows(rows: string, attributes = '', hints = true): Worked {
  const { source, linesBefore, columnsBefore } = wrapRows(rows, fenceAttributes(attributes))
  const checked = (hints ? checkPattern : checkOnce)(source)
  const rowsOf = (size?: string): readonly WorkedRow[] => {
    const found = checked.pieces.find((piece) => size === undefined || piece.size === size)
    if (!found) throw new Error(`no piece was worked${size === undefined ? '' : ` in size ${size}`}`)
    return found.rows
  }
  const placed = (diagnostic: Diagnostic): PlacedDiagnostic => {
    const { code, message, primary } = diagnostic
    const start = placeOf(source, primary.span.start)
    const end = placeOf(source, primary.span.end)
    return {
      code, message, diagnostic,
      severity: severityOf(code),
      line: start.line - linesBefore, column: start.column - columnsBefore,
      endLine: end.line - linesBefore, endColumn: end.column - columnsBefore,
    }
  }
  return {
    checked,
    rows: rowsOf,
    row: (label, size) => {
      const found = rowsOf(size).filter((row) => row.label === label)
      if (found.length !== 1) {
        throw new Error(`${found.length} rows are called ${label}; there are ${rowsOf(size).map((row) => row.label).join(', ')}`)
      }
      return found[0]!
    },
    diagnostics: checked.diagnostics.filter(({ code }) => code !== 'key-missing-to-publish').map(placed),
  }
}
