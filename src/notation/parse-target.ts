import { numberAhead, takeNumber } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import { takeHeldTail, takeHeldWord, takeOpening } from './parse-held.ts'
import { takeLoop } from './parse-loop.ts'
import { alongEdge } from './parse-edge.ts'
import { takeKeepBack, takeToEnd, takeToMarker } from './parse-reach.ts'
import { chainWords, gluedSpace, takeThing, thingHere } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Num, Target } from './syntax.ts'

type Draft = { -readonly [K in keyof Target]?: Target[K] }

const intoWords = new Set(['in', 'into', 'on', 'around', 'round', 'under', 'through', 'over', 'along', 'at', 'to', 'from', 'evenly', 'across'])

/** Takes `in next 3 sts`, `into each dc around`, `next st`, `across`: where an instruction goes. Undefined when none is said. */
export function takeTarget(reader: Reader, needsWord = true): Target | undefined {
  const start = reader.start
  const at = reader.at
  const draft: Draft = {}
  if (reader.take('around|round|across|along')) {
    const ofPiece = takePieceName(reader)
    if (ofPiece !== undefined) return { walk: 'each', ofPiece, toEnd: true, start, end: reader.end }
    reader.at = at
  }
  if (takeToMarker(reader)) return { walk: 'each', toMarker: true, start, end: reader.end }
  const back = takeKeepBack(reader)
  if (back) return { walk: 'each', keepBack: back, start, end: reader.end }
  const along = alongEdge(reader, start)
  if (along) return along
  if (takeToEnd(reader)) return { walk: 'each', toEnd: true, start, end: reader.end }
  const into = reader.takeOne(intoWords)
  if (!into && needsWord && !/^(next|each|last|first|same|every|ea|foll|following)$/.test(reader.word())) return undefined
  takeLoop(reader, draft)
  if (draft.loop !== undefined) takeRowOf(reader, draft)
  if (draft.loop !== undefined && takeBelow(reader)) return { ...draft, walk: 'below', start, end: reader.end }
  reader.take('of')
  if (!fill(reader, draft)) {
    if (draft.loop !== undefined) {
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

/** Fills the draft with how the places are walked. */
function fill(reader: Reader, draft: Draft): boolean {
  reader.take('the')
  if (takeRing(reader)) {
    draft.walk = 'ring'
    return true
  }
  if (ordinal(reader, draft)) return true
  if (reader.take('center|centre|middle', 'ch|st|sc|dc|hdc|tr', 'of')) {
    reader.take('the')
    const every = reader.take('each')
    reader.take('next|same')
    const inside = takeThing(reader)
    if (every && inside?.where === 'corner') {
      draft.walk = 'each'
      draft.thing = { kind: 'stitch', where: 'corner' }
      return true
    }
    draft.walk = 'nth'
    if (inside) draft.thing = inside
    return true
  }
  if (reader.take('other|opposite', 'side', 'of', 'the?', 'ch|chain|chs')) {
    draft.walk = 'next'
    draft.thing = { kind: 'chain' }
    return true
  }
  if (reader.take('top|tops', 'of')) {
    reader.take('the')
    reader.take('beg|beginning|starting|first')
    // `top of 3 ch`: the number belongs to the chain.
    if (numberAhead(reader) !== undefined && chainWords.has(reader.word(1))) reader.at += 1
    const chains = thingHere(reader)
    draft.walk = chains?.kind === 'stitch' ? 'next' : 'next'
    draft.thing = chains?.kind === 'stitch' ? chains : { kind: 'turning-chain' }
    return chains !== undefined
  }
  if (reader.word() === 'same' && chainWords.has(reader.word(1)) && reader.word(2) === '-' && reader.take('same')) return same(reader, draft)
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

/** Takes `ring`, `a magic ring`, `an adjustable loop`, `MR`, `a loop`. */
export function takeRing(reader: Reader): boolean {
  return reader.take('a|an?', 'magic|adjustable|yarn|slip|sliding', 'ring|circle|loop') || reader.take('ring|circle') || reader.take('mr|ar|mc')
    || reader.take('a', 'ring|circle|loop') || reader.take('center|centre', 'of', 'ring')
}

function same(reader: Reader, draft: Draft): boolean {
  draft.walk = 'same'
  takeThing(reader)
  reader.take('as')
  reader.take('last|first|previous|prev|the')
  reader.take('joining|join|sl|ch|tch|turning|beg|beginning', 'st|ch?')
  takeThing(reader)
  if (numberAhead(reader) !== undefined && reader.word(-1) === '-') reader.at += 1
  reader.take('was', 'made')
  return true
}

const ordinalWords: Readonly<Record<string, number>> = { second: 2, third: 3, fourth: 4, fifth: 5, sixth: 6, seventh: 7, eighth: 8 }

/** `2nd ch from hook`, `3rd ch of beg ch-5`, `2nd st`. */
function ordinal(reader: Reader, draft: Draft): boolean {
  const at = reader.at
  const token = reader.peek()
  const value = token?.kind === 'ordinal' ? token.value : ordinalWords[reader.word()]
  if (!token || value === undefined) return false
  reader.at += 1
  const thing = takeThing(reader)
  const num = { values: [value], start: token.start, end: token.end }
  if (reader.take('from|of', 'the?', 'hook')) {
    draft.walk = 'from-hook'
    draft.count = num
    return true
  }
  if (thing && reader.take('of', 'the?', 'next|each|same|first|last?', 'beg|beginning|starting|turning?')) {
    const inside = takeThing(reader)
    draft.walk = 'nth'
    draft.count = num
    if (inside) draft.thing = inside
    return true
  }
  // `Sc in 2nd ch`: chains are told off from the hook when nothing else is said.
  if (thing?.kind === 'chain' && value > 1) {
    draft.walk = 'from-hook'
    draft.count = num
    return true
  }
  reader.at = at
  return false
}

const things = /^(next|foll|following|each|ea|every|first|1st|last|final|all|any|rem|remaining|center|centre|middle|other|previous|prev)$/

/** `next 3 dc`, `each of the next 4 sts`, `each st`, `first 2`, `last st`, `a ch-2 sp`. */
function counted(reader: Reader, draft: Draft): boolean {
  const at = reader.at
  draft.walk = 'next'
  let each = false
  let named = false
  let first = false
  let count: Num | undefined
  for (;;) {
    if (reader.take('of') || reader.take('the')) continue
    // `end st`, `end ch`: the last one.
    const word = reader.word() === 'end' && /^(st|stitch|ch|chain|sc|hdc|dc|tr)$/.test(reader.word(1)) ? 'last' : reader.word()
    if (!things.test(word)) {
      if (count === undefined && !looksLikeChainLoop(reader)) {
        count = takeNumber(reader)
        if (count) {
          named = true
          continue
        }
      }
      break
    }
    reader.at += 1
    named = true
    if (word === 'each' || word === 'ea' || word === 'every' || word === 'all') {
      each = true
      const nth = reader.peek()
      if (nth?.kind === 'ordinal' || word === 'every' && numberAhead(reader) !== undefined) {
        draft.every = nth?.value ?? numberAhead(reader) ?? 1
        reader.at += 1
      } else if (reader.take('other') || reader.take('alt|alternate')) draft.every = 2
    }
    if (word === 'first' || word === '1st') {
      draft.walk = 'first'
      first = true
    }
    if (word === 'last' || word === 'final') draft.walk = 'last'
    if (word === 'rem' || word === 'remaining') each = true
    if (word === 'next' || word === 'foll' || word === 'following') first = false
  }
  if (reader.take('skipped|missed')) {
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
  reader.take('unworked|free|unused')
  reader.take('post|posts', 'of', 'the?', 'next?')
  const row = takeRowPrefix(reader)
  if (row !== undefined) draft.ofRow = row
  const thing = takeThing(reader) ?? (takesLoop(reader, draft) ? { kind: 'stitch' as const } : undefined)
  if (!thing && !named) {
    reader.at = at
    delete draft.walk
    return false
  }
  if (thing) draft.thing = thing
  if (count) draft.count = count
  if (each && count && thing?.where === 'corner') delete draft.count
  if (each && (!count || thing?.where === 'corner')) draft.walk = 'each'
  if (first && count === undefined && each) draft.walk = 'each'
  if (draft.every && !count) draft.walk = 'each'
  return true
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

/** `next Rnd-2 dc` */
function takeRowPrefix(reader: Reader): number | undefined {
  if (!/^(rnd|row|round)$/.test(reader.word()) || reader.word(1) !== '-' || reader.peek(2)?.kind !== 'number') return undefined
  const row = reader.peek(2)!.value
  reader.at += 3
  return row
}

/** `of Rnd 2`, `of the previous row` */
function takeRowOf(reader: Reader, draft: Draft): void {
  if (reader.take('of|on|from', 'the?', 'prev|previous|last', 'row|rnd|round')) return
  const at = reader.at
  if (reader.take('unworked|left?', 'of|on|from|left|in', 'of|on|from?', 'row|rnd|round')) {
    const number = reader.peek()
    if (number?.kind === 'number') {
      reader.at += 1
      draft.ofRow = number.value ?? 0
      return
    }
  }
  reader.at = at
}

/** What may follow: `across`, `of next tile` (which has one space), `to last 3 sts`, `of ch-3`, `around`, `below`, `BLO`. */
function takeTail(reader: Reader, draft: Draft): void {
  if (draft.thing?.kind === 'chain') {
    const opening = takeOpening(reader)
    if (opening) draft.held = opening
  }
  if (draft.loop === undefined) takeLoop(reader, draft)
  takeRowOf(reader, draft)
  if (draft.thing?.kind === 'space') reader.take('of', 'the?', 'next|same|last|each', 'tile|tiles')
  if (reader.take('held', 'tog|together')) draft.together = true
  const back = takeKeepBack(reader)
  if (back) {
    draft.keepBack = back
    return
  }
  const { at } = reader
  const edge = alongEdge(reader, reader.start)
  if (edge?.walk === 'edge' && edge.edge) {
    // `across the bottom`, `along the top edge`
    draft.toEnd = true
    draft.edge = edge.edge
  } else {
    reader.at = at
    if (takeToEnd(reader)) {
      draft.toEnd = true
      if (reader.all.slice(at, reader.at).some(({ text }) => /^(across|along)$/i.test(text))) draft.across = true
    }
  }
  if (!draft.toEnd) takeUntil(reader, draft)
  if (draft.walk === 'next' && draft.thing && draft.toEnd && !draft.count) draft.walk = 'each'
  if (takeBelow(reader)) draft.walk = 'below'
}

/** `sc in each sc to ch-2 sp`, `to next corner`: it ends before that. */
function takeUntil(reader: Reader, draft: Draft): void {
  const { at } = reader
  if (draft.walk !== 'each' || !reader.take('across?', 'up?', 'to|until', 'the?', 'next?')) return
  const thing = takeThing(reader)
  if (thing && (thing.kind === 'space' || thing.where === 'corner')) draft.until = thing
  else reader.at = at
}

function takeBelow(reader: Reader): boolean {
  if (reader.take('below')) return true
  const at = reader.at
  const num = numberAhead(reader)
  if (num !== undefined) {
    reader.at += 1
    if (reader.take('row|rows|rnd|rnds|round|rounds', 'below|down')) return true
  }
  reader.at = at
  return false
}
