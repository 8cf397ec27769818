import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import { inSize } from '../notation/syntax.ts'
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
    const totalRows = read.totals.find(({ rows }) => rows)
    const said = label.rowsSaid ?? (totalRows?.rows && inSize(totalRows.rows, size))
    const place = label.rowsSaid === undefined && totalRows ? totalRows : label
    if (said !== undefined && said !== length && length > 1) {
      found.push({
        code: 'range-length-mismatch',
        message: `${word}s ${numbers[0]} to ${numbers.at(-1)} are ${counted(length, word)}, but it says ${said}`,
        primary: { span: { start: place.start, end: place.end }, text: `says ${said}, is ${length}` },
        secondary: [],
      })
      continue
    }
    const filled = filledBy(read.reference, size)
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

/** How many rows a repeat of rows comes to, when it says how often; both readings of a bare number of times are let pass. */
function filledBy(reference: PieceFacts['entries'][number]['read']['reference'], size: number): number | undefined {
  if (reference?.kind === 'last' && reference.times) return inSize(reference.count, size) * inSize(reference.times, size)
  if (reference?.kind !== 'copy' || !reference.blocks.every(({ times }) => times)) return undefined
  return reference.blocks.reduce((sum, { rows, times }) => sum + rows.length * inSize(times!, size), 0)
}
