import { takeBetween } from './between-parts.ts'
import { takePieceName } from './parse-piece-name.ts'
import type { Draft } from './parse-tail.ts'
import { takeWhereabouts } from './parse-where.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'

/**
 * `12 sts left unworked at the front neck`, `6 sts left for the thumb`, `the st that was skipped at center back`, `4 dc of Back left unworked`, `4 sts not worked
 * before`, `the stitch left between the two halves`: how it came to lie there, and where.
 */
export function takeLeftBehind(reader: Reader, draft: Draft): void {
  if (draft.thing?.kind !== 'stitch') return
  const { at } = reader
  const clause = reader.take('that|which') ? takeSubject(reader) : false
  const skipped = reader.take('skipped|missed')
  const free = reader.take('not', 'yet?', 'worked') || reader.take('remaining|remain', 'unworked?')
  if (!skipped && !free && !reader.take('left')) {
    reader.at = at
    return
  }
  // `in each of the 10 sc left`: those that are still to come.
  if (!clause && draft.count && /^left$/.test(reader.word(-1)) && placeEnds(reader)) return
  const told = free || !skipped && reader.take('unworked|free|unused|open|empty')
  const waiting = !skipped && reader.take('for', 'the|a?', 'left|right|first|second?', 'sleeve|sleeves|thumb|armhole|underarm|opening')
  const where = waiting || takeWhen(reader) || takeBetween(reader) || takeWhereabouts(reader) !== undefined
  if (!clause && !told && !where || !placeEnds(reader)) reader.at = at
  else if ((skipped || waiting) && /^(?:next|first)$/.test(draft.walk ?? '')) draft.walk = 'skipped'
}

/** `that were`, `which you`, `that Row 1`, `that the flap`: who has left them. */
const takeSubject = (reader: Reader): boolean => reader.take('was|were|is|are|you') || takeMaker(reader)

const takeMaker = (reader: Reader): boolean => takeRowNamed(reader, 'the?') !== undefined || takePieceName(reader) !== undefined

/** `before`, `so far`, `when working the Flap`, `by the Flap`: when that was. */
function takeWhen(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('before|yet|earlier|previously') || reader.take('so', 'far')) return true
  const maker = reader.take('when|while', 'you?', 'working|worked|making|made|starting|began|beginning') || reader.take('by|for')
  if (maker && takeMaker(reader)) return true
  reader.at = at
  return false
}
