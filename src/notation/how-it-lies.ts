import { numberAhead } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'

const part = 'edge|edges|corner|corners|foundation|foundations|side|sides|top|tops|bottom|bottoms|end|ends|fold|folds|tip|tips|point|points|seam|seams|rows|stitches|sts|neck|hem|layers|pieces|row-ends|motif|motifs|square|squares|hexagon|hexagons|half|halves|shoulder|shoulders|opening|piece|work|chain|chains|slant|slants|slope|slopes|steps|stairs|curves'
const which = 'the|their|its|both|all|two|four|wrong|right|ws|rs|foundation|side|top|bottom|lower|upper|long|short|straight|left|hand|outer|inner|cast|starting|last|first|row|-|of|and|front|back|other|one'
const lies = /^(?:together|matching|matched|meeting|level|even|aligned|flush|touching|uppermost|outermost|innermost|up|below|above|underneath|inside|outside|outwards|inwards|facing)$/

/**
 * How pieces lie for what follows, as a clause of its own that tells no number: `corners matching`, `foundation edges together`, `foundation to foundation`,
 * `with all edges level`, `matching corners`, `side edges meeting at the back`, `Front and Back wrong sides together`.
 */
export function takeHowItLies(reader: Reader): boolean {
  const { at } = reader
  const begins = at === 0 || /^[,.;:()]$/.test(reader.word(-1)) || reader.word(-1) === 'and'
  if (begins && takeSewnUp(reader)) return true
  reader.at = at
  reader.take('with|so', 'that?')
  if (begins && (reader.take('matching|aligning|lining', 'up?') && takeParts(reader) || takePiecesTogether(reader) || takeParts(reader) && takeState(reader)) && placeEnds(reader)) return true
  reader.at = at
  return false
}

/** `The blocks sewn end to end and RS facing`, `The walls sewn into a box and RS facing`: what has been done, and which side is seen. */
function takeSewnUp(reader: Reader): boolean {
  reader.take('with?', 'the|all|both')
  for (let words = 0; words < 4 && reader.peek()?.kind === 'word' && !/^(?:sewn|joined|seamed)$/.test(reader.word()); words += 1) reader.at += 1
  if (!reader.take('sewn|joined|seamed', 'up|together|flat?')) return false
  if (!reader.take('end|side|edge', 'to|by', 'end|side|edge')) reader.take('into|to', 'a|an|one', 'box|tube|ring|strip|square|row|bag|sleeve|circle|round|piece|length|cushion|cover')
  reader.take('and|with?', 'with?', 'the?', 'rs|right|ws|wrong|outside', 'side?', 'facing|out|outwards|up', 'you|up?')
  return placeEnds(reader) && reader.word() !== '('
}

/** `Front and Back wrong sides together` */
function takePiecesTogether(reader: Reader): boolean {
  const { at } = reader
  let pieces = 0
  while (takePieceName(reader) !== undefined || isCalled(reader) && (reader.at += 1) > 0) {
    pieces += 1
    reader.take('and|&|,')
  }
  if (pieces > 1 && (reader.take('with?', 'ws|rs') || reader.take('with?', 'wrong|right', 'sides')) && reader.take('together|tog|touching|facing')) return true
  reader.at = at
  return false
}

/** A name that the rows gave to what they made: `Face` of two blocks that were sewn. */
const isCalled = (reader: Reader): boolean => /^\p{Lu}\p{Ll}+$/u.test(reader.peek()?.text ?? '') && /^(?:and|&|,|ws|rs|wrong|right|with)$/.test(reader.word(1)) && reader.vocabulary.stitchAt([reader.word()]) === undefined

/** `the foundation edges`, `both long sides`, `corners` */
function takeParts(reader: Reader): boolean {
  let named = false
  for (;;) {
    if (reader.take(part)) named = true
    // `the 46 row-ends of one side of Gusset`
    else if (numberAhead(reader) !== undefined && reader.word(1) === 'row' && reader.word(2) === '-' && reader.word(3) === 'ends') reader.at += 4
    else if (!reader.take(which) && takePieceName(reader) === undefined) return named
  }
}

/** `together`, `lie level`, `meeting at the centre`, `to foundation` */
function takeState(reader: Reader): boolean {
  reader.take('are|is|lie|lies|should|being', 'be|lie?', 'lying?')
  if (reader.take('to|on|against') && takeParts(reader)) return true
  if (!lies.test(reader.word())) return false
  reader.at += 1
  reader.take('up|you|each', 'other?') || reader.take('one', 'another')
  if (reader.take('at|in|on|with|to')) return takeParts(reader) || reader.take('the?', 'center|centre|middle|right|left|front|back', 'back|front?')
  return true
}
