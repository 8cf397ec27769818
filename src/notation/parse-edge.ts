import { takeNumber } from './numbers.ts'
import { takeToEnd } from './parse-reach.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Target } from './syntax.ts'

/**
 * Edges, by what they are made of:
 *
 *   evenly along 30 dc row-ends (2 per row)   evenly along the short edge   in each row-end along the side   in the underside of each of next 72 ch
 */
export function alongEdge(reader: Reader, start: number): Target | undefined {
  const at = reader.at
  const evenly = reader.take('evenly', 'spaced?')
  reader.take('in|into|along|across|down|up|on|over')
  reader.take('the')
  if (reader.take('underside|undersides|bottom|base', 'loop|loops?', 'of')) {
    reader.take('the|each')
    reader.take('of')
    reader.take('the|each')
    reader.take('next')
    const count = takeNumber(reader)
    if (takeThing(reader)?.kind === 'chain') {
      const toEnd = takeToEnd(reader)
      return { walk: count ? 'next' : 'each', ...(count && { count }), thing: { kind: 'chain' }, ...(toEnd && { toEnd }), start, end: reader.end }
    }
  }
  const each = reader.take('each')
  reader.take('of')
  const count = takeNumber(reader)
  reader.take('sc|dc|hdc|tr', 'row') && (reader.at -= 1)
  if (reader.take('row', '-?', 'end|ends') || reader.take('end|ends', 'of', 'each|the?', 'row|rows')) {
    reader.take('along|down|up|on|of', 'the|this|each|first|left|right?', 'left|right|short|long?', 'side|edge')
    perRow(reader)
    takeToEnd(reader)
    return { walk: count && !each || count ? 'next' : 'each', ...(count && { count }), thing: { kind: 'row-end' }, ...(evenly && { evenly }), start, end: reader.end }
  }
  if (evenly && !count && (reader.take('each|the|this?', 'short|long|left|right|side|next|first|second|lower|straight?', 'edge|side|end') || reader.take('side|edge'))) {
    return { walk: 'edge', evenly, start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `(2 per row)` */
function perRow(reader: Reader): void {
  if (reader.word() === '(' && reader.word(2) === 'per') while (!reader.done && !reader.take(')')) reader.at += 1
}
