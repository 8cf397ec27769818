import type { Reader } from './reader.ts'

/** `, reversing all shaping`, `but with the shaping reversed`, `in reverse`, `as a mirror image` */
export function takeReversing(reader: Reader): boolean {
  const { at } = reader
  reader.take(',')
  reader.take('but|and')
  if (reader.take('reversing|reverse|mirroring', 'all?', 'the?', 'shaping|shapings')) return true
  if (reader.take('with', 'all?', 'the?', 'shaping|shapings', 'reversed|mirrored') || reader.take('in', 'reverse') || reader.take('mirrored|reversed') || reader.take('in|as', 'a?', 'mirror', 'image')) return true
  reader.at = at
  reader.take(',')
  return false
}
