import { numberAhead, takeNumber } from './numbers.ts'
import type { Reader } from './reader.ts'
import type { Num, Target, Thing } from './syntax.ts'

type Draft = { -readonly [K in keyof Target]?: Target[K] }

const stitchWords = new Set(['st', 'sts', 'stitch', 'stitches', 'sitch'])
const spaceWords = new Set(['sp', 'sps', 'space', 'spaces', 'lp', 'lps', 'loop', 'loops', 'arch', 'arches', 'arc', 'arcs'])
const chainWords = new Set(['ch', 'chs', 'chain', 'chains'])
const turningWords = new Set(['tch', 't-ch', 'tch’s'])
const groupWords: Readonly<Record<string, string>> = {
  shell: 'sh', shells: 'sh', sh: 'sh', cl: 'cl', cls: 'cl', cluster: 'cl', clusters: 'cl', tile: 'tile', tiles: 'tile', square: 'square',
}
const ends: readonly (readonly string[])[] = [
  ['across', 'the?', 'row?'], ['around'], ['round'], ['all', 'around'], ['all', 'across'], ['all', 'round'], ['all', 'the', 'way', 'around|across|round'],
  ['to', 'the?', 'end', 'of?', 'the?', 'row|rnd|round?'], ['until', 'the?', 'end'], ['along'], ['to', 'the?', 'beg|beginning'],
]

/** Takes `across`, `around`, `to the end of the row`. */
export function takeToEnd(reader: Reader): boolean {
  return ends.some((words) => reader.take(...words)) && endTail(reader)
}

function endTail(reader: Reader): true {
  reader.take('of', 'the?', 'row|rnd|round|chain|ch')
  return true
}

/** Takes `to last 3 sts`, `to within 2 sts of marker`, `until 5 sts rem`, `to 2 sts before m`: how many places are kept back. */
export function takeKeepBack(reader: Reader): Num | undefined {
  const at = reader.at
  if (reader.take('across?', 'to|until|till', 'the?', 'last|final')) {
    const num = takeNumber(reader) ?? one(reader)
    takeThing(reader)
    return num
  }
  if (reader.take('across?', 'to|till|until', 'within?')) {
    const num = takeNumber(reader)
    if (num) {
      takeThing(reader)
      if (reader.take('rem|remain|remains|remaining|left', 'unworked?') || reader.take('of|before|from', 'the?', 'end', 'of?', 'the?', 'row|rnd|round?')
        || reader.take('are', 'left|unworked')) return num
    }
  }
  reader.at = at
  return undefined
}

/** Takes `to marker`, `to marked st`, `to 2 sts before m`. */
function takeToMarker(reader: Reader): boolean {
  const at = reader.at
  if (reader.take('across?', 'to|until', 'the?', 'within?')) {
    if (takeNumber(reader)) {
      takeThing(reader)
      if (!reader.take('before|of|from')) {
        reader.at = at
        return false
      }
      reader.take('the|each|next')
    } else reader.take('next|first|the|st', 'before?')
    if (reader.take('marker|m|marked|markers', 'st|stitch|sc|dc|hdc?')) return true
  }
  reader.at = at
  return false
}

function one(reader: Reader): Num {
  return { values: [1], start: reader.end, end: reader.end }
}

/** Takes the name of what is worked into: `st`, `dc`, `ch-2 sp`, `corner`, `shell`, `tch`. */
export function takeThing(reader: Reader): Thing | undefined {
  const at = reader.at
  const adjective = takeAdjectives(reader)
  const found = thingHere(reader)
  if (found) return adjective ? { ...found, where: adjective } : found
  if (adjective) return { kind: 'space', where: adjective }
  reader.at = at
  return undefined
}

const adjectives = new Set(['corner', 'corners', 'side', 'beg', 'beginning', 'center', 'centre', 'middle', 'rem', 'remaining', 'unworked', 'foundation', 'starting', 'base', 'previous', 'prev', 'made'])

function takeAdjectives(reader: Reader): 'corner' | 'side' | undefined {
  let where: 'corner' | 'side' | undefined
  for (let word = reader.takeOne(adjectives); word; word = reader.takeOne(adjectives)) {
    if (word.startsWith('corner')) where = 'corner'
    if (word === 'side') where = 'side'
  }
  return where
}

function thingHere(reader: Reader): Thing | undefined {
  if (reader.takeOne(stitchWords)) return { kind: 'stitch' }
  const loops = chainLoop(reader)
  if (loops) return loops
  if (reader.takeOne(turningWords) || reader.take('t', '-', 'ch') || reader.take('turning', 'ch|chain')) return { kind: 'turning-chain' }
  if (reader.take('row', '-?', 'end|ends') || reader.take('end|ends', 'of', 'row|rows')) return { kind: 'row-end' }
  if (reader.take('sp|sps|space|spaces|gap|gaps', 'between')) {
    reader.take('each?', 'the?', 'next?')
    takeThing(reader)
    return { kind: 'gap' }
  }
  if (reader.takeOne(spaceWords)) return { kind: 'space' }
  const stitch = takeStitchName(reader)
  if (stitch) {
    const space = reader.takeOne(spaceWords)
    return space ? { kind: 'space' } : { kind: 'stitch', stitch }
  }
  const group = groupWords[reader.word()]
  if (group) {
    reader.at += 1
    return { kind: 'group', stitch: group }
  }
  if (reader.take('ring') || reader.take('circle')) return { kind: 'ring' }
  return undefined
}

/** `ch-2 sp`, `2-ch sp`, `ch sp`, `ch-5 lp`, `next ch-3`, `ch`. */
function chainLoop(reader: Reader): Thing | undefined {
  const at = reader.at
  const before = numberAhead(reader) !== undefined && (reader.word(1) === '-' ? chainWords.has(reader.word(2)) && reader.touches(1) : chainWords.has(reader.word(1)) && reader.touches(1))
  if (before) {
    const chains = takeNumber(reader)
    reader.take('-')
    reader.at += 1
    if (reader.takeOne(spaceWords)) return { kind: 'space', ...(chains && { chains }) }
    reader.at = at
    return undefined
  }
  if (!chainWords.has(reader.word())) return undefined
  reader.at += 1
  if ((reader.word() === '-' || reader.word() === '–') && numberAhead(reader, 1) !== undefined) {
    reader.at += 1
    const chains = takeNumber(reader)
    reader.take('-')
    reader.takeOne(spaceWords)
    return { kind: 'space', ...(chains && { chains }) }
  }
  reader.take('-')
  if (numberAhead(reader) !== undefined && spaceWords.has(reader.word(1))) {
    const chains = takeNumber(reader)
    reader.at += 1
    return { kind: 'space', ...(chains && { chains }) }
  }
  if (reader.takeOne(spaceWords)) return { kind: 'space' }
  return { kind: 'chain' }
}

/** Takes a stitch's name and gives its US word. Plurals are read (`dcs`). */
export function takeStitchName(reader: Reader): string | undefined {
  const words: string[] = []
  for (let ahead = 0; ahead < 6; ahead += 1) {
    const token = reader.peek(ahead)
    if (!token) break
    words.push(token.text.toLowerCase())
  }
  const found = reader.vocabulary.stitchAt(words)
  if (!found) return undefined
  reader.at += found.words
  return found.stitch
}

const intoWords = new Set(['in', 'into', 'on', 'around', 'round', 'under', 'through', 'over', 'along', 'at', 'to', 'from', 'evenly'])

/** Takes `in next 3 sts`, `into each dc around`, `next st`, `across`: where an instruction goes. Undefined when none is said. */
export function takeTarget(reader: Reader, needsWord = true): Target | undefined {
  const start = reader.start
  const at = reader.at
  const draft: Draft = {}
  if (takeToMarker(reader)) return { walk: 'each', toMarker: true, start, end: reader.end }
  const back = takeKeepBack(reader)
  if (back) return { walk: 'each', keepBack: back, start, end: reader.end }
  if (takeToEnd(reader)) return { walk: 'each', toEnd: true, start, end: reader.end }
  const into = reader.takeOne(intoWords)
  if (!into && needsWord && !/^(next|each|last|first|same|every|ea|foll|following)$/.test(reader.word())) return undefined
  takeLoop(reader, draft)
  reader.take('of')
  if (!fill(reader, draft)) {
    if (draft.loop !== undefined) {
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

/** `in the back loop only of`, `BLO`, `in front lps of`. */
export function takeLoop(reader: Reader, draft: { loop?: 'back' | 'front' | 'third' }): void {
  const at = reader.at
  reader.take('the')
  const side = reader.take('blo|bl|tbl|blps') ? 'back' : reader.take('flo|fl|tfl') ? 'front'
    : reader.take('back|rear', 'loop|loops|lp|lps') ? 'back' : reader.take('front', 'loop|loops|lp|lps') ? 'front'
    : reader.take('third|3rd', 'loop|loops|lp|lps') ? 'third' : reader.take('back', 'bump|bumps|hump|humps|bar|bars') ? 'third' : undefined
  if (!side) {
    reader.at = at
    return
  }
  reader.take('only')
  draft.loop = side
}

/** Fills the draft with how the places are walked. */
function fill(reader: Reader, draft: Draft): boolean {
  reader.take('the')
  if (reader.take('ring') || reader.take('magic|adjustable|yarn|slip', 'ring|circle|loop') || reader.take('mr|ar|mc') || reader.take('center|centre', 'of', 'ring')) {
    draft.walk = 'ring'
    return true
  }
  if (ordinal(reader, draft)) return true
  if (reader.take('top|tops', 'of')) {
    reader.take('the')
    reader.take('beg|beginning|starting|first')
    const chains = thingHere(reader)
    draft.walk = chains?.kind === 'stitch' ? 'next' : 'next'
    draft.thing = chains?.kind === 'stitch' ? chains : { kind: 'turning-chain' }
    return chains !== undefined
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
  takeThing(reader)
  reader.take('as')
  reader.take('last|first|previous|prev|the')
  reader.take('joining|join|sl|ch|tch|turning|beg|beginning', 'st|ch?')
  takeThing(reader)
  if (numberAhead(reader) !== undefined && reader.word(-1) === '-') reader.at += 1
  reader.take('was', 'made')
  return true
}

/** `2nd ch from hook`, `3rd ch of beg ch-5`, `2nd st`. */
function ordinal(reader: Reader, draft: Draft): boolean {
  const at = reader.at
  const token = reader.peek()
  if (token?.kind !== 'ordinal') return false
  reader.at += 1
  const thing = takeThing(reader)
  const num = { values: [token.value ?? 1], start: token.start, end: token.end }
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
  reader.at = at
  return false
}

const things = /^(next|foll|following|each|ea|every|first|last|final|all|any|rem|remaining|center|centre|middle|other|previous|prev)$/

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
    const word = reader.word()
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
    if (word === 'first') {
      draft.walk = 'first'
      first = true
    }
    if (word === 'last' || word === 'final') draft.walk = 'last'
    if (word === 'rem' || word === 'remaining') each = true
    if (word === 'next' || word === 'foll' || word === 'following') first = false
  }
  const thing = takeThing(reader)
  if (!thing && !named) {
    reader.at = at
    delete draft.walk
    return false
  }
  if (thing) draft.thing = thing
  if (count) draft.count = count
  if (each && !count) draft.walk = 'each'
  if (first && count === undefined && each) draft.walk = 'each'
  if (draft.every && !count) draft.walk = 'each'
  return true
}

/** `in 2-ch sp`: the number belongs to the space. */
function looksLikeChainLoop(reader: Reader): boolean {
  return numberAhead(reader) !== undefined && reader.word(1) === '-' && chainWords.has(reader.word(2))
}

/** What may follow: `across`, `to last 3 sts`, `of ch-3`, `around`, `below`, `BLO`. */
function takeTail(reader: Reader, draft: Draft): void {
  if (draft.loop === undefined) takeLoop(reader, draft)
  const back = takeKeepBack(reader)
  if (back) {
    draft.keepBack = back
    return
  }
  if (takeToEnd(reader)) draft.toEnd = true
  if (draft.walk === 'next' && draft.thing && draft.toEnd && !draft.count) draft.walk = 'each'
  if (takeBelow(reader)) draft.walk = 'below'
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
