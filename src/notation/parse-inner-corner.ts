import { takeNumber } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Target } from './target.ts'

const inwards = 'inner|inside|inward|internal|concave'
const stitch = 'st|sts|stitch|stitches|one'

/**
 * Where an edge turns inwards, two stitches meet, the last of one side and the first of the next:
 *
 *   over the 2 sc that meet at each of the 4 inner corners   at each inner corner   over the 2 sts on either side of the inner corner
 *   over the last sc before and the first sc after each inner corner
 */
export function takeInnerCorner(reader: Reader): Target | undefined {
  const { at, start } = reader
  if (lastAndFirst(reader) || meeting(reader)) {
    const each = reader.take('each|every|all|any', 'of?', 'the?')
    const count = takeNumber(reader)
    if (reader.take(inwards, 'corner|corners')) {
      const one = !each && !count && reader.word(-1) === 'corner'
      return { walk: one ? 'next' : 'each', ...(count && { count }), thing: { kind: 'stitch', where: 'inner' }, start, end: reader.end }
    }
  }
  reader.at = at
  return undefined
}

/** `over the last st before and the first st after` */
function lastAndFirst(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('over|across|using', 'the?', 'last') && takesStitch(reader) && reader.take('before', 'and', 'the?', 'first') && takesStitch(reader) && reader.take('after', 'the?')) return true
  reader.at = at
  return false
}

/** `over the 2 sc that meet at`, `over 2 sts on either side of`, `at` */
function meeting(reader: Reader): boolean {
  const { at } = reader
  const pair = reader.take('over|across|using|through|in|with?', 'the?') && takeNumber(reader)?.values.join() === '2' && takesStitch(reader)
  if (!pair) reader.at = at
  reader.take('that|which|where|meeting?', 'they?', 'meet|are|lie|come?', 'together?')
  const met = reader.take('at|in|on|over|across|around|into', 'the?')
  reader.take('either|each|both', 'side|sides', 'of', 'the?')
  return met
}

const takesStitch = (reader: Reader): boolean => takeStitchName(reader) !== undefined || reader.take(stitch)
