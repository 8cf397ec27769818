import type { Span } from '../text/span.ts'
import type { Instruction } from './syntax.ts'
import type { Num } from './target.ts'
import type { Total } from './written-count.ts'

/** A row's text, read. */
export interface RowText extends Span {
  readonly items: readonly Instruction[]
  readonly totals: readonly Total[]
  /** Back loop or front loop said for the whole row. */
  readonly loop?: 'back' | 'front' | 'third'
  readonly sizeLists: readonly Num[]
}
