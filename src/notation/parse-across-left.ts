import { takeNumber } from './numbers.ts'
import { unworked } from './parse-adjective.ts'
import { takeTarget } from './parse-target.ts'
import type { Reader } from './reader.ts'
import type { Num, Target } from './target.ts'

/**
 * Stitches along places that an older row left:
 *
 *   8 sc across skipped sc of Row 6   sc across 6 skipped sc   6 sc along the 6 unworked sts
 *
 * Without `each` so many are all of them together.
 */
export function takeAcrossLeft(reader: Reader, worked: Num | undefined): Target | undefined {
  const { at } = reader
  if (reader.take('along|across|over', 'the?')) {
    const { at: from } = reader
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
