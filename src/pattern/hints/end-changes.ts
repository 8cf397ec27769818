import { textOf } from '../../text/source.ts'
import { changeOfWords, quoted, type Change, type Slip } from './change.ts'

/** The end of a row: its last stitch or corner forgotten, and stitches that a repeat should keep for it, or not. */
export function endChanges(slip: Slip): readonly Change[] {
  return [...lastStitch(slip), ...lastCorner(slip), ...keptBack(slip)]
}

const stitchWords = /\b(?:(?:fp|bp|e)?(?:sc|hdc|dc|tr|htr|dtr))\b/gi

/** `…, sc in last st` at the row's end, in the stitch that was worked last. */
function lastStitch(slip: Slip): readonly Change[] {
  const text = textOf(slip.source, slip.row.written.text)
  const stitch = [...text.matchAll(stitchWords)].at(-1)?.[0].toLowerCase()
  if (stitch === undefined || /\blast st\b[^,;*]*$/i.test(text.replace(/[.\s]+$/, ''))) return []
  const counts = /\bch \d\s*\(counts as/i.test(text)
  return [...(counts ? [`${stitch} in top of tch`] : []), `${stitch} in last st`].map((words) => putAtEnd(slip, words))
}

/** The group of the corners once more at the end: `(sc, ch 2, sc) in last ch-2 sp`. */
function lastCorner(slip: Slip): readonly Change[] {
  const text = textOf(slip.source, slip.row.written.text)
  const group = [...text.matchAll(/(\([^()]*\)|\d (?:sc|hdc|dc|tr|htr|dtr)) in (?:each |next |the )?(corner(?: (?:st|sp|ch-\d sp))?|ch-\d sp)/gi)].at(-1)
  return group ? [putAtEnd(slip, `${group[1]} in last ${group[2]}`)] : []
}

/** Puts words behind the last instruction: before the joining, the turning or what is left, if the row ends with that. */
function putAtEnd(slip: Slip, words: string): Change {
  const { start, end } = slip.row.written.text
  const text = slip.source.text.slice(start, end)
  const closing = /[,;.]?\s*(?:,?\s*(?:and )?(?:join|sl st in|turn|leave|fasten off)\b[^[\]*]*)?[.,;\s]*$/i.exec(text)
  const at = start + (closing?.index ?? text.length)
  return { span: { start: at, end: at }, replacement: `, ${words}`, words: `with ${quoted(words)} at its end`, carriesTotal: true }
}

/** `rep from * across` against `rep from * to last st`. */
function keptBack(slip: Slip): readonly Change[] {
  const { source, row: { written: { text: within } } } = slip
  const text = textOf(source, within)
  const changes: Change[] = []
  // A round that ends before its end is seldom meant.
  const toEnd = slip.row.word === 'round' ? /\bto end\b(?! to)/gi : /\b(?:across|to end)\b(?! to)/gi
  for (const match of text.matchAll(toEnd)) {
    const span = { start: within.start + match.index, end: within.start + match.index + match[0].length }
    changes.push(changeOfWords(slip, within, span, 'to last st'), changeOfWords(slip, within, span, 'to last 2 sts'))
  }
  for (const match of text.matchAll(/\bto (?:the )?last st\b(?!s)/gi)) {
    const span = { start: within.start + match.index, end: within.start + match.index + match[0].length }
    changes.push(changeOfWords(slip, within, span, 'to last 2 sts'), changeOfWords(slip, within, span, 'to end'))
  }
  return changes
}
