import { alongNewChain } from './along-new-chain.ts'
import { alongOtherSide } from './along-other-side.ts'
import { parseInnerCornerFirst } from './inner-corner-first.ts'
import { parseCornerDefined } from './corner-defined.ts'
import { parseNothingThere } from './nothing-there.ts'
import { parseAllIn, parseCornerList } from './parse-all-in.ts'
import { numberAhead } from './numbers.ts'
import { parseAtCorners } from './parse-at-corners.ts'
import { parseBlocks } from './parse-blocks.ts'
import { parseBracket } from './parse-bracket.ts'
import { parseEdgeFirst } from './parse-edge-first.ts'
import { parseEdgeParts } from './parse-edge-parts.ts'
import { parseEnding } from './parse-ending.ts'
import { parseFurther } from './parse-further.ts'
import { parseLastOfRepeat } from './parse-last-of-repeat.ts'
import { parseClosedInPart } from './closed-in-part.ts'
import { parseLoose } from './parse-loose.ts'
import { parsePassedJoin } from './parse-passed-join.ts'
import { parsePlacesFirst } from './parse-places-first.ts'
import { parsePlain } from './parse-plain.ts'
import { parseStar } from './parse-star.ts'
import { parseStated } from './parse-stated.ts'
import { parseStitch } from './parse-stitch.ts'
import { takeWhere } from './parse-where.ts'
import { parsePartHeading } from './part-heading.ts'
import { parseSkipInner } from './parse-skip-inner.ts'
import { parseRateAlong, parseRateFirst, parseSameAlong } from './rate-first.ts'
import { parseThither } from './parse-thither.ts'
import { withPlacesTold } from './places-told.ts'
import type { Reader } from './reader.ts'
import { parseStripe } from './stripes.ts'
import type { Instruction } from './syntax.ts'
import { parseWayAhead } from './way-ahead.ts'

const separators = new Set([',', ';', '.', ':', '+', '/', '&', '-', '–', '—', '|', '!', '"', '“', '”', '…', '•', '→', '←', '='])
const filler = new Set(['loosely', 'tightly', 'and', 'then', 'now', 'work', 'make', 'working', 'also', 'again', 'plus', 'next:', 'worked', 'a', 'another', 'so', 'finally', 'rnd:', 'crochet', 'place:'])
/** Brackets nested deeper than this are not read. */
export const deepest = 60

/** Reads instructions until `stop` says so or the row ends. Never fails: what cannot be read becomes an unreadable stretch. */
export function parseItems(reader: Reader, stop: (reader: Reader) => boolean): Instruction[] {
  const items: Instruction[] = []
  while (!reader.done && !stop(reader)) {
    const ending = parseEnding(reader, items.at(-1))
    if (ending) items.push(ending)
    const parts = ending ? undefined : parseEdgeParts(reader, items)
    if (parts) items.splice(0, items.length, ...parts)
    if (parts || ending || skipSeparators(reader)) continue
    const allIn = parseAllIn(reader, items)
    if (allIn) items.splice(0, items.length, ...allIn)
    if (allIn) continue
    const before = reader.at
    const item = parseItem(reader, items)
    items.push(...item.map((one) => (one.node === 'aside' && one.words === undefined ? { ...one, words: saidBetween(reader, before) } : one)))
    const corner = parseCornerList(items) ?? alongNewChain(items) ?? alongOtherSide(items)
    if (corner) items.splice(0, items.length, ...corner)
    takePlacesTold(reader, items)
    if (takeWhere(reader, items.at(-1))) takePlacesTold(reader, items)
    // A construct that takes nothing would be our mistake; step over one token so that reading goes on.
    if (reader.at === before) reader.at += 1
  }
  return items
}

/** Takes what the last of the instructions is told to go over. */
function takePlacesTold(reader: Reader, items: Instruction[]): void {
  const told = withPlacesTold(reader, items.at(-1))
  if (told) items.splice(-1, 1, told)
}

/** The words of an aside, for those that name what is meant: `(left sleeve)`. */
function saidBetween(reader: Reader, from: number): string {
  return reader.all.slice(from, reader.at).map(({ text }) => text.toLowerCase()).join(' ')
}

/** Takes the signs and words between instructions. */
export function skipSeparators(reader: Reader): boolean {
  if (separators.has(reader.word())) {
    reader.at += 1
    return true
  }
  // `…, ending with dc in top of tch` after a fill: the last stitch is told apart.
  const article = /^an?$/.test(reader.word(2)) ? 3 : 2
  if (/^(ending|end|ends)$/.test(reader.word()) && reader.vocabulary.stitchAt([reader.word(1), reader.word(2)])) {
    reader.at += 1
    return true
  }
  if (/^(ending|end|ends|finish|finishes|finishing)$/.test(reader.word()) && /^(with|by|in)$/.test(reader.word(1)) && (!/^(a|an|row|rnd)$/.test(reader.word(2)) || reader.vocabulary.stitchAt([reader.word(article), reader.word(article + 1)]) !== undefined)) {
    reader.at += reader.word(1) === 'in' ? 1 : 2
    return true
  }
  // `(join yarn and make 1 ch first)`
  if (reader.word() === 'first' && reader.word(1) === ')') return (reader.at += 1) > 0
  if (toStandingStitch(reader) || /^[([]$/.test(reader.word(1)) && reader.take('rep|repeat')) return true
  // `pick up and work 14 sc along the side`
  if (reader.take('pick|picking', 'up', 'and', 'work|working|make|crochet?') || reader.word() === 'pick' && reader.word(1) === 'up' && reader.peek(2)?.kind === 'number' && reader.take('pick', 'up')) return true
  // `work the next 4 sc through arm and body together`
  if (reader.word() === 'the' && reader.word(1) === 'next' && reader.peek(2)?.kind === 'number' && reader.vocabulary.stitchAt([reader.word(3)]) && reader.word(4) === 'through') {
    reader.at += 2
    return true
  }
  if (exception(reader)) {
    reader.at += 1
    return true
  }
  if (leadsToStitches(reader) || leadsToCorner(reader)) {
    reader.at += 1
    return true
  }
  if (filler.has(reader.word()) && reader.peek()?.text !== 'A' && !(reader.word() === 'so' && reader.word(1) === 'that') && !(reader.word() === 'work' && /^(even|straight|in|row|rows|rnd|rnds)$/.test(reader.word(1))) && !(reader.word() === 'working')) {
    reader.at += 1
    return true
  }
  return false
}

/** `begin with a standing sc in first ch`, `starting at bottom right with a standing sc in end of Row 1`: what stands before it tells where. */
function toStandingStitch(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('begin|beginning|start|starting')) {
    while (/^(?:at|the|in|on|bottom|top|lower|upper|right|left|hand|corner|end|edge|side|of|-)$/.test(reader.word())) reader.at += 1
    if (reader.take('with', 'a|one|1', 'standing')) return (reader.at -= 1) > 0
  }
  reader.at = at
  return false
}

/** `1 dc in each dc around, but 3 dc in the centre dc of each corner`: what follows the word is worked as it says. */
function exception(reader: Reader): boolean {
  return /^(but|except)$/.test(reader.word()) && (reader.peek(1)?.kind === 'number' || /^(work|working|make|making|put|putting|with|in|ch|chain|turn|join|stop|stopping|leave|leaving|[([])$/.test(reader.word(1)) || /^(?:continue|continuing|go|carry)$/.test(reader.word(1)) && /^(?:along|on|up|down|around|across)$/.test(reader.word(2)) || reader.vocabulary.stitchAt([reader.word(1)]) !== undefined)
}

/** `making two dc into each row`, `putting one sc in each row-end`: what follows the word is worked as it says. */
function leadsToStitches(reader: Reader): boolean {
  if (!/^(?:making|placing|putting|working)$/.test(reader.word()) || numberAhead(reader, 1) === undefined) return false
  const stitch = reader.vocabulary.stitchAt([reader.word(2), reader.word(3)])
  return stitch !== undefined && stitch.stitch !== 'st' && /^(?:in|into)$/.test(reader.word(2 + stitch.words)) && /^(?:each|every)$/.test(reader.word(3 + stitch.words)) && /^(?:rows?|sts?|stitch|foundation)$/.test(reader.word(4 + stitch.words))
}

const noWork = /^(?:increasing|adding|decreasing|skipping|missing|omitting|leaving|repeating|ending|finishing|joining|turning|counting|including|beginning|starting|following|ring)$/

/** `working 3 sc in each corner`, `with (sc, ch 2, sc) in corners`, `placing 3 sc in the center sc of each of the 3 tips`: the word before is none of the row's work. */
function leadsToCorner(reader: Reader): boolean {
  if (!/^(?:with|[a-z]{2,}ing)$/.test(reader.word()) || noWork.test(reader.word()) || numberAhead(reader, 1) === undefined && !/^[([]$|2tog$/.test(reader.word(1))) return false
  let depth = 0
  for (let ahead = 1; ahead < 30 && reader.peek(ahead); ahead += 1) {
    const word = reader.word(ahead)
    if (/^[([]$/.test(word)) depth += 1
    if (/^[)\]]$/.test(word)) depth -= 1
    if (/^(?:corner|angle|valley|tip|point|peak)s?$/.test(word) || depth === 0 && /^(?:sp|sps|space|spaces|loop|loops|lp|lps)$/.test(word)) return true
    if (depth === 0 && /^[,;.]$/.test(word)) return false
  }
  return false
}

/** Readers of one instruction, the first that takes it. */
const readers: readonly ((reader: Reader, before: readonly Instruction[]) => readonly Instruction[] | undefined)[] = [
  parseClosedInPart,
  parseThither,
  parsePassedJoin,
  parseStated,
  parseInnerCornerFirst,
  parseSkipInner,
  parseNothingThere,
  parseCornerDefined,
  parseAtCorners,
  parseLastOfRepeat,
  parseFurther,
  parseRateFirst,
  parseRateAlong,
  parseStar,
  parseBracket,
  parseEdgeFirst,
  parsePlacesFirst,
  parseBlocks,
  parseStripe,
  parsePlain,
  parsePartHeading,
  parseWayAhead,
  parseSameAlong,
  parseStitch,
]

function parseItem(reader: Reader, before: readonly Instruction[]): readonly Instruction[] {
  for (const read of readers) {
    const found = read(reader, before)
    if (found) return found
  }
  return parseLoose(reader)
}
