import { takeNumber } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import { takeTarget } from './parse-target.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/**
 * `*dc in next 10 sts, 2 dc in next st; rep from * 5 more times, last 2 dc in top of turning ch`: behind a repeat that is counted, the last
 * group that it has made already, and where that lies.
 */
export function parseLastOfRepeat(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const { at, start } = reader
  const repeat = before.at(-1)
  const last = repeat?.node === 'repeat' && (repeat.times.kind === 'more' || repeat.times.kind === 'in-all') ? repeat.items.at(-1) : undefined
  const count = last?.node === 'work' && reader.take('and?', 'the?', 'last|final') ? takeNumber(reader) : undefined
  const same = count !== undefined && last?.node === 'work' && count.values.join() === last.count?.values.join() && takeStitchName(reader) === last.stitch
  reader.take('go|goes|going|falling|worked|being|are?', 'worked?')
  const target = same && /^(?:in|into)$/.test(reader.word()) ? takeTarget(reader) : undefined
  if (target && target.thing?.kind === 'turning-chain') return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  return undefined
}
