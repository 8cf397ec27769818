import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { PieceEdge } from '../fabric/piece-edges.ts'
import type { WorkedRow } from '../fabric/worked-row.ts'
import type { Source } from '../text/source.ts'
import type { Span } from '../text/span.ts'
import type { Pattern, Piece } from './pattern.ts'

/** What `checkPattern` gives: the pattern as far as it could be read, every piece worked in every size, and what is to be looked at. */
export interface CheckedPattern {
  readonly source: Source
  /** Undefined when the front-matter could not be read at all. */
  readonly pattern?: Pattern
  readonly pieces: readonly WorkedPiece[]
  readonly diagnostics: readonly Diagnostic[]
  /** Warnings that the designer lets stand, with the reason: for the editor. */
  readonly accepted?: readonly AcceptedFinding[]
}

/** A warning that the designer has accepted. */
export interface AcceptedFinding {
  readonly diagnostic: Diagnostic
  readonly why: string
  /** The acceptance in the front-matter. */
  readonly span: Span
}

/** A piece in one size. */
export interface WorkedPiece {
  readonly piece: Piece
  /** The size's name, or undefined when the pattern has one size. */
  readonly size?: string
  readonly rows: readonly WorkedRow[]
  /** All round it when it is done. */
  readonly edges: readonly PieceEdge[]
  /** Lines that are printed and not counted (`Note:`, `Fasten off.`), by the offset in the source where they stand. */
  readonly between: readonly { readonly text: string; readonly at: number; readonly afterRow: number }[]
}
