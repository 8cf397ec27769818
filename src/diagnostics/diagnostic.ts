import type { Span } from '../text/span.ts'
import type { DiagnosticCode } from './codes.ts'

/** A place in the source with a few words beside it. */
export interface Label {
  readonly span: Span
  readonly text: string
}

/** One step of a row's arithmetic: what it works over, what it makes, and the running count after it. */
export interface TallyLine {
  readonly text: string
  readonly worksOver: number
  readonly makes: number
  readonly soFar: number
}

/** A change that was tried: the pattern was worked again with it and came out. */
export interface Hint {
  readonly text: string
  readonly edit?: { readonly span: Span; readonly replacement: string }
}

/** One thing for the designer to look at, and where. Severity comes from `codes.ts`. */
export interface Diagnostic {
  readonly code: DiagnosticCode
  /** What is, against what is said. One sentence, lower case, no full stop. Never says how to fix it. */
  readonly message: string
  readonly primary: Label
  readonly secondary: readonly Label[]
  /** The row, step by step, when a count needs showing. */
  readonly tally?: readonly TallyLine[]
  /** Facts that help, never a change. */
  readonly note?: string
  /** A change, only after it was tried. */
  readonly hint?: Hint
  /** Other changes after which the pattern comes out as well; the likeliest is `hint`. */
  readonly otherHints?: readonly Hint[]
  /** Sizes that it holds for; left out when it holds for all of them. */
  readonly sizes?: readonly string[]
}
