import { takeNumber } from './numbers.ts'
import { unworked } from './parse-adjective.ts'
import { takeTarget } from './parse-target.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Num, Target } from './target.ts'

/**
 * Stitches along places that an older row left:
 *
 *   8 sc across skipped sc of Row 6   sc across 6 skipped sc   6 sc along the 6 unworked sts   6 sc across the step   3 dc over the 3 sl sts of Row 7
 *
 * Without `each` so many are all of them together.
 */
export function takeAcrossLeft(reader: Reader, worked: Num | undefined): Target | undefined {
  const { at, start } = reader
  // `sc 6 along its Row 10`
  const ofRow = worked ? takeRowNamed(reader, 'along|across|over', 'the?') : undefined
  if (ofRow !== undefined && placeEnds(reader)) return { walk: 'next', count: worked!, eachOf: true, thing: { kind: 'stitch' }, ofRow, start, end: reader.end }
  reader.at = at
  // `5 sc along ch`
  if (worked && reader.take('along', 'the|this?', 'ch|chain') && placeEnds(reader)) return { walk: 'next', count: worked, eachOf: true, thing: { kind: 'chain' }, start, end: reader.end }
  reader.at = at
  if (reader.take('along|across|over', 'the?')) {
    const { at: from } = reader
    if (worked && reader.take('next|first|second?', 'step') && placeEnds(reader)) return { walk: 'next', count: worked, eachOf: true, thing: { kind: 'stitch' }, start: worked.start, end: reader.end }
    reader.at = from
    takeNumber(reader)
    const left = reader.take(`skipped|missed|${unworked}`)
    const slips = !left && reader.vocabulary.stitchAt([reader.word(), reader.word(1)])?.stitch === 'sl st'
    reader.at = from
    const target = left || slips ? takeTarget(reader, false) : undefined
    const count = target?.count ?? worked
    if (target && count && (!worked || String(count.values) === String(worked.values))) {
      reader.take(',', 'one|1', 'in|into', 'each')
      return { ...target, walk: slips ? 'next' : target.walk, count, eachOf: true }
    }
  }
  reader.at = at
  return undefined
}
