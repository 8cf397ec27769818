import { alongRow } from './along-row.ts'
import { beforeMarker, behindKept } from './before-marker.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { ofEachSpace } from './of-each-space.ts'
import { takePieceName } from './parse-piece-name.ts'
import { takeLeftUnderChain, isOpening, takeHeldTail, takeHeldWord } from './parse-held.ts'
import { takeCentre, takeOneOfPoint, takePoint } from './parse-centre.ts'
import { otherSideOfBridge, otherSideOfChain } from './parse-other-side.ts'
import { partAhead, takePartBefore, withPart } from './parse-part.ts'
import { takeBelow, takeRowOf, takeRowPrefix, takeTail, type Draft } from './parse-tail.ts'
import { takeState, takeThingBehindWord } from './parse-adjective.ts'
import { takeBothLoops, takeLoop } from './parse-loop.ts'
import { ordinal } from './parse-ordinal.ts'
import { edgeOfCopy } from './parse-copy-edge.ts'
import { alongEdge } from './parse-edge.ts'
import { perStitch } from './per-stitch.ts'
import { bySide, takeRateOnTheWay, takeRows } from './parse-rate.ts'
import { takeTopOfChain } from './parse-top-of-chain.ts'
import { takeRing } from './parse-ring.ts'
import { takeKeepBack, takeToEnd, takeToMarker } from './parse-reach.ts'
import { chainWords, gluedSpace, takeBackOrFront, takePlaceNoun, takeThing } from './parse-thing.ts'
import { inLastMade, inTopOfSame, withTheFirst } from './same-place.ts'
import { takeWayAlong } from './parse-way.ts'
import { takeWhereabouts } from './parse-where.ts'
import type { Reader } from './reader.ts'
import { takeSeamPlace } from './seam-place.ts'
import { takeUnderChain } from './under-chain.ts'
import { corner, type Num, type Target } from './target.ts'

const intoWords = new Set(['in', 'into', 'on', 'around', 'round', 'under', 'through', 'over', 'along', 'at', 'to', 'from', 'evenly', 'across'])

/** Takes `in next 3 sts`, `into each dc around`, `next st`, `across`: where an instruction goes. Undefined when none is said. */
export function takeTarget(reader: Reader, needsWord = true): Target | undefined {
  const part = partAhead(reader)
  const target = targetHere(reader, needsWord)
  return target && part ? withPart(reader, target, part) : target
}

function targetHere(reader: Reader, needsWord: boolean): Target | undefined {
  const { start, at } = reader
  const draft: Draft = {}
  if (reader.take('around|round|across|along|of')) {
    const ofPiece = takePieceName(reader)
    if (ofPiece !== undefined) return { walk: 'each', ofPiece, toEnd: true, start, end: reader.end }
    reader.at = at
  }
  const bridge = otherSideOfBridge(reader, start)
  if (bridge) return bridge
  if (takeToMarker(reader)) return { walk: 'each', toMarker: true, start, end: reader.end }
  const back = takeKeepBack(reader)
  if (back) return { walk: 'each', keepBack: back, start, end: reader.end }
  const row = alongRow(reader, start) ?? perStitch(reader, start)
  if (row) return row
  const along = edgeOfCopy(reader, start) ?? atRate(reader, start) ?? alongEdge(reader, start)
  if (along) {
    const rate = along.rate ? undefined : takeRateOnTheWay(reader)
    return rate ? { ...(bySide(along) ?? along), rate, end: reader.end } : along
  }
  if (takeToEnd(reader)) return { walk: 'each', toEnd: true, ...(reader.word(-1) === 'corner' && { until: corner }), start, end: reader.end }
  const into = reader.takeOne(intoWords)
  if (!into && needsWord && !/^(next|each|last|first|same|every|ea|foll|following)$/.test(reader.word())) return undefined
  const both = takeBothLoops(reader)
  if (!both) takeLoop(reader, draft)
  if (draft.loop !== undefined) takeRowOf(reader, draft)
  if (draft.loop !== undefined && takeBelow(reader)) return { ...draft, walk: 'below', start, end: reader.end }
  reader.take('of')
  if (!fill(reader, draft)) {
    if (draft.loop !== undefined || both) {
      takeRowOf(reader, draft)
      // `in BLO`, `in BLO around`
      const whole = takeToEnd(reader)
      return { ...draft, walk: whole ? 'each' : 'next', ...(whole && { toEnd: true }), start, end: reader.end }
    }
    reader.at = at
    return undefined
  }
  takeTail(reader, draft)
  return { ...(draft as Target), start, end: reader.end }
}

/** `for every 2 rows along side edge`, `along side for every 2 rows`: a rate, along the edge that is named, or the side that comes next. */
function atRate(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  const rows = takeRows(reader)
  const edge = rows && takeWayAlong(reader) ? undefined : alongEdge(reader, reader.start)
  const late = rows ?? (edge?.walk === 'edge' ? takeRows(reader) : undefined)
  if (late && (!edge || edge.walk === 'edge')) return { walk: 'edge', edge: 'side', ...edge, rate: { rows: late, about: false }, start, end: reader.end }
  reader.at = at
  return undefined
}

/** Fills the draft with how the places are walked. */
function fill(reader: Reader, draft: Draft): boolean {
  // `in that st`, `in this very same stitch`, `in this and each of the other 5 sc`, `in this row-end`
  if ((reader.take('that|this', 'very?', 'same?', 'st|stitch|place|one|ch|chain|sc|hdc|dc|tr|sp|space|corner') || reader.take('it') || /^and$/.test(reader.word(1)) && reader.take('that|this') || reader.take('that|this', 'very?', 'same?', 'row', '-?', 'end')) && (reader.done || /^(?:[,;.:()]|and|work|make)$/.test(reader.word()))) {
    draft.walk = beforeMarker(reader) || behindKept(reader) ? 'next' : 'same'
    return true
  }
  if (inTopOfSame(reader) || inLastMade(reader)) {
    draft.walk = 'same'
    return true
  }
  if (withTheFirst(reader)) {
    Object.assign(draft, { walk: 'same', asFirst: true })
    return true
  }
  reader.take('the') || reader.word(1) === 'same' && reader.take('that|this')
  if (takeRing(reader)) return (draft.walk = 'ring') === 'ring'
  if (takeTopOfChain(reader, draft) || takeOneOfPoint(reader, draft) || takeCentre(reader, draft) || ordinal(reader, draft)) return true
  // `in the gap at the corner`, `in the seam`: beside the stitch worked last, into no stitch.
  if (takeSeamPlace(reader) || reader.take('gap|hole') && (takeWhereabouts(reader) || reader.done || /^[,;.(]$/.test(reader.word()))) {
    Object.assign(draft, { walk: 'same', thing: { kind: 'gap' } })
    return true
  }
  if (takePoint(reader, draft)) return true
  if (otherSideOfChain(reader, draft)) return true
  if (reader.word() === 'same' && chainWords.has(reader.word(1)) && reader.word(2) === '-' && reader.take('same')) return same(reader, draft)
  if (reader.take('joining|joined', 'st|stitch|place|sc|hdc|dc|tr') && !/^of$/.test(reader.word())) {
    draft.walk = 'same'
    return true
  }
  if (reader.take('same', 'place|st|sts|stitch|sp|space|ch|corner?', 'as?') || reader.take('base', 'of') || reader.take('st', 'at', 'base', 'of')) return same(reader, draft)
  if (reader.take('marked', 'st|stitch|sc|dc|hdc') || reader.take('st|stitch', 'with', 'marker') || reader.take('marker')) {
    draft.walk = 'marked'
    return true
  }
  if (reader.take('skipped') || reader.take('sk', 'st') || reader.take('missed')) {
    const num = takeNumber(reader)
    takeThing(reader)
    draft.walk = 'skipped'
    if (num) draft.count = num
    return true
  }
  if (reader.take('both', 'layers|thicknesses|pieces|sides')) {
    draft.walk = 'layers'
    return true
  }
  return counted(reader, draft)
}

function same(reader: Reader, draft: Draft): boolean {
  draft.walk = 'same'
  // `starting in the same st sc in each of 14 sts`: the stitch is worked next.
  const stitch = /^(?:st|stitch|place|sp|space|ch|corner)$/.test(reader.word(-1)) ? reader.vocabulary.stitchAt([reader.word(), reader.word(1)]) : undefined
  if (stitch && /^(?:in|into)$/.test(reader.word(stitch.words))) return true
  takeThing(reader)
  reader.take('as', 'the?')
  reader.take('the')
  reader.take('very')
  if (reader.word() === 'first' || reader.word() === 'marked' && reader.take('marked')) draft.asFirst = true
  // `in same ch as first 2 sc`
  if (reader.take('last|first|previous|prev') && numberAhead(reader) !== undefined && reader.vocabulary.stitchAt([reader.word(1)])) reader.at += 1
  reader.take('closing|joining|join|sl|ch|tch|turning|beg|beginning', 'st|ch?')
  takeThing(reader)
  if (numberAhead(reader) !== undefined && reader.word(-1) === '-') reader.at += 1
  reader.take('was', 'made')
  takeUnderChain(reader)
  return true
}

const things = /^(next|foll|following|each|ea|every|first|1st|last|final|all|any|rem|remaining|further|subsequent|center|centre|middle|single|only|lone|other|previous|prev)$/

/** `next 3 dc`, `each of the next 4 sts`, `each st`, `first 2`, `last st`, `a ch-2 sp`. */
function counted(reader: Reader, draft: Draft): boolean {
  const at = reader.at
  if (theRest(reader, draft)) return true
  draft.walk = 'next'
  let each = false
  let named = false
  let first = false
  // `in the first of the 7 step sts`: one of them.
  let one = false
  let ahead = false
  let count: Num | undefined
  for (;;) {
    if (/^(?:first|last)$/.test(reader.word(-1)) && reader.take('of', 'them|these|those') && numberAhead(reader) === undefined) break
    if (reader.take('of') || reader.take('the|these|those')) continue
    const part = each || count ? takePartBefore(reader) : undefined
    if (part !== undefined) draft.ofPart = part
    if (reader.word() === 'outermost' && reader.word(1) === 'of') {
      reader.at += 1
      one = named = true
      continue
    }
    const word = outermost(reader) ?? reader.word()
    // `each single crochet`: the word belongs to the stitch.
    if (!things.test(word) || reader.vocabulary.stitchAt([word, reader.word(1)]) !== undefined) {
      // `in each one after that`
      if (each && word === 'one' && /^([,;.()]|after|along|to|across|around)?$/.test(reader.word(1))) reader.at += 1
      else if (count === undefined && !looksLikeChainLoop(reader)) {
        const all = reader.peek()?.outOf
        count = takeNumber(reader)
        if (count) {
          if (all) draft.outOf = all
          named = true
          reader.take('more|further')
          continue
        }
      }
      break
    }
    reader.at += 1
    named = true
    if (/^(?:center|centre|middle)$/.test(word)) takeBackOrFront(reader)
    if (word === 'each' || word === 'ea' || word === 'every' || word === 'all') {
      each = true
      const nth = reader.peek()
      if (nth?.kind === 'ordinal' || word === 'every' && numberAhead(reader) !== undefined) {
        draft.every = nth?.value ?? numberAhead(reader) ?? 1
        reader.at += 1
      } else if (word !== 'all' && reader.take('other') || reader.take('alt|alternate')) draft.every = 2
    }
    if (word === 'first' || word === '1st') {
      draft.walk = 'first'
      first = true
    }
    if (word === 'last' || word === 'final') draft.walk = 'last'
    if (/^(first|last)$/.test(word) && reader.word() === 'of' && !each) one = true
    if (/^(rem|remaining|further|subsequent)$/.test(word)) each = true
    if (/^(?:next|foll|following|first|last)$/.test(word)) ahead = true
    if (word === 'next' || word === 'foll' || word === 'following') first = false
  }
  // `the first of the last 4 sc`
  if (one && first && draft.walk === 'last' && count) draft.fromEnd = count
  else if (one && count) draft.outOf = count
  if (one) count = undefined
  if (takeLeftUnderChain(reader) || reader.take('skipped|missed')) {
    takeThing(reader)
    draft.walk = 'skipped'
    if (count) draft.count = count
    const tail = takeHeldTail(reader)
    if (tail) Object.assign(draft, { held: tail.words, ...(tail.ofRow !== undefined && { ofRow: tail.ofRow }) })
    return true
  }
  if (takeHeldWord(reader)) {
    const tail = takeHeldTail(reader)
    Object.assign(draft, { walk: 'skipped', held: `held ${tail?.words ?? ''}`, ...(count && { count }), ...(tail?.ofRow !== undefined && { ofRow: tail.ofRow }) })
    return true
  }
  const slipped = takeState(reader)
  reader.take('post|posts', 'of', 'the?', 'next?')
  const row = takeRowPrefix(reader)
  if (row !== undefined) draft.ofRow = row
  const { at: noun } = reader
  const opening = takePlaceNoun(reader)
  // `4 underarm ch`: the chain over stitches that wait.
  if (opening && isOpening(opening) && chainWords.has(reader.word())) draft.held = `${opening} ch`
  reader.at = noun
  const thing = takeThing(reader) ?? (named ? takeThingBehindWord(reader) : undefined) ?? (takesLoop(reader, draft) ? { kind: 'stitch' as const } : undefined)
  if (!thing && !named) {
    reader.at = at
    delete draft.walk
    return false
  }
  // `first slip-stitched st of Row 5`: what lies under a slip stitch.
  if (thing) draft.thing = slipped && thing.kind === 'stitch' ? { kind: 'stitch', stitch: 'sl st' } : thing
  // `in each of the 4 ch of each ch-4 sp`: in each chain.
  if (each && count && thing?.kind === 'chain' && ofEachSpace(reader, count)) count = undefined
  if (count) draft.count = count
  if (each && count) draft.eachOf = true
  // `in each of the 4 corners`, `in the 5 outer corner sts`: all that there are.
  const all = thing?.where === 'corner' && count !== undefined && !ahead && (each || /s$/.test(reader.word(-1)))
  if (all || each && !count) draft.walk = 'each'
  if (first && count === undefined && each) draft.walk = 'each'
  if (draft.every && !count) draft.walk = 'each'
  return true
}

/** `end st`, `end ch`: the last one. `beg sc`: the first one; `beg ch` is another thing. */
function outermost(reader: Reader): 'first' | 'last' | undefined {
  if (/^(?:end|edge)$/.test(reader.word()) && /^(st|stitch|ch|chain|sc|hdc|dc|tr)$/.test(reader.word(1)) && (reader.word() === 'end' || reader.word(2) !== 'of')) return 'last'
  return /^beg(?:inning)?$/.test(reader.word()) && /^(st|stitch|sc|hdc|dc|tr)$/.test(reader.word(1)) ? 'first' : undefined
}

/** `in the rest`, `in all the others`, `in the remainder of the ch`: every place that is left. */
function theRest(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  const each = /^(?:each|every)$/.test(reader.word())
  if (reader.take('all|each|every?', 'of?', 'all?', 'the?', 'rest|remainder|others')) {
    const named = reader.take('of', 'the?') && !reader.take('row|rnd|round') ? takeThing(reader) : undefined
    if (named || reader.done || /^[,;.:()]$/.test(reader.word()) || /^(row|rnd|round)$/.test(reader.word(-1))) {
      Object.assign(draft, { walk: 'each', toEnd: true, ...(named ? { thing: named } : each && { thing: { kind: 'stitch' } }) })
      return true
    }
  }
  reader.at = at
  return false
}

/** `in 2-ch sp`: the number belongs to the space. */
function looksLikeChainLoop(reader: Reader): boolean {
  return numberAhead(reader) !== undefined && (reader.word(1) === '-' && chainWords.has(reader.word(2)) || gluedSpace(reader))
}

/** `front loop of Rnd 1`: the loop is what is named. */
function takesLoop(reader: Reader, draft: Draft): boolean {
  if (draft.loop !== undefined) return false
  takeLoop(reader, draft)
  return draft.loop !== undefined
}
