import type { Diagnostic } from '../../../src/diagnostics/diagnostic.ts'
import type { WorkedRow } from '../../../src/fabric/worked-row.ts'
import type { CheckedPattern, WorkedPiece } from '../../../src/pattern/checked-pattern.ts'
import type { Pattern, Piece } from '../../../src/pattern/pattern.ts'
import type { Source } from '../../../src/text/source.ts'

/** A row that adds up, unless told otherwise, at the place of these words in the source. */
export function madeUpRow(source: Source, words: string, told: Partial<WorkedRow> = {}): WorkedRow {
  const start = source.text.indexOf(words)
  if (start === -1) throw new Error(`the source has no \`${words}\``)
  const span = { start, end: start + words.length }
  return {
    label: words.split(':')[0] ?? '', word: 'row', written: { span, label: span, text: span }, offers: 1, worksOver: 1, leaves: 0, makes: 1,
    kinds: {}, spaces: {}, verdict: 'adds-up', assumed: [], tally: [], repeats: [], troubles: [],
    agreement: { total: true, kinds: true, change: true }, yarns: [], fabric: { made: [], left: [], turned: false }, ...told,
  }
}

/** A piece in one size. The same name is the same piece. */
export function madeUpPiece(name: string, rows: readonly WorkedRow[], size?: string): WorkedPiece {
  return { piece: pieces.get(name) ?? newPiece(name), rows, between: [], edges: [], ...(size === undefined ? {} : { size }) }
}

const pieces = new Map<string, Piece>()

function newPiece(name: string): Piece {
  const piece: Piece = { name, make: 1, rows: { start: 0, end: 0 }, nameSpan: { start: 0, end: 0 } }
  pieces.set(name, piece)
  return piece
}

/** What checking gave, with as much of a pattern as a report asks for. */
export function madeUpChecked(
  source: Source, pieces: readonly WorkedPiece[], diagnostics: readonly Diagnostic[] = [], sizes: readonly string[] = [],
): CheckedPattern {
  return { source, pieces, diagnostics, pattern: { sizes } as Pattern }
}

/** A finding on the first place of these words. */
export function finding(source: Source, words: string, code: Diagnostic['code'], told: Partial<Diagnostic> = {}): Diagnostic {
  const start = source.text.indexOf(words)
  if (start === -1) throw new Error(`the source has no \`${words}\``)
  return { code, message: `about ${words}`, primary: { span: { start, end: start + words.length }, text: '' }, secondary: [], ...told }
}
