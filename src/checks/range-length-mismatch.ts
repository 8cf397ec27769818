import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import { rowsEndOn, rowsFilled, rowsSaid, rowsStriped } from '../fabric/row-ranges.ts'
import type { PieceFacts } from './facts.ts'

/** `Rnds 7-12 (6 rnds)`: the range must have the length that it says; a repeat of rows must fill its range. */
export function rangeLengthMismatch({ entries, size }: PieceFacts): readonly Diagnostic[] {
  const found: Diagnostic[] = []
  for (const { label, read } of entries) {
    const numbers = label?.numbers ?? []
    const range = label?.bySize?.[size]
    const length = range ? range.last - range.first + 1 : numbers.length
    if (!label || length === 0) continue
    const word = label.word === 'round' ? 'round' : 'row'
    const { said, place } = rowsSaid(label, read.totals, size)
    const striped = rowsStriped(read, size)
    if (read.stripes && striped !== length && length > 1) {
      found.push({
        code: 'range-length-mismatch',
        message: `${word}s ${numbers[0]} to ${numbers.at(-1)} are ${counted(length, word)}, but the stripes come to ${striped}`,
        primary: { span: { start: read.stripes.start, end: read.stripes.end }, text: `${striped} of ${length}` },
        secondary: [],
      })
      continue
    }
    if (said !== undefined && said !== length && length > 1) {
      found.push({
        code: 'range-length-mismatch',
        message: `${word}s ${numbers[0]} to ${numbers.at(-1)} are ${counted(length, word)}, but it says ${said}`,
        primary: { span: { start: place.start, end: place.end }, text: `says ${said}, is ${length}` },
        secondary: [],
      })
      continue
    }
    const end = rowsEndOn(read.reference, length)
    if (end && length > 1 && end.is !== end.says.row) {
      found.push({
        code: 'range-length-mismatch',
        message: `${word}s ${numbers[0]} to ${numbers.at(-1)} are ${counted(length, word)} and end with a ${word} ${end.is}, but it says ${word} ${end.says.row}`,
        primary: { span: { start: end.says.start, end: end.says.end }, text: `ends with a ${word} ${end.is}` },
        secondary: [{ span: { start: label.start, end: label.end }, text: counted(length, word) }],
      })
      continue
    }
    const filled = rowsFilled(read.reference, size)
    if (filled !== undefined && length > 1 && filled !== length) {
      found.push({
        code: 'range-length-mismatch',
        message: `${word}s ${numbers[0]} to ${numbers.at(-1)} are ${counted(length, word)}, but the repeat fills ${filled}`,
        primary: { span: { start: read.reference!.start, end: read.reference!.end }, text: `fills ${counted(filled, word)}` },
        secondary: [{ span: { start: label.start, end: label.end }, text: counted(length, word) }],
      })
    }
  }
  return found
}
