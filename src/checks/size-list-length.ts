import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import { counted } from '../diagnostics/words.ts'
import type { PieceFacts } from './facts.ts'

/** A list of numbers has one for each size, or one for all. */
export function sizeListLength({ entries, sizes }: PieceFacts): readonly Diagnostic[] {
  const expected = Math.max(1, sizes.length)
  return entries.flatMap(({ label, read }) => [...(label?.sizeList ? [label.sizeList] : []), ...read.sizeLists]
    .filter(({ values }) => values.length !== expected)
    .map((list): Diagnostic => ({
      code: 'size-list-length',
      message: `a list has ${counted(list.values.length, 'number')}, but the pattern has ${expected === 1 ? 'one size' : counted(expected, 'size')}`,
      primary: { span: { start: list.start, end: list.end }, text: `${list.values.length} of ${expected}` },
      secondary: [],
      ...(sizes.length > 1 && { note: `the sizes are ${sizes.join(', ')}` }),
    })))
}
