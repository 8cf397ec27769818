import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { mostStitches } from '../fabric/limits.ts'
import type { PieceFacts } from './facts.ts'

/** Two million stitches are more than anybody crochets; a number with a digit too many is likelier. */
export function fabricTooLarge({ tooLarge, rows, entries, name }: PieceFacts): readonly Diagnostic[] {
  if (!tooLarge) return []
  const last = rows.at(-1)?.written.span.start ?? -1
  const entry = entries.find(({ span }) => span.start > last) ?? entries.at(-1)
  if (!entry) return []
  return [{
    code: 'fabric-too-large',
    message: `${name} would have more than ${mostStitches.toLocaleString('en-US')} stitches; its rows are worked only as far as that`,
    primary: { span: entry.span, text: 'not worked from here on' },
    secondary: [],
  }]
}
