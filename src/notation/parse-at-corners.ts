import { ordinals } from './number-words.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { takeCentre } from './parse-centre.ts'
import { parseItems } from './parse-items.ts'
import type { Draft } from './parse-tail.ts'
import { takeStitchName } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import type { Group, Instruction, Work } from './syntax.ts'
import type { Num, Target } from './target.ts'
import { outwards } from './which-corner.ts'

const verbs = 'work|working|make|making|put|putting|place|placing|do|doing'
const middles = 'center|centre|middle'

/** How the corners are told, and what comes of it. */
interface Corners {
  readonly count?: Num
  /** `increasing 2 sts at each corner`: stitches that each of them gains. */
  readonly gain?: number
  /** The words before name the middle of the corner already. */
  readonly inMiddle?: boolean
}

/**
 * The corners first, and what is worked in the middle of each behind:
 *
 *   at each corner work 3 sc in the center sc   increasing 2 sts at each corner by working 3 sc in the middle one of the three
 *   turning the 4 corners with 3 sc in the middle st   except at corners, where you work 3 sc in center st of each 3-sc group
 */
export function parseAtCorners(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const corners = takeLead(reader)
  const work = corners && takeWorked(reader)
  const inMiddle = work && (corners.inMiddle || takeMiddle(reader))
  const gains = work?.node === 'work' ? work.count!.values[0]! - 1 : (work?.items.length ?? 0) - 1
  if (work && inMiddle && (corners.gain ?? takeGainBehind(reader) ?? gains) === gains) {
    const target: Target = { walk: 'each', thing: { kind: 'stitch', where: 'corner' }, ...(corners.count && { count: corners.count }), start, end: reader.end }
    return [{ ...work, target, start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

function takeLead(reader: Reader): Corners | undefined {
  const middle = exceptMiddle(reader)
  if (middle) return middle
  reader.take('but|except|only?')
  const gain = takeGain(reader)
  const named = gain || reader.take('at|in|on|for') || reader.take('as|when', 'you', 'come|get|reach', 'to?') || reader.take('turning|rounding|working|shaping')
  const by = gain ? reader.take('at|in|on') : named
  const told = by ? takeCorners(reader) : undefined
  if (!told) return undefined
  reader.take('only')
  if (takeSeen(reader)) reader.take(',|:|;') && reader.take(`${verbs}?`)
  reader.take(',|:|(')
  reader.take('there|where?', 'you?', ',?')
  reader.take('by|with|and?', `${verbs}?`)
  return { ...told, ...(gain && gain.count !== undefined && { gain: gain.count }) }
}

/** `except for the middle sc of each of the 4 corners, where you work` */
function exceptMiddle(reader: Reader): Corners | undefined {
  const { at } = reader
  const draft: Draft = {}
  if (reader.take('but|except', 'for|in', 'the?') && takeCentre(reader, draft) && draft.walk === 'each' && draft.thing?.where === 'corner' && reader.take(',?', 'where|which|there', 'you?', verbs)) return { inMiddle: true, ...(draft.count && { count: draft.count }) }
  reader.at = at
  return undefined
}

/** `you will find three sc in one place`: the stitches that make the corner. */
function takeSeen(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('you?', 'will|can?', 'find|see|have|meet')) {
    const size = takeNumber(reader)?.values[0] ?? 0
    const stitch = takeStitchName(reader) ?? (reader.take('st|sts|stitch|stitches') || undefined)
    if (stitch !== undefined && size % 2 === 1 && reader.take('worked|made?', 'in|into', 'one|1|the', 'same?', 'place|st|stitch')) return true
  }
  reader.at = at
  return false
}

/** `, which adds 2 sc per corner` */
function takeGainBehind(reader: Reader): number | undefined {
  const { at } = reader
  const count = reader.take(',?', 'which|this|so|thus?', 'adds|adding|increases|increasing') ? takeNumber(reader) : undefined
  if (count && (reader.take('st|sts|stitch|stitches') || takeStitchName(reader) !== undefined) && reader.take('per|at|in|to', 'each|every?', 'corner|corners')) return count.values[0]
  reader.at = at
  return undefined
}

/** `increasing 2 sts`, `inc`, `adding 2 sc` */
function takeGain(reader: Reader): { readonly count?: number } | undefined {
  if (!reader.take('inc|increase|increasing')) return undefined
  const count = takeNumber(reader)
  if (count && !reader.take('st|sts|stitch|stitches')) takeStitchName(reader)
  return count ? { count: count.values[0]! } : {}
}

/** `each corner`, `each of the 4 outer corners`, `the 4 corners`, `corners` */
function takeCorners(reader: Reader): Corners | undefined {
  reader.take('each|every|all?', 'of?', 'the?')
  const count = takeNumber(reader)
  reader.take(`${outwards}?`)
  return reader.take('corner|corners') ? { ...(count && { count }) } : undefined
}

/** `3 sc`, `(sc, sc, sc)` */
function takeWorked(reader: Reader): Work | Group | undefined {
  const { start } = reader
  const open = reader.take('(') ? ')' : reader.take('[') ? ']' : undefined
  if (open) {
    const items = parseItems(reader, (inner) => inner.word() === open)
    return reader.take(open) && items.length > 1 ? { node: 'group', items, target: { walk: 'next', start, end: reader.end }, start, end: reader.end } : undefined
  }
  const count = takeNumber(reader)
  const from = reader.start
  const stitch = count && takeStitchName(reader)
  return stitch ? { node: 'work', count, stitch, name: { start: from, end: reader.end }, start, end: reader.end } : undefined
}

/** `in the center sc`, `into the 2nd of the three corner sc`, `in center st of each 3-sc group`, `in the middle one of these` */
function takeMiddle(reader: Reader): boolean {
  if (!reader.take('in|into', 'the?')) return false
  const nth = reader.peek()?.kind === 'ordinal' ? reader.peek()!.value : ordinals[reader.word()]
  if (nth !== undefined) reader.at += 1
  else if (!reader.take(middles) && !reader.take('corner')) return false
  reader.take('one|st|stitch') || takeStitchName(reader)
  let size: number | undefined
  if (reader.take('of|in', 'the|these|those|each|every|that?', 'of?', 'the?')) {
    size = takeNumber(reader)?.values[0]
    reader.take('-')
    reader.take('corner|corners')
    reader.take('st|sts|stitch|stitches') || takeStitchName(reader)
    reader.take('group|groups|corner|corners|cluster|clusters|set|sets')
  }
  reader.take(')')
  return (nth === undefined ? size === undefined || size % 2 === 1 : size === 2 * nth - 1) && (placeEnds(reader) || numberAhead(reader) === undefined && /^(?:around|which|so)$/.test(reader.word()))
}
