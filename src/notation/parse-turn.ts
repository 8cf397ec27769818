import { otherSide } from './parse-other-side.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Instruction, Turn } from './syntax.ts'
import { turnOfRows } from './turn-of-rows.ts'

/** A turn of the work, or of the piece in the hands. */
export function parseTurn(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  return turnOfRows(reader) ?? turnedToOtherSide(reader) ?? turnedByHand(reader, before) ?? plainTurn(reader)
}

const hands = 'turn|turning|rotate|rotating|flip|flipping|pivot|pivoting|swing|swinging|tilt|tilting'
const things = 'work|piece|ring|strip|tube|bag|basket|hat|base|oval|sleeve|band|square|panel|fabric|front|back|mat|it'

/**
 * The piece is turned in the hands, its right side as it was, and no row ends:
 *
 *   turn the ring on its side and work along the edge   turn piece sideways   turn the work 90 degrees   turn the corner   flip the piece so the starting chain is uppermost
 */
function turnedByHand(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const { at, start } = reader
  if (reader.take(hands)) {
    const plain = /^turn/.test(reader.word(-1))
    const thing = reader.take('the|this?', things) || takeThingSo(reader)
    const manner = takeManner(reader) || !thing && takeCorner(reader)
    const way = wayAhead(reader) || manner && reader.take('and', 'work|go', 'along|down|up|across', 'the?', 'side|edge|row', '-?', 'ends|edge?')
    if (manner || way || thing && !plain && (reader.done || /^[,;.:]$/.test(reader.word()))) {
      const worked = before.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat')
      return [worked ? { node: 'aside', start, end: reader.end } : { node: 'turn', turns: false, start, end: reader.end }]
    }
  }
  reader.at = at
  return undefined
}

/** `the corner with 3 sc`, `the inner corner`, `the second corner in the same way`, `the corner without working into it`. */
function takeCorner(reader: Reader): boolean {
  if (!reader.take('the|this?', 'first|second|third|fourth|next|last|inner|outer?', 'corner')) return false
  if (!reader.take('without', 'working', 'in|into', 'it|the?', 'corner?') && !reader.take('in', 'the', 'same', 'way|manner')) reader.take('with|by|working')
  return true
}

/** `the pad so that`: whatever it is called. */
function takeThingSo(reader: Reader): boolean {
  const called = /^(?:the|this)$/.test(reader.word()) && reader.peek(1)?.kind === 'word' && reader.word(2) === 'so'
  if (called) reader.at += 2
  return called
}

/** `on its side`, `by a quarter turn`, `upside down`, `so that the chain is on top`. */
function takeManner(reader: Reader): boolean {
  if (reader.take('on', 'its|the?', 'side|end|edge') || reader.take('sideways|endways|upside', 'down?') || reader.take('the', 'other', 'way', 'up|round|around?')) return true
  const { at } = reader
  if (reader.take('by?', 'a?', 'quarter|90|180', '°|degrees?', 'turn?', 'clockwise|counterclockwise|anticlockwise?')) return true
  reader.at = at
  reader.take('round|around')
  if (reader.take('so', 'that?', 'the', 'foundation|foundations|starting|beginning|chain|chains|bottom|edge|edges|ch|top|side|long|short|left|right|row|ends')) {
    while (!reader.done && !/^[,;.:)]$/.test(reader.word()) && !(reader.word() === 'and' && /^(?:re)?(?:join|attach)$/.test(reader.word(1)))) reader.at += 1
    return true
  }
  reader.at = at
  return false
}

/** `to work down the side:`, where an edge is named and nothing is worked yet. */
function wayAhead(reader: Reader): boolean {
  const { at } = reader
  const way = reader.take('to|and', 'work|go', 'along|down|up|across', 'the?', 'left|right|first|second|other|long|short?', 'side|edge|row', '-?', 'ends|edge?')
  if (way && (reader.done || /^[,;.:]$/.test(reader.word()))) return true
  reader.at = at
  return false
}

/** `turn to work along the other side of the chain`, `turn the work upside down and sc in the other side of`: the piece is turned by hand, and no row ends. */
function turnedToOtherSide(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  if (reader.take('turn|rotate|flip') && reader.take('the|this?', `${things}|chain?`, 'upside?', 'down?', 'to|and?', 'work|continue?')) {
    const { at: after } = reader
    if (/^(along|in|into|on|across|down)$/.test(reader.word()) && reader.take('along|in|into|on|across|down', 'the?', 'other|opposite|underside|bottom', 'side|edge|of?')) {
      reader.at = after
      return otherSide(reader)
    }
    if (reader.vocabulary.stitchAt([reader.word()]) && reader.all.slice(at, after).some(({ text }) => /^down$/i.test(text))) return [{ node: 'aside', start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `Do not turn at the end of Row 8`, `turn after the last row`, `On Row 5, do not turn`. */
function plainTurn(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const before = afterRow(reader)
  if (before !== undefined) reader.take(',')
  const not = reader.take('do', 'not|n’t', 'turn') || reader.take('don’t|don\'t', 'turn') || reader.take('without', 'turning') || reader.take('omit|omitting', 'the?', 'turn|turning') || reader.take('no', 'turn|turning') || reader.take('keep|keeping', 'the?', 'same', 'side', 'facing', 'you?')
  if (not || reader.take('turn', 'work|the?', 'work?') || reader.word() === 'turning' && !/^ch(?:ain)?$/.test(reader.word(1)) && reader.take('turning')) {
    if (not) reader.take('or', 'fasten', 'off')
    reader.take('after|at', 'the?', 'end?', 'of?', 'each|every', 'row')
    const row = before ?? afterRow(reader)
    return [{ node: 'turn', turns: !not, ...(row !== undefined && { afterRow: row }), start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `at the end of Row 8`, `after Row 5`, `on the last row` */
function afterRow(reader: Reader): Turn['afterRow'] {
  const { at } = reader
  if (reader.take('at|after|on|by', 'the?', 'end', 'of', 'the?') || reader.take('at|after|on', 'working|completing|finishing?', 'the?')) {
    const row = takeRowNamed(reader) ?? (reader.take('last|final', 'row|rnd|round') ? 'last' : undefined)
    if (row !== undefined) return row
  }
  reader.at = at
  return undefined
}
