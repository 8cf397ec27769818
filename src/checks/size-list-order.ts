import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { PieceFacts } from './facts.ts'

/** Numbers in a list go up, or down, or stay, from size to size; one that goes back is likely a slip of typing or of order. */
export function sizeListOrder({ entries, sizes }: PieceFacts): readonly Diagnostic[] {
  return entries.flatMap(({ read }) => read.sizeLists
    // 0 stands for "not in this size" and says nothing of order.
    .filter(({ values }) => values.length === sizes.length && !steady(values.filter((value) => value !== 0)))
    .map((list): Diagnostic => ({
      code: 'size-list-order',
      message: `the numbers ${list.values.join(', ')} do not go steadily from size to size`,
      primary: { span: { start: list.start, end: list.end }, text: 'goes up and down' },
      secondary: [],
    })))
}

function steady(values: readonly number[]): boolean {
  const up = values.every((value, index) => index === 0 || value >= values[index - 1]!)
  return up || values.every((value, index) => index === 0 || value <= values[index - 1]!)
}
