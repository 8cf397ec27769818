import { takeStitchName, takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import { corner, type Target, type Thing } from './target.ts'

/** Words for a place that lies behind another one in the direction of work. */
export const beyond = 'after|following|past|beyond'

const hands = 'top|bottom|upper|lower|right|left|hand|outer|inner'

/**
 * `after the center sc of the top right corner`, `before the next corner`, `past the upper left ch-2 sp`: the corner or space beside which
 * stitches lie, and whether it is the last of these. Takes the words behind `ways`; takes nothing where they name no such place.
 */
export function takeBeside(reader: Reader, ...ways: readonly string[]): Target['after'] {
  const { at } = reader
  const beside = reader.take(...ways)
  const last = beside && reader.take('the?', 'last|final')
  const thing = beside ? cornerStitch(reader) ?? cornerOrSpace(reader) : undefined
  if (thing) return { thing, last }
  reader.at = at
  return undefined
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
  // `after the first side`: no space is named.
  if (thing?.kind === 'space' && reader.word(-1) !== 'side') return named ? { ...thing, where: 'corner' } : thing
  if (thing?.where === 'corner') return thing
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
  reader.take('any|a|one|each|the?', 'of?', 'the?')
  reader.take('next|first|same|second')
  let told = false
  while (reader.take(hands) || told && reader.take('-')) told = true
  return told
}
