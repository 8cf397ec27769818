import { takeBetween } from './between-parts.ts'
import { numberAhead } from './numbers.ts'
import { unworked } from './parse-adjective.ts'
import { motifWord } from './motif-words.ts'
import { takePieceName } from './parse-piece-name.ts'
import { takeTip } from './parse-reach.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Instruction } from './syntax.ts'

const heads = /^(of|for|at|on|under|below|beneath|above|along|down|up|over|across|around|round|near|beside|towards|toward|inside|within|forming|creating|as|to)$/
/** Words that say how many, or into what: a phrase that holds one of them is an instruction. */
const counting = /^(each|ea|every|next|st|sts|stitch|stitches|ch|chs|chain|chains|sp|sps|space|spaces|lp|lps|loop|loops|row|rows|rnd|rnds|round|rounds|end|ends|rem|remaining|unworked|leaving|leave|turn|join|times|time|until|ring|rep|repeat|from|skip|sk|miss|inc|dec|same|again|twice|once|through|evenly|before|in|into|work|if|needed|required|desired|set|established|previous|prev|marker|m)$/

/**
 * Takes the words behind an instruction that tell where it lies or what it is for: `of the handle`, `for back neck`, `up right front
 * edge`, `at the corner`. They change no count.
 */
export function takeWhere(reader: Reader, last: Instruction | undefined): boolean {
  if (last?.node === 'work' && takeTip(reader)) return true
  if (!isWhole(last)) return false
  if (reader.take('in', 'the', 'same', 'way|manner|fashion') || reader.take('likewise|similarly')) return true
  if (last?.node === 'work' && takeBetween(reader)) return true
  if (asForPiece(reader)) return true
  // `in each of the 8 row ends above`
  if (isTold(last) && /^[,;.(]?$/.test(reader.word(1)) && reader.take('above')) return true
  // `14 row-ends down to left-over sts`: as far as what comes next.
  if (isTold(last) && reader.take('down|up|along|on?', 'to', 'the?', `${unworked}|skipped|left`, '-?', 'over?', 'sts|stitches|st|stitch') && placeEnds(reader)) return true
  // `5 row-ends down the side edge again`, `down the side edge, down again`
  if (isTold(last) && reader.take('up|down|back?', 'again')) return true
  // `8 row-ends down [Rows 20-13]`
  if (isTold(last) && /^[[(]$/.test(reader.word(1)) && reader.take('down|up|along')) return true
  // `sc in first 14 sts only`
  if (isTold(last) && reader.take('only|alone')) return true
  // `5 dc in next st to make a shell`, `3 sc in next st for corner`
  if (reader.take('to|for', 'make|form|turn|complete|round?', 'the|a|an|one?', 'first|second|third|fourth|last|next?', 'shell|scallop|fan|corner|buttonhole|eyelet')) return true
  // `in the next sc, which is the center of the corner`
  if (reader.take(',?', 'which', 'is|becomes|makes|will', 'be|become?', 'the', 'center|centre|middle|first|last', 'of|st|sc?', 'the?', 'corner', 'st|sc?')) return true
  const between = reader.word() === 'between' && reader.word(1) === 'the' && isTold(last)
  const beside = last?.node === 'leave' && /^(?:before|after|between|beyond)$/.test(reader.word()) && /^(?:the|first|second)$/.test(reader.word(1))
  if (!heads.test(reader.word()) && !between && !beside) return false
  const { at } = reader
  reader.at += 1
  // `between the two straps`
  if (between && numberAhead(reader, 1) === 2) reader.at += 2
  while (!reader.done && (isQuiet(reader) || isOneEnd(reader) || isRoundEnd(reader) || (isTold(last) || isDecrease(last)) && isItsEnd(reader) || (isTimed(last) || isTold(last)) && isEndOfPart(reader))) reader.at += 1
  const ends = reader.done || /^([,.;:()[\]]|and|then|while)$/.test(reader.word())
  if (ends && reader.at - at > 1 && reader.at - at < 9) return true
  reader.at = at
  return false
}

/** `28 ch, as for First Half`: what is worked is told, and that another piece has the same. */
function asForPiece(reader: Reader): boolean {
  const { at } = reader
  if (reader.take(',?', 'just|exactly?', 'as|like', 'for|on|in?') && takePieceName(reader) !== undefined && placeEnds(reader)) return true
  reader.at = at
  return false
}

/** `at the far end`: a place of the piece, where `at end` would be one of the row. */
const isOneEnd = (reader: Reader): boolean => reader.word() === 'end' && /^(far|other|opposite|top|bottom|left|right|hand|narrow|wide|first|second)$/.test(reader.word(-1))

/** `to go round the end` */
const isRoundEnd = (reader: Reader): boolean => reader.word() === 'end' && /^(?:round|around|turn)$/.test(reader.word(-2)) || /^(?:round|around)$/.test(reader.word()) && /^ends?$/.test(reader.word(2))

/** `5 sc at its end`, `each of 5 sts at end of First Strap`: so many stitches are told, and where they lie. */
const isItsEnd = (reader: Reader): boolean => /^ends?$/.test(reader.word()) && /^(at|on|the)$/.test(reader.word(-1)) && /^([,.;:)]|of|)$/.test(reader.word(1))

/** `[…] 2 times up the end of the strap`, `10 row-ends down end of left arm` */
const isEndOfPart = (reader: Reader): boolean => reader.word() === 'end' && /^(?:the|its|down|up|along|over)$/.test(reader.word(-1)) && reader.word(1) === 'of' && !/^(?:the|this|each)?(?:row|rnd|round|rows)$/.test(reader.word(2) + reader.word(3))

const isTimed = (item: Instruction | undefined): boolean => item?.node === 'repeat' && item.times.kind === 'in-all'

const isDecrease = (item: Instruction | undefined): boolean => item?.node === 'work' && /tog$|^dec$/.test(item.stitch)

const isTold = (item: Instruction | undefined): boolean => item?.node === 'work' && item.target?.count !== undefined

const motif = new RegExp(`^(?:${motifWord})$`)

/** Words of a place that is none of the edge's own. */
const places = /^(each|ea|every|any|next|same|sp|sps|space|spaces|shell|cl|group|skipped|missed|hook|in|into|work|to)$/

/** `before the first short side`, `after the lower edge`: what a place lies before or behind. */
const edges = /^(side|edge|end|seam|front|back|neck|hem|top|bottom|step)$/

/**
 * `at the bottom of the right-hand long edge`, `at the free end of the foundation chain`, `of the collar at the side edge`: where on the
 * piece the place lies that was named. Takes and gives the words.
 */
export function takeWhereabouts(reader: Reader): readonly string[] | undefined {
  const { at } = reader
  const said = reader.take('next|close|closest|nearest|adjacent', 'to') || /^(?:row|rnd|round)$/.test(reader.word(1)) && reader.take('nearest') ? ['beside'] : []
  if (said.length === 0 && !/^(at|of|on|near|nearest|beside|below|above|under|up|down|from|over|across|along|before|after)$/.test(reader.word())) return undefined
  while (!placeEnds(reader, 'with')) {
    const word = reader.word()
    const { at: from } = reader
    if (isLongSide(reader)) reader.at += 3
    // `at neck edge of Right Shoulder`: a name, and no right-hand edge.
    else if (/^(of|on|from)$/.test(said.at(-1) ?? '') && takePieceName(reader) !== undefined) {
      said.push('piece')
      continue
    }
    else if (reader.word() === 'one' && edges.test(reader.word(1))) reader.at += 1
    // `at the right-hand end of the 6th row`
    else if (said.length > 1) takeRowNamed(reader, 'of')
    // `beside Row 14 of Strip`
    else if (said.length === 1 && said[0] === 'beside') takeRowNamed(reader)
    if (reader.at > from) {
      said.push(word)
      continue
    }
    const quiet = reader.peek()?.kind === 'word' || /^[-’']$/.test(word)
    if (!quiet || numberAhead(reader) !== undefined || places.test(word) || reader.vocabulary.stitchAt([word]) !== undefined) break
    said.push(word)
    reader.at += 1
  }
  if (said.length > 1 && said.length < 14 && (!/^(before|after)$/.test(said[0]!) || edges.test(said.at(-1)!)) && placeEnds(reader, 'with')) return said
  reader.at = at
  return undefined
}

/** `at the right end of a 5-square side`: how many motifs that side has. */
const isLongSide = (reader: Reader): boolean => numberAhead(reader) !== undefined && reader.word(1) === '-' && motif.test(reader.word(2)) && /^(?:side|edge|end)$/.test(reader.word(3))

/** An instruction that says how many it makes or where they go: nothing that follows can add to that. */
function isWhole(item: Instruction | undefined): boolean {
  if (item?.node === 'work') return item.count !== undefined || item.target !== undefined || /tog$|^dec$/.test(item.stitch)
  return item?.node === 'group' || item?.node === 'chain' || item?.node === 'repeat' || item?.node === 'join' || item?.node === 'start' || item?.node === 'leave'
}

function isQuiet(reader: Reader): boolean {
  const token = reader.peek()
  if (token?.kind !== 'word' && !/^[-’']$/.test(reader.word())) return false
  // `down into the notch`
  if (/^(?:in|into)$/.test(reader.word()) && /^(?:down|up|back|out)$/.test(reader.word(-1)) && /^(?:the|its)$/.test(reader.word(1)) && reader.vocabulary.stitchAt([reader.word(2)]) === undefined && !counting.test(reader.word(2))) return true
  if (numberAhead(reader) !== undefined && reader.word() !== 'one' || counting.test(reader.word())) return false
  if (/^(and|then|while)$/.test(reader.word())) return false
  return reader.vocabulary.stitchAt([reader.word()]) === undefined
}
