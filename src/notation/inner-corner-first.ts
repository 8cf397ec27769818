import { numberAhead, takeNumber } from './numbers.ts'
import { legsTold } from './parse-inner-corner.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'
import type { Num } from './target.ts'
import { takeInwardCorner } from './which-corner.ts'

const verbs = 'work|working|make|making'
const sts = 'st|sts|stitch|stitches'

/** Which of the inner corners. */
interface Inner {
  readonly each: boolean
  readonly count?: Num
  /** `dec 1 at inner corner (sc2tog …)` */
  readonly bracket?: boolean
}

/**
 * The inner corner first, and the two that are worked together there behind:
 *
 *   at the inner corner, sc2tog over last sc of row-ends and first sc of step   dec 1 at inner corner by working last sc before it and first sc after it tog
 *   joining the two sc on either side of the inner corner with a sc2tog   when you reach the inner corner, work the next 2 sc together
 */
export function parseInnerCornerFirst(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const inner = takeLead(reader)
  const from = reader.start
  const stitch = inner && takeDecrease(reader)
  const name = { start: from, end: reader.end }
  if (stitch !== undefined && inner) {
    legsTold(reader)
    if (inner.bracket) reader.take(')')
    const target = { walk: inner.each ? 'each' as const : 'next' as const, ...(inner.count && { count: inner.count }), thing: { kind: 'stitch' as const, where: 'inner' as const }, start, end: reader.end }
    return [{ node: 'work', stitch, target, name, start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

function takeLead(reader: Reader): Inner | undefined {
  const dec = reader.take('dec|decrease|decreasing')
  if (dec && numberAhead(reader) === 1) reader.at += 1
  if (dec) reader.take(sts)
  if (reader.take('at|in|on|across|for', 'the?') || !dec && (reader.take('when|as', 'you', 'reach|come|get', 'to?', 'the?') || reader.take('to', 'draw|pull|square|sharpen', 'in?', 'the?'))) {
    const inner = takeInner(reader)
    const bracket = dec && reader.take('(')
    return inner && (bracket || (dec ? reader.take('by', `${verbs}?`) : reader.take(',|:?', `${verbs}?`))) ? { ...inner, bracket } : undefined
  }
  if (dec) return undefined
  // `with the 2 sts at the inner corner worked as sc2tog`
  const pair = reader.take('with?', 'the') && numberAhead(reader) === 2
  if (pair || reader.take('joining|join|drawing|draw', 'in|together?', 'the?')) {
    if (numberAhead(reader) === 2) {
      reader.at += 1
      if (!reader.take('sides', 'of', 'the?') && (reader.take(sts) || takeStitchName(reader) !== undefined)) reader.take('at|on|in', 'either|each|both?', 'side|sides?', 'of?', 'the?')
    }
    const inner = takeInner(reader)
    return inner && (pair ? reader.take('worked', 'as|in') : reader.take('with|by', `${verbs}?`)) ? inner : undefined
  }
  return undefined
}

/** `each of the 2 inner corners`, `inside corner` */
function takeInner(reader: Reader): Inner | undefined {
  const each = reader.take('each|every|all', 'of?', 'the?')
  const count = takeNumber(reader)
  return takeInwardCorner(reader) ? { each: each || count !== undefined || reader.word(-1) === 'corners', ...(count && { count }) } : undefined
}

/** `1 sc2tog`, `sc the last st of the row-ends and the first st of the step together`, `the next 2 sc together` */
function takeDecrease(reader: Reader): string | undefined {
  const { at } = reader
  if (!reader.take('a|an|one') && numberAhead(reader) === 1) reader.at += 1
  const stitch = takeStitchName(reader)
  if (stitch?.endsWith('2tog')) return stitch
  if (stitch === undefined) reader.at = at
  const close = legsTold(reader, 'together')
  const again = close && reader.take('(') ? takeStitchName(reader) : undefined
  if (again && reader.take(')')) return again.endsWith('2tog') ? again : undefined
  if (close) return stitch === undefined ? 'dec' : `${stitch}2tog`
  return undefined
}
