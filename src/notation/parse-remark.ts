import { ordinals } from './number-words.ts'
import { numberAhead } from './numbers.ts'
import type { Reader } from './reader.ts'

/** Words that say what is worked, and how often. */
const working = 'each|ea|every|next|foll|following|sts?|stitch|stitches|chs?|chains?|sps?|spaces?|lps?|loops?|rem|remaining|unworked|leav(?:e|ing)|times?|until|till|reps?|repeat\\w*|skip\\w*|sk|miss|missing|incs?|increas(?:e|ing)|decs?|decreas(?:e|ing)|even|evenly|across|around|round|twice|once|through|tog|together|desired|needed|required|work\\w*|set|established|patt|pattern|clusters?|picots?|pairs?|turning|tch|posts?'
/** Words that may say where. */
const placing = 'rows?|rnds?|rounds?|ends?|again|cont\\w*|carry|carrying|same|last|first|way|motif|corner|corners|tiles?|blocks?|shells?|group|groups|beg|into'
const work = new RegExp(`^(?:${working})$`)
/**
 * A clause without any of them, and without a number or a stitch, is a remark: `Front facing you`, `no more increases!`, `bring the
 * foundation edge up behind`.
 */
const telling = new RegExp(`^(?:${working}|${placing})$`)

/** Words that stand alone before an instruction and tell nothing. */
const interjections = /^(?:ok|okay|right|well|great|hooray|hurray|phew|ready|done|voila|ta-da|yes|good|lovely|careful|carefully|almost|nearly|there|next)$/

/** `Handle time!`, `Decrease!`: what is called out, with no number and no stitch. */
function exclaimed(reader: Reader): boolean {
  const { at } = reader
  while (reader.peek()?.kind === 'word' && numberAhead(reader) === undefined && !resembles(reader) && reader.at - at < 8) reader.at += 1
  if (reader.at > at && reader.word() === '!' && !/^(?:turn|join|repeat|rep|skip|sk)$/.test(reader.word(-1))) return true
  reader.at = at
  return false
}

/** `to keep work flat`, `to draw in the corner`, `so that the edge lies flat`: what it is for, without a number or a stitch. */
function purpose(reader: Reader): boolean {
  const { at } = reader
  const verb = reader.take('in?', 'order?', 'to', 'keep|help|let|stop|prevent|avoid|allow|hold|draw|pull|square|widen|narrow|lengthen|extend|neaten|tidy|finish|shape|bridge|give') || reader.take('so', 'that?', 'the|it', 'edge|edging|border|corner|corners|work|piece|fabric?', 'lies|lie|stays|stay|keeps|keep|is|are|does|do|will')
  const { at: from } = reader
  while (!reader.done && !/^[,;.:!?()[\]{}]$/.test(reader.word())) reader.at += 1
  if (verb && isQuiet(reader, from, reader.at, 'work', 'even', 'around', 'round', 'across')) return true
  reader.at = at
  return false
}

/** Takes a clause that tells nothing to be counted; false and nothing taken where it may. */
export function takeRemark(reader: Reader): boolean {
  const { at } = reader
  if (interjections.test(reader.word()) && /^[,.!;:]?$/.test(reader.word(1))) return (reader.at += 1) > 0
  if (exclaimed(reader) || purpose(reader)) return true
  let words = 0
  for (; !reader.done && !/^[,;.:!?()[\]{}]$/.test(reader.word()); reader.at += 1) {
    const token = reader.peek()!
    // `…, sc in 2 row-ends of the edging*`: the star behind it ends what is repeated.
    if (words > 0 && reader.depth > 0 && token.kind === 'mark') break
    if (numberAhead(reader) !== undefined || token.kind === 'ordinal' || isPlaceByNumber(reader) || token.kind === 'mark' || telling.test(reader.word()) || resembles(reader)) {
      reader.at = at
      return false
    }
    if (token.kind === 'word') words += 1
  }
  // One odd word alone is likelier a slip of the pen than a remark.
  if (words > 1) return true
  reader.at = at
  return false
}

/** `in the fifth`: a place, though its stitch is left out. */
const isPlaceByNumber = (reader: Reader): boolean => ordinals[reader.word()] !== undefined && /^[,;.:)]?$/.test(reader.word(1))

/** A stitch, or a short word that may be one mistyped. */
function resembles(reader: Reader): boolean {
  const word = reader.word()
  if (reader.vocabulary.stitchAt([word, reader.word(1), reader.word(2)])) return true
  return /^[a-z]{2,6}$/.test(word) && !plain.has(word) && /^(?:[sdht]+c|[bf]p|s[lk]|in[ck]|de[ck]|tr|ht|dt|ch|yo|rep)/.test(word)
}

/** Common words that begin as stitches do, names of colours among them (choice of ours, no source). */
const plain = new Set(`
  chalk change chart check cheek cheeks cherry chest chin choice choose chosen cheese child
  decide deck decor here hold inch ink inky into side sky skin skirt
  slack slant slants slat slate slats sleek sleeve slice slide slight slim slip slit slits sloe slope slopes slot slots slow slowly
  so show that the them then there these this three thumb tip toe
  trace track trail train trap tray tread treat tree trellis trim true trunk try
  yolk yoke yokes you your youth
`.trim().split(/\s+/))

/** `Row 6`, `Rows 6 and 5`: a number that names a row counts nothing. */
function numbersRow(reader: Reader): boolean {
  if (numberAhead(reader) === undefined) return false
  return /^(?:rows?|rnds?|rounds?)$/.test(reader.word(-1)) || /^(?:and|to|-)$/.test(reader.word(-1)) && /^(?:rows|rnds|rounds)$/.test(reader.word(-3))
}

/** Words between two places of the text that tell no count, no stitch and no work, though they may tell where: `neck`, `beside the end of Row 6`. */
export function isQuiet(reader: Reader, from: number, to: number, ...may: readonly string[]): boolean {
  const { at } = reader
  let quiet = to > from
  for (reader.at = from; reader.at < to && quiet; reader.at += 1) {
    const token = reader.peek()!
    quiet = numbersRow(reader) || (token.kind === 'word' || /^[-’']$/.test(token.text)) && numberAhead(reader) === undefined && (may.includes(reader.word()) || !work.test(reader.word())) && !resembles(reader)
  }
  reader.at = at
  return quiet
}
