import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'

/** `through the first arm and the body together`: two parts, by their names. */
function partsAhead(reader: Reader): boolean {
  for (let ahead = 2; reader.peek(ahead) && !/^[,;.()]$/.test(reader.word(ahead)); ahead += 1) {
    if (/^(loop|loops|lp|lps|sts?|ring)$/.test(reader.word(ahead))) return false
    if (reader.word(ahead) === 'and') return true
  }
  return false
}

/** `5 sc through both layers`, `sc through both layers in each of the 4 pairs of sts`, `16 sts of Cover and Front pocket through both layers` */
export function throughLayers(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('and', 'of?') && !(takePieceName(reader) !== undefined && reader.word() === 'through')) reader.at = at
  if (reader.take('through', 'both|all', 'two|three?', 'layers|thicknesses|pieces|sides|edges|panels|fabrics|together', 'together?')) {
    reader.take('at', 'once') || reader.take('each', 'time')
    return true
  }
  if (reader.word() === 'together' && reader.word(1) === 'through' && reader.take('together') && throughLayers(reader)) return true
  // `sl st through each of the 10 pairs`
  const pairs = reader.word() === 'through' && reader.word(1) === 'each' && [2, 3, 4, 5].some((ahead) => /^pairs?$/.test(reader.word(ahead)))
  if (pairs && reader.take('through')) return true
  // `sl st through both, 8 times`
  return /^[,;.]?$/.test(reader.word(2)) && reader.take('through', 'both')
}

/** `9 row-ends up the right side through both layers`: the way is told before the layers. */
export function takeWayThrough(reader: Reader): void {
  const { at } = reader
  const way = reader.take('up|down|along|across', 'the?', 'right|left|long|short|other|top|bottom?', '-?', 'hand?', 'side|edge')
  if (!way || reader.word() !== 'through') reader.at = at
}

/** `through the panel alone`: of one layer. */
function throughOne(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('through', 'the?') && (takePieceName(reader) !== undefined || reader.take('front|back|top|upper|lower?', 'panel|front|back|flap|piece|layer|half|pocket')) && reader.take('alone|only')) return true
  reader.at = at
  return false
}

/** `sc 4 through arm and body`: a part is worked in; it takes no more places of this edge. */
export function throughParts(reader: Reader): void {
  if (throughOne(reader)) return
  if (reader.word() !== 'through' || /^(both|back|front)$/.test(reader.word(1)) || reader.word(1) === 'the' && !partsAhead(reader)) return
  while (!reader.done && !/^[,;.()]$/.test(reader.word())) reader.at += 1
}
