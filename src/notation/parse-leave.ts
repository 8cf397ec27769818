import { takeNumber } from './numbers.ts'
import { takeBeside } from './parse-beside.ts'
import { takeOfPiece, takePieceName } from './parse-piece-name.ts'
import { rowEnds } from './parse-row-ends.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import { sumOfKinds, takeSorted } from './parse-sorted.ts'
import { takeRowNamed } from './row-named.ts'
import type { Instruction, Leave } from './syntax.ts'
import type { Num, Thing } from './target.ts'

/** Which stitches are left. */
const those = 'last|next|rem|remaining|other|final'

interface Stretch {
  /** `last`, `rem`: said which they are. */
  readonly which: boolean
  readonly count?: Num
  readonly thing?: Thing
  /** What its stitches come to where they are told kind by kind beside their number. */
  readonly sum?: Num
}

/** `the last 4 sts`, `rem stitches`, `3 unworked dc`, `last st`: what is left, as far as it is said. */
function takeStretch(reader: Reader, led = true): Stretch {
  const { start } = reader
  reader.take('the|these')
  const last = /^(last|final|end)$/.test(reader.word())
  const which = reader.take(`${those}|end`)
  // `26 sc, 4 sts left unworked`: what stands before the last of them is worked.
  const kinds = led || which ? sumOfKinds(reader, reader.start) : undefined
  if (kinds) return { which, count: kinds, thing: { kind: 'stitch' } }
  const said = takeNumber(reader)
  reader.take('rem|remaining')
  reader.take('unworked|free|unused')
  const thing = takeThing(reader)
  // `leave last dc unworked` is one, where `rem dc` may be several.
  const alone = last && (thing?.kind === 'stitch' || thing?.kind === 'chain') && !/s$/i.test(reader.word(-1))
  const count = said ?? (alone ? { values: [1], start, end: reader.end } : undefined)
  const sum = count && takeSorted(reader)
  return { which, ...(count && { count }), ...(thing && { thing }), ...(sum && { sum }) }
}

/** `leave rem sts unworked`, `leaving 33 sts unworked`, `5 sts rem unworked`, `do not work the last 4 sts`: places left on purpose. */
export function parseLeave(reader: Reader): readonly Instruction[] | undefined {
  const [leave] = leaving(reader) ?? setAside(reader) ?? left(reader) ?? notWorked(reader) ?? stopping(reader) ?? []
  // `leave last 5 sts unworked (4 tr and the 3 ch)`
  const sum = leave?.sum ? undefined : takeSorted(reader)
  return leave && [{ ...leave, ...(sum && { sum }) }]
}

function leaving(reader: Reader): readonly Leave[] | undefined {
  const { at, start } = reader
  if (!reader.take('leave|leaving')) return undefined
  // `leaving the rest of the brim unworked`, `leaving rest of row unworked`
  if (reader.take('the?', 'rest|remainder')) {
    while (!reader.done && !/^(unworked|free|unused|[,;.()])$/.test(reader.word())) reader.at += 1
    if (reader.take('unworked|free|unused') || reader.word(-1) === 'rest') return [{ node: 'leave', start, end: reader.end }]
  }
  const ends = rowEnds(reader, start, false)
  if (ends && (reader.take('unworked|free|unused') || reader.done || /^[,;.(]$/.test(reader.word()))) return [{ node: 'leave', ...(ends.count && { count: ends.count }), rowEnds: true, start, end: reader.end }]
  reader.at = at + 1
  const { count, thing, sum } = takeStretch(reader)
  const slips = thing?.stitch === 'sl st'
  const ahead = thing && takeBeside(reader, 'before')
  takeOfOlder(reader)
  // `leave remaining sts of top edge unworked`
  const { at: tail } = reader
  if (reader.take('of|on', 'the?')) {
    while (reader.peek()?.kind === 'word' && !/^(unworked|free|unused)$/.test(reader.word()) && reader.at - tail < 6) reader.at += 1
    if (!/^(unworked|free|unused)$/.test(reader.word())) reader.at = tail
  }
  if ((thing || count) && (reader.take('unworked|free|unused|behind') || reader.take('rem|remaining', 'unworked?'))) {
    takeOfOlder(reader)
    const before = ahead ?? takeBeside(reader, 'before')
    if (!before) takeBesidePiece(reader)
    return [{ node: 'leave', ...(count && { count }), ...(sum && { sum }), ...(before && { before: before.thing }), ...(slips && { slips }), start, end: reader.end }]
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
export function takeShortOfEnd(reader: Reader): Num | undefined {
  const count = takeNumber(reader)
  if (!count || !takeThing(reader)) return undefined
  return reader.take('short', 'of', 'the?', 'end|edge') || reader.take('before|from', 'the?', 'end|edge') ? (reader.take('of', 'the?', 'row|rnd|round'), count) : undefined
}

/** `rem sts unworked`, `4 sts left unworked`, `10 sts remain unworked`, `so that 8 are left over at the end` */
function left(reader: Reader): readonly Leave[] | undefined {
  const { at, start } = reader
  const so = reader.take('so|with', 'that?')
  const { which: rest, count, thing, sum } = takeStretch(reader, false)
  if ((rest || count) && (thing || so)) {
    takeOfOlder(reader)
    const said = rest ? reader.take('unworked|left') || reader.take('are|remain|stay', 'left|not?', 'unworked|worked|left|free') || reader.take('are', 'left|unworked') : reader.take('are?', 'left|rem|remain|remaining?', 'unworked') || !rest && isLeft(reader)
    if (said) return [{ node: 'leave', ...(count && { count }), ...(sum && { sum }), start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `are left over at the end`, `are left`, `remain at the end of the row` */
function isLeft(reader: Reader): boolean {
  const { at } = reader
  const are = reader.take('are|is')
  const over = reader.take('left', '-?', 'over') || are && reader.take('left|free') || reader.take('remain|remains|remaining|free')
  const atEnd = over && reader.take('at', 'the?', 'end', 'of?', 'the?', 'row?')
  if (over && (are || atEnd || reader.word(-1) === 'over') && (reader.done || /^[,.;:()]$/.test(reader.word()))) return true
  reader.at = at
  return false
}

function notWorked(reader: Reader): readonly Leave[] | undefined {
  const { at, start } = reader
  const not = reader.take('do', 'not', 'work', 'in|into?') || reader.take('don’t|don\'t', 'work', 'in|into?') || reader.take('ignore|ignoring') || reader.take('without', 'working', 'in|into?')
  const { which, count, thing, sum } = not ? takeStretch(reader) : { which: false }
  if (which && thing) {
    takeOfOlder(reader)
    return [{ node: 'leave', ...(count && { count }), ...(sum && { sum }), start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `last 4 sc of Rnd 9`, `10 sts of Body`: whose stitches they are. They lie at the end of what is worked anyway. */
function takeOfOlder(reader: Reader): void {
  if (takeRowNamed(reader, 'of|on|from|in', 'the?') === undefined) takeOfPiece(reader)
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
