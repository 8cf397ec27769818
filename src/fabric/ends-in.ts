import { isEndOfRow } from '../notation/end-of-row.ts'
import type { Target } from '../notation/target.ts'
import type { Span } from '../text/span.ts'
import { isOfRow, rowNamed } from './along-outline.ts'
import { isThing } from './find-place.ts'
import type { Place } from './place.ts'
import type { Walk } from './walk.ts'

/** `ending in end of Row 17`: the row itself tells the place of its last stitch, which may be one more than it has counted. Of several such places the nearest is meant. */
export function workEnding(walk: Walk, target: Target, span: Span): void {
  // Behind the place that it names all stays as it is.
  if (!walk.round) walk.leaves = true
  if (walk.overrun) return
  const rowEnds = isEndOfRow(target)
  const named = (place: Place): boolean => (!rowEnds ? isThing(walk, place, target.thing) : isOfRow(walk, place, target))
  const ahead = walk.edge.findIndex((place, at) => at >= walk.last && named(place))
  const behind = walk.edge.findLastIndex((place, at) => at <= walk.last && named(place))
  if (ahead < 0 && behind < 0) return walk.trouble({ kind: 'no-such-place', span, what: rowEnds ? `the end of ${rowNamed(target)}` : target.thing?.kind === 'turning-chain' ? 'a turning chain' : 'a corner' })
  // `dc in next 12 sts, ending in top of tch`: the chain is worked beside those that were counted.
  if (target.thing?.kind === 'turning-chain' && ahead === walk.at) {
    const into = walk.place(walk.take(ahead, span))
    return walk.make({ kind: walk.made.at(-1)!.kind, into })
  }
  const short = ahead < 0 ? Number.POSITIVE_INFINITY : ahead - walk.last
  const beyond = behind < 0 ? Number.POSITIVE_INFINITY : walk.last - behind
  if (short > 0 && short <= beyond) walk.trouble(rowEnds ? { kind: 'row-ends-passed', span, count: short } : { kind: 'left-over', span, count: short })
  else if (beyond > 0) walk.trouble({ kind: 'overrun', span, wants: walk.at, offers: behind + 1, what: rowEnds ? 'row-end' : 'stitch' })
}
