import type { Reader } from './reader.ts'
import { takeRows } from './row-numbers.ts'

/** `, reversing all shaping`, `but with the shaping reversed`, `in reverse`, `as a mirror image`, `with the step on the other side`. */
export function takeReversing(reader: Reader): boolean {
  const { at } = reader
  reader.take(',|;')
  reader.take('but|and|now')
  reader.take('work|working')
  if (reversed(reader)) {
    const { at: end } = reader
    // `reversing the shaping on Row 7`: where there is any.
    if (!reader.take('at|on|in|from|of|for') || !takeRows(reader)) reader.at = end
    return true
  }
  reader.at = at
  reader.take(',')
  return false
}

const shaping = 'shaping|shapings|decreases|increases|step|steps|neck|edges'

function reversed(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('reversing|reverse|rev|mirroring|mirror', 'all?', 'of?', 'the?', shaping)) return true
  if (reader.take('in|as', 'a|the?', 'mirror|mirrored', 'image') || reader.take('in', 'reverse') || reader.take('mirrored|reversed')) return true
  if (reader.take('with?', 'all?', 'of?', 'the?', shaping, 'is|are|being?') && (reader.take('in?', 'reversed|mirrored|reverse') || otherSide(reader))) return true
  reader.at = at
  return false
}

/** `with the step on the opposite edge` */
const otherSide = (reader: Reader): boolean => reader.take('on|at|to', 'the', 'other|opposite', 'side|edge|end')
