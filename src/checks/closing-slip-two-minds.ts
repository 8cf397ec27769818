import { textOf } from '../text/source.ts'
import type { Diagnostic } from '../diagnostics/diagnostic.ts'
import type { Total } from '../notation/written-count.ts'
import type { PatternFacts, PieceFacts } from './facts.ts'

type Entry = PieceFacts['entries'][number]

/** Totals that tell the closing slip stitch with the others in one round, and forget it in another. Told once a pattern. */
export function closingSlipTwoMinds({ source, pieces }: PatternFacts): readonly Diagnostic[] {
  const entries = pieces.filter(({ size }) => size === 0).flatMap((piece) => piece.entries)
  const told = entries.flatMap(({ read }) => read.totals.filter(({ closing }) => closing === true))
  const counts = new Set(pieces.flatMap(({ rows }) => rows.flatMap(({ says }) => (says?.closing ? [says.span.start] : []))))
  const without = entries.flatMap((entry) => forgetful(entry, (total) => textOf(source, total))).filter(({ start }) => !counts.has(start))
  if (told.length === 0 || without.length === 0) return []
  return [{
    code: 'closing-slip-two-minds',
    message: 'this total leaves out the slip stitch that closes the round, and others count it',
    primary: { span: without[0]!, text: 'without it' },
    secondary: [{ span: told[0]!, text: 'counted here' }],
    note: 'a closing slip stitch is counted throughout a pattern or not at all; where a total means it otherwise, it says so',
  }]
}

/** The totals of a round that is closed with a slip stitch, that tell all its stitches, and say nothing of the join. */
function forgetful({ read: { items, totals } }: Entry, textIn: (total: Total) => string): readonly Total[] {
  if (!items.some((item) => item.node === 'join') || totals.some(({ closing }) => closing)) return []
  return totals.filter((total) => total.count !== undefined && total.closing !== true && /\bst(?:s|itches)\b/i.test(textIn(total)) && !/\b(?:sl|ss|slip|join|closing)/i.test(textIn(total)))
}
