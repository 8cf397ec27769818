import { textOf } from '../../text/source.ts'
import { changeOfWords, type Change, type Slip } from './change.ts'

// A turning chain that counts stands over the first stitch: then that is not worked. One that does not count leaves it to be worked.
const ways: readonly { readonly written: RegExp; readonly instead: string }[] = [
  { written: /\bin (?:the )?first st\b/i, instead: 'in next st' },
  { written: /\bin (?:the )?next st\b/i, instead: 'in first st' },
  { written: /\bsk(?:ip)? (?:the )?first st, /i, instead: '' },
  { written: /\(does not count as (?:a )?(?:st|stitch)\)/i, instead: '(counts as a st)' },
  { written: /\(counts as (?:a |an |1 |first |the first )*(?:st|stitch|sc|hdc|dc|tr|htr|dtr)\)/i, instead: '(does not count as a st)' },
]

/** A turning chain counted and its stitch worked as well, or neither; said in the row itself. */
export function chainChanges(slip: Slip): readonly Change[] {
  const { source, row: { written: { text: within } } } = slip
  const text = textOf(source, within)
  if (!/^\W*(?:turn\W+)?ch \d/i.test(text)) return []
  return ways.flatMap(({ written, instead }) => {
    const match = written.exec(text)
    if (!match) return []
    const span = { start: within.start + match.index, end: within.start + match.index + match[0].length }
    return [changeOfWords(slip, within, span, instead)]
  })
}
