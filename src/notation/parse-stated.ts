import { takeNumber } from './numbers.ts'
import { isQuiet } from './parse-remark.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'
import type { Stated } from './written-count.ts'

/**
 * A count in the middle of a row:
 *
 *   — 20 sc made so far   (20 sts so far)   you should now have 20 sc   (25 sts along this side)   (20 sts)   down the side (20 sc), …
 *   (20 sc, this is the opening)
 */
export function parseStated(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  if (!before.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat')) return undefined
  const { at, start } = reader
  const stated = takeStated(reader)
  if (stated) return [{ node: 'aside', stated, start, end: reader.end }]
  reader.at = at
  return undefined
}

function takeStated(reader: Reader): Stated | undefined {
  // `… down the left edge (80 dc), ch 1`: a bracket that follows its stitches without a comma.
  const follows = reader.at > 0 && !/^[,;.:*]$/.test(reader.word(-1))
  const close = reader.take('(') ? ')' : reader.take('[') ? ']' : undefined
  const now = reader.take('you', 'should|will|must?', 'now?', 'have', 'now?') || reader.take('for', 'a', 'total', 'of')
  const count = takeNumber(reader)
  if (!count) return undefined
  reader.take('new|added|extra')
  const plain = reader.take('st|sts|stitch|stitches')
  const kind = plain ? undefined : takeStitchName(reader)
  const made = reader.take('made|worked|done|completed')
  const soFar = reader.take('so', 'far') || reader.take('up', 'to', 'here') || now && reader.take('in', 'all')
  const ofSide = !soFar && reader.take('along|on|for|across|down|up', 'this|that|the|each|every', 'first|second|third|last|other|long|short|left|right?', 'side|edge', 'made|worked?')
  // `down the short side (6);`: a number alone is a size where there are several.
  const alone = close !== undefined && follows && kind === undefined && !plain && reader.vocabulary.sizes === 1 && count.values.length === 1 && reader.word() === close
  const told = close !== undefined && kind !== undefined && saysWhat(reader, close)
  if (close ? !reader.take(close) : !reader.done && !/^[,;.:—–]$/.test(reader.word())) return undefined
  const scope = soFar || now ? 'so-far' : close && ofSide ? 'side' : close && (plain || made || told || alone && /^[,;.]$/.test(reader.word()) || follows && kind !== undefined && (reader.done || /^[,;.]$/.test(reader.word()))) ? 'either' : undefined
  return scope && { count, ...(kind !== undefined && { kind }), scope }
}

/** `, this is the opening`, `, beginning with the first`: what the stitches are that were counted, or where they begin. */
function saysWhat(reader: Reader, close: string): boolean {
  const { at } = reader
  const says = reader.take(',|:|;|-|–|—?', 'this|that|these|those|they|which|it', 'is|are|was|were|makes|make|forms|form|will|becomes|become|goes|go') || reader.take(',|;?', 'beginning|starting', 'with|in|at|from')
  const { at: from } = reader
  while (says && !reader.done && reader.word() !== close) reader.at += 1
  if (says && isQuiet(reader, from, reader.at)) return true
  reader.at = at
  return false
}
