import type { Tie } from '../notation/syntax.ts'
import { inSize } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import type { Walk } from './walk.ts'

/** The name under which ties are counted. */
export const tie = 'tie'

/** Slip stitches back along a chain of its own: one in each chain but those at the hook. */
export function workTie(walk: Walk, { chains, from, slips }: Tie, span: Span): void {
  const offers = inSize(chains, walk.setting.size)
  const wants = slips === 'all' ? Math.max(offers, from) : from + inSize(slips, walk.setting.size)
  if (wants > offers) walk.trouble({ kind: 'overrun', span, wants, offers, what: 'chain' })
  else if (wants < offers) walk.trouble({ kind: 'places-apart', span, says: offers, worksOver: wants, what: 'chain' })
  walk.groups.push({ name: tie, size: 0 })
}
