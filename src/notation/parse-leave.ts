import { takeNumber } from './numbers.ts'
import { takeAtEnd, takeLeft } from './take-left.ts'
import { takeBeside } from './parse-beside.ts'
import { takeOfPiece, takePieceName } from './parse-piece-name.ts'
import { placeEnds } from './place-ends.ts'
import { takeEdgeName, undersideNamed } from './parse-edge.ts'
import { rowEnds } from './parse-row-ends.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import { sumOfKinds, takeSorted } from './parse-sorted.ts'
import { takeRowNamed } from './row-named.ts'
import type { Aside, Instruction, Leave } from './syntax.ts'
import type { Num, Thing } from './target.ts'

/** Which stitches are left. */
const those = 'last|next|rem|remaining|other|final'
const pointed = 'these|those|this|that'

interface Stretch {
  /** `last`, `rem`, `these`: said which they are. */
  readonly which: boolean
  /** `last`, `rem`: those at the row's end. */
  readonly last?: boolean
  /** `them`, `those`: told before, and not named again. */
  readonly named: boolean
  readonly count?: Num
  readonly thing?: Thing
  /** What its stitches come to where they are told kind by kind beside their number. */
  readonly sum?: Num
}

/** `the last 4 sts`, `rem stitches`, `3 unworked dc`, `last st`, `those six`, `them`: what is left, as far as it is said. */
function takeStretch(reader: Reader, led = true): Stretch {
  const { at: from, start } = reader
  const told = reader.take(pointed)
  if (!told && reader.take('them|it')) return { which: false, named: true }
  reader.take('the')
  // `leave the outer 4 sts unworked`
  reader.take('outer|outermost')
  const last = /^(last|final|end)$/.test(reader.word())
  const which = reader.take(`${those}|end`)
  const atEnd = which && reader.word(-1) !== 'next'
  // `26 sc, 4 sts left unworked`: what stands before the last of them is worked.
  // `; the 4 dc and the ch-3 at the end of the row stay free`: a sentence of its own.
  const apart = /^[.;]$/.test(reader.word(from - 1 - reader.at))
  const kinds = led || which || apart ? sumOfKinds(reader, reader.start) : undefined
  if (kinds) return { which: which || told, named: false, ...(atEnd && { last: true }), count: kinds, thing: { kind: 'stitch' } }
  const said = takeNumber(reader)
  reader.take('rem|remaining')
  reader.take('unworked|free|unused')
  const thing = takeThing(reader)
  // `leave last dc unworked` is one, where `rem dc` may be several.
  const alone = last && (thing?.kind === 'stitch' || thing?.kind === 'chain') && !/s$/i.test(reader.word(-1))
  const count = said ?? (alone ? { values: [1], start, end: reader.end } : undefined)
  const sum = count && takeSorted(reader)
  return { which: which || told, named: told && !thing && !count, ...(atEnd && { last: true }), ...(count && { count }), ...(thing && { thing }), ...(sum && { sum }) }
}

/** `do not work into the slip stitches on the next row`: a row that is still to come. */
function ofLaterRow(reader: Reader): readonly Aside[] | undefined {
  const { at, start } = reader
  const slips = reader.take('do', 'not', 'work', 'in|into?') && takeStretch(reader).thing?.stitch === 'sl st'
  if (slips && (reader.take('again|later') || reader.take('on|in', 'the', 'next|following', 'row'))) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  return undefined
}

/** `where 3 sts were left unworked`: by an older row. */
function leftEarlier(reader: Reader): readonly Aside[] | undefined {
  const { at, start } = reader
  if (reader.take('where') && takeStretch(reader).thing && reader.take('were|was|have', 'been?', 'left|skipped', 'unworked|free|open?')) {
    takeAtEnd(reader)
    if (clauseEnds(reader)) return [{ node: 'aside', start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `leave rem sts unworked`, `leaving 33 sts unworked`, `5 sts rem unworked`, `do not work the last 4 sts`: places left on purpose. */
export function parseLeave(reader: Reader): readonly Instruction[] | undefined {
  const later = ofLaterRow(reader) ?? leftEarlier(reader)
  if (later) return later
  const [leave] = leaving(reader) ?? setAside(reader) ?? edgeLeft(reader) ?? left(reader) ?? notWorked(reader) ?? stopping(reader) ?? []
  // `leave last 5 sts unworked (4 tr and the 3 ch)`
  const sum = leave?.sum ? undefined : takeSorted(reader)
  return leave && [{ ...leave, ...(sum && { sum }) }]
}

const isFree = /^(?:unworked|free|unused|open)$/

function leaving(reader: Reader): readonly Leave[] | undefined {
  const { at, start } = reader
  if (!reader.take('leave|leaving')) return undefined
  // `leaving the rest of the brim unworked`, `leaving rest of row unworked`
  if (reader.take('the?', 'rest|remainder') || reader.take('all', 'the?', 'other')) {
    while (!reader.done && !/^(unworked|free|unused|[,;.()])$/.test(reader.word())) reader.at += 1
    if (reader.take('unworked|free|unused') || reader.word(-1) === 'rest') return [{ node: 'leave', start, end: reader.end }]
  }
  const ends = rowEnds(reader, start, false)
  if (ends && (reader.take('unworked|free|unused') || reader.done || /^[,;.(]$/.test(reader.word()))) return [{ node: 'leave', ...(ends.count && { count: ends.count }), rowEnds: true, start, end: reader.end }]
  reader.at = at + 1
  // `leave the underside of last 6 ch unworked`
  reader.take('the?', 'underside|undersides', 'of', 'each?', 'of?')
  const { count, thing, named, last, sum } = takeStretch(reader)
  const slips = thing?.stitch === 'sl st'
  const chains = thing?.kind === 'chain'
  const ahead = thing && takeBeside(reader, 'before')
  const ofRow = takeOfOlder(reader)
  takeAtEnd(reader)
  // `leave remaining sts of top edge unworked`
  const { at: tail } = reader
  if (reader.take('of|on|between|along|at', 'the?', 'two|2?')) {
    while (reader.peek()?.kind === 'word' && !isFree.test(reader.word()) && reader.at - tail < 7) reader.at += 1
    if (!isFree.test(reader.word())) reader.at = tail
  }
  if ((thing || count || named) && (reader.take('unworked|free|unused|behind|open') || reader.take('rem|remaining', 'unworked?') || named && reader.take('for', 'later|now') || reader.take('out', 'of', 'the|this', 'row'))) {
    takeOfOlder(reader)
    takeAtEnd(reader)
    const before = ahead ?? takeBeside(reader, 'before')
    if (!before) takeBesidePiece(reader)
    return [{ node: 'leave', ...(count && { count }), ...(sum && { sum }), ...(last && { last }), ...ofRow, ...(before && { before: before.thing }), ...(slips && { slips }), ...(chains && { chains }), start, end: reader.end }]
  }
  if (count && (sum || reader.done || /^[,;.(]$/.test(reader.word()))) return [{ node: 'leave', count, ...(sum && { sum }), start, end: reader.end }]
  if (thing && !/^(cm|in|inch|inches|tail)$/.test(reader.word())) return [{ node: 'leave', ...(count && { count }), start, end: reader.end }]
  reader.at = at
  return undefined
}

/** `before Tab 1`, `beside the first flap`: where they lie. */
function takeBesidePiece(reader: Reader): void {
  const { at } = reader
  if (!reader.take('before|after|beside|between') || takePieceName(reader) === undefined) reader.at = at
}

/** `6 sts short of the end`, `4 sts before end of row`, `2 sc from the end` */
function takeShortOfEnd(reader: Reader): Num | undefined {
  const count = takeNumber(reader)
  if (!count || !takeThing(reader)) return undefined
  return reader.take('short', 'of', 'the?', 'end|edge') || reader.take('before|from', 'the?', 'end|edge') ? (reader.take('of', 'the?', 'row|rnd|round'), count) : undefined
}

/** Words before stitches that are left: `so that`, `there are`, `turn when`, `with`. */
const before: readonly (readonly string[])[] = [['so|with|when|while|although|where', 'that?'], ['stop|stopping', 'when|with|while'], ['there', 'are|is'], ['there', 'should|will', 'now|still?', 'be'], ['you', 'should|will?', 'now|still?', 'have']]

/** `rem sts unworked`, `4 sts left unworked`, `10 sts remain unworked`, `so that 8 are left over at the end`, `there are 4 sts not worked` */
function left(reader: Reader): readonly Leave[] | undefined {
  const { at, start } = reader
  const told = before.some((words) => reader.take(...words))
  const { which, named, count, thing, last, sum } = takeStretch(reader, false)
  if (!named && (which || count) && (thing || told)) {
    const { at: here } = reader
    if (!reader.take('at|in', 'the?', 'centre|center|middle', 'front|back?')) reader.at = here
    const ofRow = takeOfOlder(reader)
    const atEnd = takeAtEnd(reader)
    // `top of turning ch (the 3 ch skipped in Row 1)` are what it stands for.
    const state = thing?.kind === 'chain' && /^(?:skipped|missed)$/.test(reader.word()) ? undefined : takeLeft(reader)
    const ends = takeAtEnd(reader) || atEnd
    const sure = state === 'sure' || state && (which || told && clauseEnds(reader) || ends)
    if (sure) return [{ node: 'leave', ...(count && { count }), ...(sum && { sum }), ...(last && { last }), ...ofRow, start, end: reader.end }]
  }
  reader.at = at
  // `turn before the last 4 sc, which are left unworked`
  if (reader.take('which|these|those|they') && takeLeft(reader) === 'sure') return [{ node: 'leave', start, end: reader.end }]
  reader.at = at
  return undefined
}

const clauseEnds = (reader: Reader): boolean => reader.done || /^(?:[,;.:()]|and|turn)$/.test(reader.word())

/** `along the bottom`, `into the foundation`, `the lower edge`: a whole edge. */
function edgeNamed(reader: Reader): boolean {
  const { at } = reader
  reader.take('along|across|in|into|on')
  if ((undersideNamed(reader) || takeEdgeName(reader) !== undefined) && placeEnds(reader)) return true
  reader.at = at
  return false
}

/** `the bottom edge stays free`, `the foundation is left unworked` */
function edgeLeft(reader: Reader): readonly Leave[] | undefined {
  const { at, start } = reader
  if (reader.take('the') && (undersideNamed(reader) || takeEdgeWords(reader)) && takeLeft(reader) === 'sure') return [{ node: 'leave', start, end: reader.end }]
  reader.at = at
  // `nothing is worked across Row 10`, `top edge is not joined`
  const nothing = reader.take('and?', 'nothing|none', 'is', 'worked|joined', 'along|across|over|on', 'the?') || reader.take('do', 'not', 'join|sew', 'along|across', 'the?')
  if (nothing && (takeEdgeName(reader) !== undefined || takeRowNamed(reader) !== undefined) && clauseEnds(reader)) return [{ node: 'leave', start, end: reader.end }]
  reader.at = at
  if (takeEdgeName(reader) !== undefined && reader.take('is|are', 'not|left', 'joined|worked|unjoined|open') && clauseEnds(reader)) return [{ node: 'leave', start, end: reader.end }]
  reader.at = at
  return undefined
}

const takeEdgeWords = (reader: Reader): boolean => reader.take('bottom|lower|foundation|top|upper|left|right|other|remaining', '-?', 'hand?', 'edge|side') || reader.take('bottom|top')

/** `do not work the last 4 sts`, `do not work along the bottom`, `without working these four`, `ignoring the other 6 sc` */
function notWorked(reader: Reader): readonly Leave[] | undefined {
  const { at, start } = reader
  const not = reader.take('do', 'not', 'work', 'in|into|across?') || reader.take('don’t|don\'t', 'work', 'in|into|across?') || reader.take('ignore|ignoring') || reader.take('without', 'working', 'in|into?')
  if (not && reader.take('along?', 'the', 'rest|remainder', 'of', 'the?', 'row|rnd|round|edge|edges|outline|piece|stitches|sts')) return [{ node: 'leave', start, end: reader.end }]
  const edge = not && edgeNamed(reader)
  if (edge) return [{ node: 'leave', start, end: reader.end }]
  const { which, count, thing, last = false, sum } = not ? takeStretch(reader) : { which: false }
  // `do not work the 6 sts that are left`
  const told = count && thing && /^(?:that|which|left|remaining|rem)$/.test(reader.word()) && takeLeft(reader)
  if ((which || told) && (thing || count)) {
    const ofRow = takeOfOlder(reader)
    takeAtEnd(reader)
    return [{ node: 'leave', ...(count && { count }), ...(sum && { sum }), ...(last && { last }), ...ofRow, start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `last 4 sc of Rnd 9`, `10 sts of Body`: whose stitches they are. They lie at the end of what is worked anyway. */
function takeOfOlder(reader: Reader): Pick<Leave, 'ofRow'> {
  const ofRow = takeRowNamed(reader, 'of|on|from|in', 'the?')
  if (ofRow === undefined) takeOfPiece(reader)
  return ofRow === undefined ? {} : { ofRow }
}

/** `hold remaining 20 sts for later`, `place last 2 sts on hold`, `set the other 5 sts aside`: they wait. */
function setAside(reader: Reader): readonly Leave[] | undefined {
  const { at, start } = reader
  const holds = reader.take('hold|holding|keep|keeping|reserve|reserving', 'back?')
  if (holds || reader.take('place|placing|put|putting|slip|slipping|move|moving|set|setting|transfer|transferring', 'aside?')) {
    const aside = holds || reader.word(-1) === 'aside'
    const { which, count, thing } = takeStretch(reader)
    if ((which || count) && thing?.kind === 'stitch' && (reader.take('aside|back') || reader.take('on|onto|to', 'a|the?', 'hold|holder|marker|st|stitch|spare|waste|scrap', 'marker|holder|yarn|thread?') || aside)) return [{ node: 'leave', ...(count && { count }), start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `stop before the last 2 sts`, `stop before the sl sts`, `stop 2 sts before the end`, `stop there`, `and no further`: what lies beyond is left. */
function stopping(reader: Reader): readonly Leave[] | undefined {
  const { at, start } = reader
  const span = { start, end: reader.end }
  // `turn before the last 4 sc`
  const turned = /^turn(?:ing)?$/.test(reader.word(-1)) && reader.take('before|short', 'of?') ? takeStretch(reader) : undefined
  if (turned?.which && turned.thing) return [{ node: 'leave', ...(turned.count && { count: turned.count }), ...span, end: reader.end }]
  reader.at = at
  if (reader.take('no', 'further|farther')) return [{ node: 'leave', ...span, end: reader.end }]
  if (reader.take('stop|stopping|ending|end') && !reader.take('off')) {
    if (reader.take('before|short', 'of?')) {
      const { count, thing } = takeStretch(reader)
      if (thing) return [{ node: 'leave', ...(count && { count }), ...(thing.stitch === 'sl st' && { slips: true }), ...span, end: reader.end }]
    }
    reader.at = at + 1
    const count = takeShortOfEnd(reader)
    if (count) return [{ node: 'leave', count, ...span, end: reader.end }]
    reader.at = at + 1
    if (/^stop(?:ping)?$/.test(reader.word(-1)) && (reader.take('there|here') || reader.done || /^([,;.]|turn|turning)$/.test(reader.word()))) return [{ node: 'leave', ...span, end: reader.end }]
  }
  reader.at = at
  return undefined
}
