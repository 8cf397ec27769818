import { textOf } from '../../text/source.ts'
import { changeOfWords, type Change, type Slip } from './change.ts'

// What stands for what: the words that say that a repeat is worked so often in all, and so often besides the first time.
// Who writes `6 more times` for six in all has the number right; the other way round it is rarer.
const ways: readonly { readonly written: RegExp; readonly instead: (times: string) => string; readonly fits?: true }[] = [
  { written: /(\d{1,4}) (?:more times|times more|additional times|further times)\b/gi, instead: (times) => `${times} times in all`, fits: true },
  { written: /(once|twice) more\b(?! times)/gi, instead: (times) => `${times} in all`, fits: true },
  { written: /(\d{1,4}) times in (?:all|total)\b/gi, instead: (times) => `${times} more times` },
  { written: /(twice|thrice) in (?:all|total)\b/gi, instead: (times) => `${times} more` },
  { written: /(\d{1,4}) times\b(?! (?:more|in all|in total))/gi, instead: (times) => `${times} more times` },
  { written: /(once|twice)\b(?! (?:more|in all|in total))/gi, instead: (times) => `${times} more` },
]

/** So many times against so many more: the slip of those who count the first pass, or forget it. */
export function moreChanges(slip: Slip): readonly Change[] {
  const { source, row: { written: { text: within } } } = slip
  const text = textOf(source, within)
  return ways.flatMap(({ written, instead, fits }) => [...text.matchAll(written)].map((match) => {
    const span = { start: within.start + match.index, end: within.start + match.index + match[0].length }
    return { ...changeOfWords(slip, within, span, instead(match[1]!)), carriesTotal: true, ...(fits && { fits }) }
  }))
}
