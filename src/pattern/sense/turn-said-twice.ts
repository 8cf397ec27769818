import type { Diagnostic } from '../../diagnostics/diagnostic.ts'
import type { SenseFacts } from './sense-facts.ts'
import { turnAfter, turnBefore } from '../../fabric/turns.ts'

/** A row that ends with a turn, and a next one that begins with another: turned twice is not turned. Told once a piece. */
export function turnSaidTwice(facts: SenseFacts): readonly Diagnostic[] {
  return facts.facts.filter(({ size }) => size === 0).flatMap(({ entries }) => {
    for (const [index, { read }] of entries.entries()) {
      const before = entries[index - 1]
      if (!before || turnAfter(before.read.items) !== true || turnBefore(read.items) !== true) continue
      // `Turn, leaving 8 unworked` says where the row stops; the turn that the next row begins with may be the same.
      if (before.read.items.findLast(({ node }) => node !== 'aside')?.node === 'leave') continue
      const last = before.read.items.findLast((item) => item.node === 'turn')!
      const first = read.items.find((item) => item.node === 'turn')!
      return [{
        code: 'turn-said-twice',
        message: 'the work is turned at the end of one row and again at the beginning of the next',
        primary: { span: { start: first.start, end: first.end }, text: 'turned again' },
        secondary: [{ span: { start: last.start, end: last.end }, text: 'turned here' }],
      } satisfies Diagnostic]
    }
    return []
  })
}
