import { numberAhead, takeNumber, takeTimesWord } from './numbers.ts'
import { takeKeepBack, takeToEnd } from './parse-reach.ts'
import type { Reader } from './reader.ts'
import type { Times } from './syntax.ts'
import type { Num } from './target.ts'
import { takeUpTo } from './up-to.ts'

/**
 * After a closing bracket or a second star: how often what stands before it is worked.
 *
 *   6 times   x 6   ×6   *6   twice   5 more times   rep 6 times   across   to last 3 sts
 */
export function takeTimes(reader: Reader, meaning: 'in-all' | 'either' = 'in-all'): Times | undefined {
  const at = reader.at
  const repeated = reader.take('rep|repeat|repeated|work|worked|do', 'this|that|these|it?')
  const total = reader.take('a', 'total', 'of')
  const times = countTimes(reader, meaning) ?? reach(reader)
  if (times) {
    const told = times.kind === 'to-end' && !times.until ? countBehind(reader) : undefined
    if (told) return { kind: 'in-all', count: told }
    const all = inAll(reader) || total
    return all && times.kind === 'either' ? { ...times, kind: 'in-all' } : times
  }
  if (repeated && (reader.done || /^[,.;)\]([{]$/.test(reader.word()))) return { kind: 'to-end' }
  reader.at = at
  return undefined
}

/** `4 times in all`, `twice over`; not `4 times over the 8 row-ends`. */
const inAll = (reader: Reader): boolean => reader.take('in', 'all|total') || reader.take('total|altogether') || !/^(?:the|these|next|all)$/.test(reader.word(1)) && numberAhead(reader, 1) === undefined && reader.take('over')

/** `all the way round, so 20 times in all`, `around (20 times)`: the number of the repeats is said beside the way. */
function countBehind(reader: Reader): Num | undefined {
  const { at } = reader
  const bracket = reader.take('(')
  if (!bracket) reader.take(',|;|-|–|—')
  reader.take('so|making|that|or|i', 'is|.?', 'e?', '.?')
  reader.take('a', 'total', 'of')
  const count = takeNumber(reader)
  if (count && reader.take('times|repeats|reps')) {
    inAll(reader)
    if (bracket ? reader.take(')') : reader.done || /^[,;.)\]]$/.test(reader.word())) return count
  }
  reader.at = at
  return undefined
}

function countTimes(reader: Reader, meaning: 'in-all' | 'either'): Times | undefined {
  const at = reader.at
  const word = takeTimesWord(reader)
  if (word) return reader.take('more') ? { kind: 'more', count: word } : { kind: meaning, count: word }
  const glued = reader.peek(-1)?.end === reader.peek()?.start && /^[)\]}]$/.test(reader.word(-1)) && reader.peek()?.kind === 'number'
  const sign = reader.take('x|×|✕|*') || glued
  const count = sign || numberAhead(reader) !== undefined || /^[–-]$/.test(reader.word()) ? takeNumber(reader) : undefined
  if (count) {
    const more = reader.take('more|further|additional')
    const named = reader.take('times|time|x|×|reps|repeats')
    if (more || named && reader.take('more')) return { kind: 'more', count }
    if (sign || named) return { kind: meaning, count }
  }
  reader.at = at
  return undefined
}

/** `until every loop has a sc`, `until all sts are worked`, `until you run out of stitches` */
function untilAll(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('until|till', 'each|every|all', 'of?', 'the?') || reader.take('until|till', 'you?', 'run|reach|have|are|come')) {
    while (!reader.done && !/^[,;.()]$/.test(reader.word()) && numberAhead(reader) === undefined) reader.at += 1
    if (/^(worked|used|sc|dc|hdc|tr|st|sts|stitches|spaces|loops|end|round|row|joined|filled|start|beginning)$/.test(reader.word(-1)) && numberAhead(reader) === undefined) return true
  }
  reader.at = at
  return false
}

function reach(reader: Reader): Times | undefined {
  const keepBack = takeKeepBack(reader)
  if (keepBack) return { kind: 'to-end', keepBack }
  if (reader.take('along?', 'in|into?', 'each|all', 'st|sts', 'around|across?') && takeToEnd(reader)) return { kind: 'to-end' }
  const { at } = reader
  const until = takeUpTo(reader)
  if (until?.kind === 'space' && until.where === undefined) return { kind: 'to-end', until }
  reader.at = at
  if (untilAll(reader)) return { kind: 'to-end' }
  if (!takeToEnd(reader)) return undefined
  // `across side`, `to corner`: as far as this edge goes.
  const edge = reader.all.slice(at, reader.at).some(({ text }) => /^(side|edge|corner|ends)$/i.test(text))
  return { kind: 'to-end', ...(edge && { edge }) }
}
