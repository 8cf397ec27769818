import type { BracketTimes } from '../notation/parse-bracket-times.ts'
import type { Instruction, Repeat } from '../notation/syntax.ts'
import type { Span } from '../text/span.ts'

/** `As Row 4, but make each bracket 9 times`: the row that is copied, its brackets worked so often. A bracket that it has not cannot be read. */
export function withBracketTimes(items: readonly Instruction[], brackets: readonly BracketTimes[], { start, end }: Span): readonly Instruction[] {
  const repeats = items.filter(isBracket)
  const missing = brackets.some(({ nth = 1 }) => nth > repeats.length)
  if (missing) return [...items, { node: 'unreadable', why: 'broken', reason: 'a bracket that the row has not', start, end }]
  return items.map((item) => {
    const count = isBracket(item) ? brackets.findLast(({ nth }) => nth === undefined || nth === repeats.indexOf(item) + 1)?.times : undefined
    return count && isBracket(item) ? { ...item, times: { kind: 'in-all', count } } : item
  })
}

const isBracket = (item: Instruction): item is Repeat => item.node === 'repeat' && item.times.kind === 'in-all'
