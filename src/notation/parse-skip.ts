import { numberAhead, takeNumber } from './numbers.ts'
import { takeAtFirstEdge } from './from-edge.ts'
import { unworked } from './parse-adjective.ts'
import { takeBehindPiece } from './parse-behind.ts'
import { beyond, takeBeside } from './parse-beside.ts'
import { takeCountsAs } from './parse-counts-as.ts'
import { rowEnds } from './parse-row-ends.ts'
import { takeOfPiece, takePieceName } from './parse-piece-name.ts'
import { takeThing } from './parse-thing.ts'
import { takeWhereabouts } from './parse-where.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import { takeUnderChain } from './under-chain.ts'
import type { Aside, Instruction, Skip } from './syntax.ts'
import type { Num, Thing } from './target.ts'

const left = `${unworked}|unmade`

/** `20 sts of Row 46 left unworked`, `20 sts left unworked at Row 46`, `the 20 sts that were left` */
function leftBehind(reader: Reader): boolean {
  reader.take('that|which', 'were|are|you')
  return reader.take('left', 'unworked|over|free?') || reader.take('unworked')
}

const skipWords = new Set(['skip', 'sk', 'miss', 'skipping', 'missing', 'skp', 'omit'])

/** `Sk 2 sts`, `miss next dc`, `skip first st`, `skip next dc and ch-1`, `sk (sc, ch-2 sp, sc)`. */
export function parseSkip(reader: Reader): readonly Instruction[] | undefined {
  const start = reader.start
  const held = countedIn(reader, start) ?? beforeJoin(reader, start) ?? onHold(reader, start)
  if (held) return [held]
  if (!reader.takeOne(skipWords) && !withoutFirst(reader) && !reader.take('leave|leaving', 'out')) return undefined
  const first = reader.at
  const list = skipList(reader)
  if (list) return [finishSkip(reader, { node: 'skip', count: one(reader), from: 'next', list, start, end: reader.end })]
  const ends = rowEnds(reader, start, false)
  if (ends?.count && ends.thing) {
    takeWhereabouts(reader)
    return [{ node: 'skip', count: ends.count, thing: ends.thing, from: 'next', start, end: reader.end }]
  }
  reader.at = first
  const passed = passedBy(reader, start)
  if (passed) return [passed]
  // `skip the underside of first 5 foundation ch`: the chains are named behind it.
  reader.take('the?', 'underside|undersides|base|bases|bottom|bottoms', 'of') || reader.take('the?', 'underside|bottom|base|free|unused', 'loop|loops|lp|lps', 'of')
  let from: Skip['from'] = 'next'
  let count: Num | undefined
  for (;;) {
    if (reader.take('the') || reader.take('over') || reader.take('of') || reader.take('next|foll|following') || numberAhead(reader, 1) !== undefined && reader.take('all|another')) continue
    if (reader.take('first|1st|same') || numberAhead(reader, 3) !== undefined && reader.take('right', '-?', 'hand')) from = 'first'
    else if (reader.take('last')) from = 'last'
    else if (reader.take('centre|center|middle|held') && (count || numberAhead(reader) !== undefined)) continue
    else if (!count && numberAhead(reader) !== undefined && reader.word(1) !== '-') count = takeNumber(reader)
    else break
  }
  const before = reader.take(left) || reader.take('rem|remaining|centre|center|middle|central') && reader.take(left)
  const thing = takeThing(reader)
  reader.take('at|in', 'the?', 'centre|center|middle', 'front|back|neck|top?')
  const after = thing && takeBeside(reader, beyond)
  if (thing?.kind === 'stitch') takeAtFirstEdge(reader)
  // The stitches that are skipped were left by an older row.
  const named = fromJoin(reader) ?? takeRowNamed(reader, 'left?', 'of|on|from|in|at')
  if (named === undefined) takeOfLastRow(reader)
  takeOfPiece(reader)
  const behind = leftBehind(reader)
  const ofRow = named ?? (behind ? takeRowNamed(reader, 'of|on|from|in|at|by') : undefined)
  const unworked = before || behind
  if (takeUnderChain(reader) || reader.take('nearest|closest|next', 'to?', 'the?', 'hook')) from = 'first'
  reader.take('behind', 'it|post?', 'st?')
  const more = also(reader, thing)
  const whole: Skip = { node: 'skip', count: count ?? one(reader), ...(thing && { thing }), ...(after && { after }), ...(ofRow !== undefined && { ofRow }), ...(unworked && { unworked }), from, start, end: reader.end,
    ...(more && { list: [{ count: count ?? one(reader), thing: thing! }, ...more] }) }
  return [finishSkip(reader, whole)]
}

/** `do not work into the first dc`, `not working in the first dc`, `leave the first dc unworked`: it is skipped. */
function withoutFirst(reader: Reader): boolean {
  const { at } = reader
  if ((reader.take('do', 'not', 'work', 'in|into', 'the?') || reader.take('not|without', 'working', 'in|into?', 'the?')) && reader.word() === 'first') return true
  reader.at = at
  return false
}

/** `miss 7 sts from the join of Round 15`: a round is counted from there anyway. Gives the round. */
function fromJoin(reader: Reader): number | undefined {
  const { at } = reader
  if (reader.take('counting|counted?', 'from|after|past|beyond', 'the?', 'join|joining|seam|beginning|beg|start')) {
    const ofRow = takeRowNamed(reader, 'of|in')
    if (ofRow === undefined) reader.take('of', 'the?', 'round|rnd')
    if (reader.done || /^[,;.:]$/.test(reader.word())) return ofRow
  }
  reader.at = at
  return undefined
}

/** `missing each dc`, `skip all sts of sleeve`, `skip the sleeve`: what is worked next is named, and lies behind them. */
function passedBy(reader: Reader, start: number): Aside | undefined {
  const { at } = reader
  const all = reader.take('each|every|all', 'of?', 'the?')
  if (all) takeThing(reader)
  if (reader.take('of|on?', 'the?', 'first|second|left|right?', 'sleeve|sleeves|thumb|armhole', 'sts|stitches?') || all && (reader.done || /^[,;.)]$/.test(reader.word()))) return { node: 'aside', start, end: reader.end }
  reader.at = at
  return undefined
}

/** `of the last Body row`, `on the last row of Body`: the row below. */
function takeOfLastRow(reader: Reader): void {
  const { at } = reader
  if (reader.take('of|on|from|in', 'the?', 'last|final|previous')) {
    takePieceName(reader)
    if (reader.take('row|rnd|round')) return
  }
  reader.at = at
}

/** Stitches that a row leaves or puts aside, as far as they are named. */
interface Waiting {
  readonly count: Num
  readonly thing: Thing
  readonly ofRow?: number
  /** `the next 18 unworked dc`: told in front of them. */
  readonly before: boolean
  /** `18 dc unworked`: behind them. */
  readonly free: boolean
  /** `in from the right edge`: they are the first of the edge. */
  readonly fromEdge: boolean
}

/** `18 dc of Row 3`, `16 unworked sts` */
function takeWaiting(reader: Reader): Waiting | undefined {
  const count = takeNumber(reader)
  const before = reader.take(left)
  const thing = takeThing(reader)
  const free = reader.take(`${left}|free|alone`)
  const inFrom = takeAtFirstEdge(reader)
  const ofRow = takeRowNamed(reader, 'of|on|from|in|at')
  const fromEdge = takeAtFirstEdge(reader) || inFrom
  takeBehindPiece(reader)
  return count && thing && { count, thing, before, free, fromEdge, ...(ofRow !== undefined && { ofRow }) }
}

/** `leave 18 dc of Row 3 unworked after the First Shoulder, rejoin yarn in next dc`: what lies before the place where the row begins. */
function beforeJoin(reader: Reader, start: number): Skip | undefined {
  const { at } = reader
  const waiting = reader.take('leave|leaving', 'the?', 'next|foll|following|centre|center|middle|first?') ? takeWaiting(reader) : undefined
  if (waiting && (reader.take(`${left}|alone|free`) || waiting.before || waiting.free) && thenJoins(reader)) return passedOver(waiting, true, start, reader)
  reader.at = at
  return undefined
}

/** `count 3 sts in from the right edge, join yarn in next st`: those lie before it too. */
function countedIn(reader: Reader, start: number): Skip | Aside | undefined {
  const { at } = reader
  const waiting = reader.take('count|counting', 'off|in?') || reader.take('starting|beginning|start|begin') && numberAhead(reader) !== undefined ? takeWaiting(reader) : undefined
  const from = waiting?.fromEdge || waiting && reader.take('in|along|over', 'from', 'the?', 'right?', '-?', 'hand?', 'edge|end|side|corner|beginning|start')
  if (from) takeOfLastRow(reader)
  const { at: here } = reader
  const nth = from && thenJoins(reader) ? whereJoined(reader) : undefined
  const next = nth === 'next'
  const told = waiting !== undefined && typeof nth === 'number' && waiting.count.values.join() === String(nth - 1)
  reader.at = next || told ? here : at
  if (told) return { node: 'aside', start, end: reader.end }
  return next && waiting ? passedOver(waiting, true, start, reader) : undefined
}

/** Whether the yarn is joined in the next one, and not in that to which was counted; `in the 8th st` is told by its own number. */
function whereJoined(reader: Reader): 'next' | number | undefined {
  while (!reader.done && !/^(?:re)?(?:join|attach)(?:ing)?$/.test(reader.word())) reader.at += 1
  const ahead = [1, 2, 3, 4, 5, 6]
  if (ahead.some((by) => /^(?:next|following|foll)$/.test(reader.word(by)))) return 'next'
  return ahead.map((by) => reader.peek(by)).find((token) => token?.kind === 'ordinal')?.value
}

function passedOver({ count, thing, ofRow }: Waiting, unworked: boolean, start: number, reader: Reader): Skip {
  return { node: 'skip', count, thing, ...(ofRow !== undefined && { ofRow }), ...(unworked && { unworked }), from: 'next', start, end: reader.end }
}

/** Whether the yarn is joined next, behind words that tell where: `after the First Shoulder, rejoin yarn`. Takes none of them. */
function thenJoins(reader: Reader): boolean {
  const { at } = reader
  const isJoin = (): boolean => /^(?:re)?(?:join|attach)(?:ing)?$/.test(reader.word())
  while (!reader.done && !isJoin() && numberAhead(reader) === undefined && reader.word() !== 'turn' && reader.at - at < 9) reader.at += 1
  const joins = isJoin()
  reader.at = at
  return joins
}

/** `Place next 16 sts on hold for sleeve`, `leave next 16 sts unworked for thumb`: they are skipped, and wait. */
function onHold(reader: Reader, start: number): Skip | undefined {
  const { at } = reader
  const waiting = reader.take('place|put|slip|move|leave|leaving', 'the?', 'next|foll|following|centre|center|middle') ? takeWaiting(reader) : undefined
  if (waiting?.before && (waiting.free || reader.take('free|unworked|alone|as', 'they?', 'are?') || true) && goesOn(reader)) return passedOver(waiting, true, start, reader)
  if (waiting && (reader.take('on|onto', 'a|to?', 'hold|holder|st|stitch?', 'marker|holder?') || (waiting.free || reader.take('unworked|free')) && goesOn(reader))) return passedOver(waiting, waiting.ofRow !== undefined, start, reader)
  reader.at = at
  return undefined
}

/** Whether the row works anything yet: what it leaves at its end is not passed over. */
function goesOn(reader: Reader): boolean {
  return reader.all.slice(reader.at, reader.limit).some(({ kind, text }) => kind === 'number' || /^(?:each|first|next|last|ch|in|into|across)$/i.test(text))
}

function finishSkip(reader: Reader, whole: Skip): Skip {
  const counts = takeCountsAs(reader)
  if (!counts && !reader.take(',?', 'leave', 'st?', 'behind', 'unworked')) reader.take(',?', 'and?', 'leave|keep|put|place', 'them|these|those', 'unworked|waiting|on?', 'hold?', 'for?', 'later|now?')
  return { ...whole, ...(counts && { counts }), end: reader.end }
}

function one(reader: Reader): Num {
  return { values: [1], start: reader.end, end: reader.end }
}

/** `skip next dc and ch-1`, `sk next ch-2 sp, next 26 dc and next ch-2 sp`: further things, named with no instruction of their own. */
function also(reader: Reader, first: Thing | undefined): Skip['list'] {
  const at = reader.at
  if (!first || !reader.take('and', 'the?', 'next|last|first?') && !reader.take(',', 'and?', 'next') && !beforeSpace(reader, first)) return undefined
  const count = numberAhead(reader) !== undefined && reader.word(1) !== '-' ? takeNumber(reader) : undefined
  const thing = takeThing(reader)
  if (!thing || thing.kind === 'join' || numberAhead(reader) !== undefined || /^(in|into|across|around)$/.test(reader.word())) {
    reader.at = at
    return undefined
  }
  return [{ count: count ?? one(reader), thing }, ...(also(reader, thing) ?? [])]
}

/** `skip ch-1 sp, 22 dc and ch-1 sp`: the stitches between two spaces, with an `and` before the second. */
function beforeSpace(reader: Reader, first: Thing): boolean {
  const { at } = reader
  const between = first.kind === 'space' && reader.take(',') && takeNumber(reader) !== undefined && takeThing(reader)?.kind === 'stitch' && reader.take('and', 'the?', 'next?') && takeThing(reader)?.kind === 'space'
  reader.at = between ? at + 1 : at
  return between
}

/** `(sc, ch-2 sp, sc)` after `sk`. */
function skipList(reader: Reader): Skip['list'] {
  const at = reader.at
  if (!reader.take('next?', '(')) return undefined
  const list: { count: Num; thing: Thing }[] = []
  while (!reader.take(')')) {
    const count = numberAhead(reader) !== undefined && reader.word(1) !== '-' ? takeNumber(reader) : undefined
    const thing = takeThing(reader)
    if (!thing) {
      reader.at = at
      return undefined
    }
    list.push({ count: count ?? one(reader), thing })
    reader.take(',|and')
  }
  return list
}
