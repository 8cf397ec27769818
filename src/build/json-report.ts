import { severityOf, type DiagnosticCode } from '../diagnostics/codes.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { notCheckedByMachine } from '../diagnostics/editors-list.ts'
import { errorsFirst } from '../diagnostics/report.ts'
import type { PieceEdge } from '../fabric/piece-edges.ts'
import type { EdgeUse, Says, Verdict, WorkedRow } from '../fabric/worked-row.ts'
import type { CheckedPattern, WorkedPiece } from '../pattern/checked-pattern.ts'
import { placeOf, type Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import { countFindings } from './closing-summary.ts'

/** What `npm run check -- --json` prints. The shape may grow; what is here stays. */
export interface JsonReport {
  readonly files: readonly JsonFile[]
  /** What stays with a person, by the numbers of the editor's list. */
  readonly notCheckedByMachine: readonly { readonly number: number; readonly what: string }[]
}

export interface JsonFile {
  /** As it was given, or from the working folder. */
  readonly path: string
  readonly errors: number
  readonly warnings: number
  readonly pieces: readonly JsonPiece[]
  readonly diagnostics: readonly JsonDiagnostic[]
  /** Warnings that the designer accepts, each with the reason. */
  readonly accepted: readonly JsonAccepted[]
}

/** A piece in one size; `size` is null when the pattern has one size. */
export interface JsonPiece {
  readonly name: string
  readonly size: string | null
  readonly rows: readonly JsonRow[]
  /** All round it when it is done, from the last stitch worked in the direction of work; of a tube its two ends. */
  readonly edges: readonly PieceEdge[]
}

/** A row as it was worked. Counts are null where they cannot be told. */
export interface JsonRow {
  readonly label: string
  /** Where the written row begins, 1-based. */
  readonly line: number
  readonly offers: number | null
  readonly worksOver: number | null
  readonly leaves: number | null
  readonly makes: number | null
  /** Stitches by kind, US words. */
  readonly kinds: Readonly<Record<string, number>>
  /** Chain spaces by kind. */
  readonly spaces: Readonly<Record<string, number>>
  /** The total that the row states, or null. */
  readonly says: number | null
  readonly verdict: Verdict
  /** Why it cannot be told; null otherwise. */
  readonly reason: string | null
  readonly assumed: readonly string[]
  /** Of a border: the edges that it goes along, and what it uses of each; left out for other rows. */
  readonly along?: readonly EdgeUse[]
}

/** One finding. Lines and columns are 1-based; `endColumn` is the first column behind it. */
export interface JsonDiagnostic {
  readonly code: DiagnosticCode
  readonly severity: 'error' | 'warning'
  /** Names of the sizes that it holds for, joined by a comma; null when it holds for all. */
  readonly size: string | null
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  readonly message: string
  readonly note: string | null
  readonly hint: string | null
  /** Changes that were tried and come out, the likeliest first; `hint` is the text of the first. */
  readonly changes: readonly JsonChange[]
}

/** A change: put `replacement` in the place of what stands there. Lines and columns as in a finding. */
export interface JsonChange {
  readonly text: string
  readonly line: number
  readonly column: number
  readonly endLine: number
  readonly endColumn: number
  readonly replacement: string
}

/** A warning that the designer accepts. */
export interface JsonAccepted extends Omit<JsonDiagnostic, 'changes' | 'hint'> {
  readonly why: string
}

/** Checked patterns as plain data for other programs. */
export function jsonReport(checked: readonly CheckedPattern[]): JsonReport {
  return { files: checked.map(fileOf), notCheckedByMachine: notCheckedByMachine.map(({ number, what }) => ({ number, what })) }
}

function fileOf({ source, pieces, diagnostics, accepted = [] }: CheckedPattern): JsonFile {
  return {
    path: source.path,
    ...countFindings(diagnostics),
    pieces: pieces.map((piece) => pieceOf(piece, source)),
    diagnostics: errorsFirst(diagnostics).map((diagnostic) => diagnosticOf(diagnostic, source)),
    accepted: accepted.map(({ diagnostic, why }) => {
      const { changes: _, hint: __, ...told } = diagnosticOf(diagnostic, source)
      return { ...told, why }
    }),
  }
}

function pieceOf({ piece, size, rows, edges }: WorkedPiece, source: Source): JsonPiece {
  return { name: piece.name, size: size ?? null, rows: rows.map((row) => rowOf(row, source)), edges }
}

function rowOf(row: WorkedRow, source: Source): JsonRow {
  return {
    label: row.label,
    line: placeOf(source, row.written.span.start).line,
    // What the rows below hold out is known even where this row cannot be read.
    offers: told(row.offers),
    worksOver: told(row.worksOver, row),
    leaves: told(row.leaves, row),
    makes: told(row.makes, row),
    kinds: { ...row.kinds },
    spaces: { ...row.spaces },
    says: totalOf(row.says),
    verdict: row.verdict,
    reason: row.reason ?? null,
    assumed: [...row.assumed],
    ...(row.along && { along: row.along }),
  }
}

/** A row that was not counted has no numbers of its own: what it is taken to make, it only says. */
function told(count: number, row?: WorkedRow): number | null {
  return Number.isFinite(count) && !row?.uncounted ? count : null
}

/** Where only kinds are stated, `(9 sc, 48 dc)`, they are the total: that is how a maker adds them up. */
function totalOf(says: Says | undefined): number | null {
  if (says?.count !== undefined) return says.count
  const kinds = Object.values(says?.kinds ?? {})
  return kinds.length > 0 ? kinds.reduce((sum, count) => sum + count, 0) : null
}

function diagnosticOf({ code, message, primary, note, hint, otherHints = [], sizes }: Diagnostic, source: Source): JsonDiagnostic {
  return {
    code,
    severity: severityOf(code),
    size: sizes && sizes.length > 0 ? sizes.join(', ') : null,
    ...regionOf(primary.span, source),
    message,
    note: note ?? null,
    hint: hint?.text ?? null,
    changes: [...(hint ? [hint] : []), ...otherHints].flatMap(({ text, edit }) =>
      edit ? [{ text, ...regionOf(edit.span, source), replacement: edit.replacement }] : []),
  }
}

/** A span as lines and columns, which other programs count from 1. */
export function regionOf(span: Span, source: Source): { readonly line: number; readonly column: number; readonly endLine: number; readonly endColumn: number } {
  const start = placeOf(source, span.start)
  const end = placeOf(source, Math.max(span.start, span.end))
  return { line: start.line, column: start.column, endLine: end.line, endColumn: end.column }
}
