import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { PatternFacts } from './facts.ts'

/** Whether a turning chain counts must be said where the rows come out either way, with different counts. */
export function turningChainUnsaid({ undecided, source }: PatternFacts): readonly Diagnostic[] {
  return undecided.map((point): Diagnostic => ({
    code: 'turning-chain-unsaid',
    message: `nothing says whether this turning chain counts as a stitch, and the rows come out either way with different counts`,
    primary: { span: point.span ? { start: point.span.start, end: point.span.end } : { start: 0, end: Math.min(1, source.text.length) }, text: 'counts, or does not' },
    secondary: [],
    note: `it is taken so: ${point.words[0] ?? ''}`,
  }))
}
