import { otherSide } from './parse-other-side.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/** A turn of the work, or of the piece in the hands. */
export function parseTurn(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  return turnedToOtherSide(reader) ?? turnedByHand(reader, before) ?? plainTurn(reader)
}

const hands = 'turn|turning|rotate|rotating|flip|flipping|pivot|pivoting|swing|swinging|tilt|tilting'
const things = 'work|piece|ring|strip|tube|band|square|panel|fabric|front|back|mat|it'

/**
 * The piece is turned in the hands, its right side as it was, and no row ends:
 *
 *   turn the ring on its side and work along the edge   turn piece sideways   turn the work 90 degrees   turn the corner   flip the piece so the starting chain is uppermost
 */
function turnedByHand(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const { at, start } = reader
  if (reader.take(hands)) {
    const plain = /^turn/.test(reader.word(-1))
    const thing = reader.take('the|this?', things)
    const manner = takeManner(reader) || !thing && reader.take('the', 'corner')
    const way = wayAhead(reader) || manner && reader.take('and', 'work|go', 'along|down|up|across', 'the?', 'side|edge|row', '-?', 'ends|edge?')
    if (manner || way || thing && !plain && (reader.done || /^[,;.:]$/.test(reader.word()))) {
      const worked = before.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat')
      return [worked ? { node: 'aside', start, end: reader.end } : { node: 'turn', turns: false, start, end: reader.end }]
    }
  }
  reader.at = at
  return undefined
}

/** `on its side`, `by a quarter turn`, `upside down`, `so that the chain is on top`. */
function takeManner(reader: Reader): boolean {
  if (reader.take('on', 'its|the?', 'side|end|edge') || reader.take('sideways|endways|upside', 'down?') || reader.take('the', 'other', 'way', 'up|round|around?')) return true
  const { at } = reader
  if (reader.take('by?', 'a?', 'quarter|90|180', '°|degrees?', 'turn?', 'clockwise|counterclockwise|anticlockwise?')) return true
  reader.at = at
  reader.take('round|around')
  if (reader.take('so', 'that?', 'the', 'foundation|starting|beginning|chain|bottom|edge|ch|top|side|long|short|left|right|row|ends')) {
    while (!reader.done && !/^[,;.:)]$/.test(reader.word())) reader.at += 1
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
  if (reader.take('turn|rotate|flip') && reader.take('the?', 'work|piece?', 'upside?', 'down?', 'to|and', 'work?')) {
    const { at: after } = reader
    if (/^(along|in|into|on|across|down)$/.test(reader.word()) && reader.take('along|in|into|on|across|down', 'the?', 'other|opposite', 'side')) {
      reader.at = after
      return otherSide(reader)
    }
    if (reader.vocabulary.stitchAt([reader.word()]) && reader.all.slice(at, after).some(({ text }) => /^down$/i.test(text))) return [{ node: 'aside', start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

function plainTurn(reader: Reader): readonly Instruction[] | undefined {
  const start = reader.start
  if (reader.take('do', 'not|n’t', 'turn') || reader.take('don’t|don\'t', 'turn') || reader.take('without', 'turning')) {
    return [{ node: 'turn', turns: false, start, end: reader.end }]
  }
  if (reader.take('turn', 'work|the?', 'work?') || reader.take('turning')) return [{ node: 'turn', turns: true, start, end: reader.end }]
  return undefined
}
