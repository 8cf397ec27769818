import { numberAhead } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'

/** Takes what stands before a chain that a row ends with: `at end of row ch 4`, `when you reach the end, ch 4`, `adding 4 ch`, `finish with ch 4`. */
export function takeEndLead(reader: Reader): void {
  if (atRowEnd(reader)) reader.take(',|:|;')
  else reader.take('to', 'finish|end', 'the?', 'row?', ',?')
  reader.take('finish|finishing', 'with|by') || reader.take('add|adding')
}

/** Takes what stands behind it: `ch 4 at the end of the row`, `ch 4 after the last sc`, `ch 4 to add 3 sts`. */
export function takeEndTail(reader: Reader): void {
  const { at } = reader
  if (!atRowEnd(reader) || !reader.done && !/^(?:[,;.:()]|and|then|to|for)$/.test(reader.word())) reader.at = at
  if (!reader.take('to|for', 'add|adding|extend|extending|lengthen|lengthening|widen|widening|increase|increasing')) return
  while (!reader.done && !/^(?:[,;.:()]|and|then)$/.test(reader.word())) reader.at += 1
}

/** `at end of row`, `at the end of Row 2`, `when you reach the end`, `after the last sc`. */
function atRowEnd(reader: Reader): boolean {
  const { at } = reader
  const reached = reader.take('when|once|on|upon', 'you|at?', 'reach|reaching|get|come|there', 'to|at?')
  if ((reached || reader.take('at|to|on|by')) && reader.take('the|this|that?', 'very|far?')) {
    if (reader.take('row', '-?', 'end') || reader.take('end')) return takeOfRow(reader)
  }
  reader.at = at
  if (reader.take('after|beyond|past|from|off', 'working?', 'in|into?', 'the?', 'last|final') && (reader.take('st|stitch') || takeStitchName(reader) !== undefined)) return takeOfRow(reader)
  reader.at = at
  return false
}

/** `of the row`, `of this side`, `of Row 2` */
function takeOfRow(reader: Reader): true {
  const { at } = reader
  if (!reader.take('of|on', 'the|this|that|each?', 'row|side')) reader.at = at
  else if (numberAhead(reader) !== undefined) reader.at += 1
  return true
}
