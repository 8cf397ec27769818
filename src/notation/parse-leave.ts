import { takeNumber } from './numbers.ts'
import { rowEnds } from './parse-row-ends.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/** `leave rem sts unworked`, `leaving 33 sts unworked`, `5 sts rem unworked`, `do not work the last 4 sts`: places left on purpose. */
export function parseLeave(reader: Reader): readonly Instruction[] | undefined {
  return leaving(reader) ?? left(reader) ?? notWorked(reader)
}

function leaving(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  if (!reader.take('leave|leaving')) return undefined
  // `leaving the rest of the brim unworked`
  if (reader.take('the', 'rest|remainder')) {
    while (!reader.done && !/^(unworked|free|unused|[,;.()])$/.test(reader.word())) reader.at += 1
    if (reader.take('unworked|free|unused') || reader.word(-1) === 'rest') return [{ node: 'leave', start, end: reader.end }]
  }
  const ends = rowEnds(reader, start, false)
  if (ends && (reader.take('unworked|free|unused') || reader.done || /^[,;.(]$/.test(reader.word()))) return [{ node: 'leave', ...(ends.count && { count: ends.count }), rowEnds: true, start, end: reader.end }]
  reader.at = at + 1
  reader.take('the|these')
  reader.take('last|next|rem|remaining|other')
  const count = takeNumber(reader)
  reader.take('rem|remaining')
  const thing = takeThing(reader)
  const slips = thing?.stitch === 'sl st'
  // `leave remaining sts of top edge unworked`
  const { at: tail } = reader
  if (reader.take('of|on', 'the?')) {
    while (reader.peek()?.kind === 'word' && !/^(unworked|free|unused)$/.test(reader.word()) && reader.at - tail < 6) reader.at += 1
    if (!/^(unworked|free|unused)$/.test(reader.word())) reader.at = tail
  }
  if ((thing || count) && (reader.take('unworked|free|unused|behind') || reader.take('rem|remaining', 'unworked?'))) {
    return [{ node: 'leave', ...(count && { count }), ...(slips && { slips }), start, end: reader.end }]
  }
  if (count && (reader.done || /^[,;.(]$/.test(reader.word()))) return [{ node: 'leave', count, start, end: reader.end }]
  if (thing && !/^(cm|in|inch|inches|tail)$/.test(reader.word())) return [{ node: 'leave', ...(count && { count }), start, end: reader.end }]
  reader.at = at
  return undefined
}

/** `rem sts unworked`, `4 sts left unworked`, `10 sts remain unworked` */
function left(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const rest = reader.take('rem|remaining')
  const count = takeNumber(reader)
  if ((rest || count) && takeThing(reader)) {
    const said = rest ? reader.take('unworked|left|are', 'unworked|left?') : reader.take('are?', 'left|rem|remain|remaining?', 'unworked')
    if (said) return [{ node: 'leave', ...(count && { count }), start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

function notWorked(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  if (reader.take('do', 'not', 'work', 'in|into?', 'the|these?', 'last|rem|remaining')) {
    const count = takeNumber(reader)
    if (takeThing(reader)) return [{ node: 'leave', ...(count && { count }), start, end: reader.end }]
  }
  reader.at = at
  return undefined
}
