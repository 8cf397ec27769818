import { numberAhead } from './numbers.ts'
import type { Reader } from './reader.ts'

/**
 * Takes the words for the stitch from which the row's chain rises:
 *
 *   at base of turning ch   at the foot of 3 ch   at its base   below ch   , which lies directly below the chain
 */
export function takeUnderChain(reader: Reader): boolean {
  const { at } = reader
  if (reader.take(',?', 'which|that', 'is|lies|sits|stands')) reader.take('just|right|directly|immediately')
  const base = reader.take('at?', 'the?', 'base|foot|bottom')
  if (base && reader.word() !== 'of') return true
  if ((base ? reader.take('of') : reader.take('just|right|directly|immediately?', 'below|under|underneath|beneath')) && takesChain(reader)) return true
  reader.at = at
  return false
}

/** `the turning ch-3`, `3 ch`, `this chain` */
function takesChain(reader: Reader): boolean {
  reader.take('the|this|that|your?', 'beg|beginning|turning|starting|first|same?')
  const before = numberAhead(reader) !== undefined
  if (before) reader.at += 1
  if (!reader.take('-?', 'ch|chain|tch|chs|chains')) return false
  const behind = reader.word() === '-' ? 1 : 0
  if (!before && numberAhead(reader, behind) !== undefined) reader.at += behind + 1
  return true
}
