import { takeNumber } from './numbers.ts'
import { unworked } from './parse-adjective.ts'
import { takeTarget } from './parse-target.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import type { Num, Target } from './target.ts'

/**
 * Stitches along places that an older row left:
 *
 *   8 sc across skipped sc of Row 6   sc across 6 skipped sc   6 sc along the 6 unworked sts   6 sc across the step
 *
 * Without `each` so many are all of them together.
 */
export function takeAcrossLeft(reader: Reader, worked: Num | undefined): Target | undefined {
  const { at } = reader
  if (reader.take('along|across|over', 'the?')) {
    const { at: from } = reader
    if (worked && reader.take('next|first|second?', 'step') && placeEnds(reader)) return { walk: 'next', count: worked, eachOf: true, thing: { kind: 'stitch' }, start: worked.start, end: reader.end }
    reader.at = from
    takeNumber(reader)
    const left = reader.take(`skipped|missed|${unworked}`)
    reader.at = from
    const target = left ? takeTarget(reader, false) : undefined
    const count = target?.count ?? worked
    if (target && count && (!worked || String(count.values) === String(worked.values))) return { ...target, count, eachOf: true }
  }
  reader.at = at
  return undefined
}
