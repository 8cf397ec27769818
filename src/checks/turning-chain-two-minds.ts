import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { PatternFacts } from './facts.ts'
import { rowName } from './row-words.ts'

/** A turning chain counts throughout a pattern or does not; rows that need it now so and now otherwise contradict one another. */
export function turningChainTwoMinds({ split }: PatternFacts): readonly Diagnostic[] {
  return split.map(({ words, rows: [one, other] }): Diagnostic => ({
    code: 'turning-chain-two-minds',
    message: `${rowName(one)} comes out only if ${words[0]}, and ${rowName(other)} only if ${words[1]}`,
    primary: { span: other.says!.span, text: hereIt(words[1]) },
    secondary: [{ span: one.says!.span, text: hereIt(words[0]) }],
    note: 'no one convention fits all the totals; where a row means it otherwise, the row says so',
  }))
}

/** The reading beside its row: `here it counts as hdc`. */
function hereIt(words = ''): string {
  return `here it ${words.replace(/^the ch-?\d+ turning chain /, '')}`
}
