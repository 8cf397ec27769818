import { numberAhead, takeNumber } from './numbers.ts'
import { takeToEnd } from './parse-reach.ts'
import type { Reader } from './reader.ts'
import type { Shape } from './syntax.ts'
import type { Num } from './target.ts'

/**
 * Shaping told by its sum:
 *
 *   Inc 6 sts evenly around   dec 1 st at each end   inc 8 evenly: 46 → 54
 */
export function parseShape(reader: Reader): readonly Shape[] | undefined {
  const start = reader.start
  const at = reader.at
  reader.take('cont|continue|continuing', 'to')
  const by = reader.take('inc|incs|increase|increases|increasing') ? 'inc' : reader.take('dec|decs|decrease|decreases|decreasing') ? 'dec' : undefined
  if (!by) return undefined
  const count = takeNumber(reader)
  reader.take('st|sts|stitch|stitches|sc|dc|hdc')
  const places = evenly(reader) ? 'evenly' : eachEnd(reader)
  if (!places || places === 'evenly' && !count && !toAhead(reader)) {
    reader.at = at
    return undefined
  }
  reader.take('by', 'working?', 'sc2tog|dc2tog|hdc2tog|tr2tog')
  const to = takeTo(reader)
  return [{ node: 'shape', by, ...(count && { count }), places, ...(to && { to }), start, end: reader.end }]
}

function evenly(reader: Reader): boolean {
  if (!reader.take('evenly') && !reader.take('spaced', 'evenly')) return false
  reader.take('spaced')
  takeToEnd(reader)
  return true
}

function eachEnd(reader: Reader): 'each-end' | 'one-end' | undefined {
  if (reader.take('at|on?', 'each|both', 'end|ends|side|sides|edge|edges', 'of?', 'the?', 'row|next|every?', 'row?') || reader.take('at|on', 'the?', 'beg|beginning|start', 'and', 'the?', 'end', 'of?', 'the|each|every|this|next?', 'row?')) return 'each-end'
  if (reader.take('at', 'beg|beginning|end|start|neck|armhole', 'edge?', 'of?', 'row?')) return 'one-end'
  return undefined
}

function toAhead(reader: Reader): boolean {
  const at = reader.at
  const to = takeTo(reader)
  reader.at = at
  return to !== undefined
}

/** `: 46 → 54`, `to 54 sts`, `(54 from 46)` is a total and read elsewhere. */
function takeTo(reader: Reader): Num | undefined {
  const at = reader.at
  reader.take(':')
  if (numberAhead(reader) !== undefined && (reader.word(1) === '→' || reader.word(1) === 'to' || reader.word(1) === '-' && reader.word(2) === '>')) {
    takeNumber(reader)
    reader.take('→|to') || reader.take('-', '>')
    const to = takeNumber(reader)
    if (to) return to
  }
  if (reader.take('to')) {
    const to = takeNumber(reader)
    reader.take('st|sts|stitch|stitches|sc')
    if (to) return to
  }
  reader.at = at
  return undefined
}
