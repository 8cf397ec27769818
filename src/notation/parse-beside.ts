import { takeStitchName, takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import { corner, type Thing } from './target.ts'

const hands = 'top|bottom|upper|lower|right|left|hand|outer|inner'

/**
 * `after the center sc of the top right corner`, `before the next corner`, `past the upper left ch-2 sp`: the corner or space beside which
 * stitches lie. Takes the words behind one of `ways`; takes nothing where they name no such place.
 */
export function takeBeside(reader: Reader, ways: string): Thing | undefined {
  const { at } = reader
  const found = reader.take(ways) ? cornerStitch(reader) ?? cornerOrSpace(reader) : undefined
  if (!found) reader.at = at
  return found
}

/** `the center sc of the top right corner`, `the middle st of the next corner group` */
function cornerStitch(reader: Reader): Thing | undefined {
  const { at } = reader
  const stitch = reader.take('the?', 'center|centre|middle|corner') && (takeStitchName(reader) !== undefined || reader.take('st|stitch'))
  if (stitch && (reader.word(-2) === 'corner' || reader.take('of|in|at') && takesCorner(reader))) return { kind: 'stitch', where: 'corner' }
  reader.at = at
  return undefined
}

function cornerOrSpace(reader: Reader): Thing | undefined {
  const { at } = reader
  if (takesCorner(reader)) return corner
  const named = takesHand(reader)
  const thing = takeThing(reader)
  if (thing?.kind === 'space') return named ? { ...thing, where: 'corner' } : thing
  reader.at = at
  return undefined
}

function takesCorner(reader: Reader): boolean {
  const { at } = reader
  takesHand(reader)
  if (reader.take('corner') && !/^(?:sp|space|ch|chain)$/.test(reader.word())) {
    reader.take('group|increase|inc')
    return true
  }
  reader.at = at
  return false
}

/** Takes `the next`, `the top right-hand`; true where a hand is told. */
function takesHand(reader: Reader): boolean {
  reader.take('the|a|any|each')
  reader.take('next|first|last|same|second')
  let told = false
  while (reader.take(hands) || told && reader.take('-')) told = true
  return told
}
