import type { Num } from './target.ts'
import type { Span } from '../text/span.ts'
import { rowWords } from './languages.ts'
import { readNumbersBySize, readSizesAfter, readSizesBefore, type RowRange } from './label-sizes.ts'
import { instructionWords, isAmong, namedFor, prefixOf, rowWord, wordOf } from './label-words.ts'
import { upToNineteen } from './number-words.ts'
import { readWordedLabel } from './worded-label.ts'

/** What stands before a row's text: its word, its numbers, its side. */
export interface RowLabel extends Span {
  readonly word: 'row' | 'round' | 'unsaid'
  /** As it is shown: `Row 2`, `Rnd 14`, `Foundation`, `Next row`. For a range, the name of its first row. */
  readonly name: string
  /** The word before the number, as written: `Row`, `Rnd`, `Round`. */
  readonly prefix: string
  readonly numbers: readonly number[]
  /** Numbers that carry sizes (`Rnds 7-8 [8-9]`): for each size its first and last. */
  readonly bySize?: readonly RowRange[]
  /** Where those numbers stand; its values are the last of each size. */
  readonly sizeList?: Num
  /** `Next 4 rows`: how many. */
  readonly howMany?: readonly number[]
  readonly side?: 'RS' | 'WS'
  /** `(4 rnds)` in the label. */
  readonly rowsSaid?: number
  /** `(14 sc)` in the label: what the row comes to. */
  readonly counted?: Span
  /** `Row 2 and all even rows` */
  readonly alternate?: 'even' | 'odd'
  /** `First side, row 1:`: the part of the piece, in small letters. */
  readonly part?: string
  /** `Sizes L and XL only:` */
  readonly onlySizes?: readonly string[]
}

const dash = String.raw`(?:\s*(?:-|–|—|−|to|thru|through)\s*)`
const anyWord = [rowWord, ...rowWords.row, ...rowWords.round, ...rowWords.either].join('|')
const numbered = new RegExp(String.raw`^((?:(?:c2c|edging|border|brim|trim|band|collar|cuff|hem|ruffle|frill)\s+)?(?:${anyWord})|r)\s*\.?\s*#?(\d{1,5})(?![\d½¼]|\s*(?:st|nd|rd|th)\b)`, 'i')
const ordinal = new RegExp(String.raw`^(\d{1,5})(?:st|nd|rd|th)(?:${dash}(\d{1,5})(?:st|nd|rd|th)|(?:,\s*\d{1,5}(?:st|nd|rd|th))*,?\s+(?:and|&)\s+(\d{1,5})(?:st|nd|rd|th))?(\s*[([][\dstndrh, –-]+[)\]])?\s+(${rowWord})\b`, 'i')
const bare = new RegExp(String.raw`^(\d{1,5})(?:\.?${dash}(\d{1,5}))?\s*(?:[.:)]\s+(?=[\p{L}(*[\d])|:|(?=\(\p{L}[\p{L}’' -]{2,30}\):))`, 'iu')
const more = new RegExp(String.raw`^(?:(?:\s*(?:,|and|&)+\s*)(?:${rowWord}|r)?\s*(\d{1,5})(?=\s*(?:,|and\b|&|[:»|~→]|[(.[]|-|–|—|\/\s))|${dash}(?:${rowWord}|r)?\s*(\d{1,5})(?!\d))`, 'iu')
const named = new RegExp(String.raw`^((?:next|following|foll|last|first|inc|increase|dec|decrease|set-?\s?up|setup|foundation|base|joining|edging|border|final|beginning|starting|divide|dividing|rib|ribbing|eyelet|buttonhole|mesh|shell|work(?:ing)?|short)\b[\p{L}’' -]{0,24}?)?\s*(?:(\d{1,4}(?:\s*\([\d, -]+\))?|${Object.keys(upToNineteen).join('|')})\s+(?:more\s+|further\s+)?)?(${rowWord}|chain|ring)\s*(?=[:(.]|\s*\()`, 'iu')
const plain = /^((?:ring|divide|[A-Z][\p{L}’']{2,}(?: [\p{L}\d’']+){0,3}))\s*:\s+|^(\p{Lu}{3,}(?: \p{Lu}+){0,2})\s+[-–—]\s+/u
/** `Set-up:`, `Foundation ch (multiple of 4 + 1):`, `Base - `: what a piece begins with, before its rows. */
const beginning = /^((?:foundation|fnd|fdn|base|set[- ]?up|start|starting|beginning|opening|initial)(?: ch(?:ain)?)?)(?:\s*\([^()]*\))?(?:\s*[:=)]|\s+[-–—]|\.)\s+/iu
/** `Foundation and Rows 1-6: As for Front.`: rows that are copied take the chain below them along. */
const withChain = /^(?:foundation|base|starting|beginning|set[- ]?up)(?: ch(?:ain)?| row)?(?:,? (?:and|plus)|,| ?[&+])\s+(?=(?:rows|rnds|rounds)\b)/i
const notLabels = new RegExp(String.raw`^(?:${instructionWords}|next|inc|dec)\b`, 'i')

/**
 * Reads the label at the head of a line; undefined when the line has none. `start` is the line's place in the source.
 *
 *   Row 1 (RS):   1st row:   R1:   Rnd 1.   1.   6:   Rows 2-4:   Rnd 7 to Rnd 10 (4 rnds):   Next 4 rows:   Foundation:
 */
export function readLabel(line: string, start: number, sizes: number): RowLabel | undefined {
  const said = readSizesBefore(line)
  const after = labelAfter(line, said?.length ?? 0, start, sizes)
  if (!said || !said.sure && !after) return labelAfter(line, 0, start, sizes)
  const only = said.only && { onlySizes: said.only }
  if (after) return { ...after, start, ...only }
  return { word: 'unsaid', name: 'Next row', prefix: 'Row', numbers: [], start, end: start + said.length, ...only }
}

function labelAfter(line: string, from: number, start: number, sizes: number): RowLabel | undefined {
  const text = line.slice(from)
  const chain = withChain.exec(text)?.[0].length
  if (chain !== undefined) {
    const rows = labelAfter(line, from + chain, start, sizes)
    return rows && { ...rows, start: start + from }
  }
  return numberedLabel(text, start + from, sizes) ?? ordinalLabel(text, start + from) ?? bareLabel(text, start + from) ?? letterLabel(text, start + from) ?? readWordedLabel(text, start + from, (behind) => labelAfter(line, from + behind, start, sizes)) ?? namedLabel(text, start + from)
}

function numberedLabel(text: string, start: number, sizes: number): RowLabel | undefined {
  const match = numbered.exec(text)
  if (!match) return undefined
  let at = match[0].length
  const numbers = [Number(match[2])]
  for (let next = more.exec(text.slice(at)); next; next = more.exec(text.slice(at))) {
    if (next[2] !== undefined && isDashBeforeText(match[1]!, next[0], text.slice(at + next[0].length))) break
    if (next[2] !== undefined) numbers.push(...rangeAfter(numbers.at(-1)!, Number(next[2])))
    else numbers.push(Number(next[1]))
    at += next[0].length
  }
  const bySize = sizes > 1 ? readNumbersBySize(text.slice(at), numbers) : undefined
  if (bySize) at += bySize.length
  const sizeList = bySize && { values: bySize.ranges.map(({ last }) => last), start: start + match[0].length - match[2]!.length, end: start + at }
  const alternate = /^\s*(?:and|&)\s*(?:all|every)\s+(even|odd|alt(?:ernate)?|foll(?:owing)?\s+alt)[^:]*?rows?/i.exec(text.slice(at)) ?? /^\s*(?:and|&)\s*(?:all|every)\s+(even|odd)[^:.]*?(?:rnds?|rounds?)/i.exec(text.slice(at))
  if (alternate) at += alternate[0].length
  const tail = labelTail(text, at, start)
  if (tail.bad && !/^r/i.test(match[1]!.replace(namedFor, ''))) return undefined
  const word = /^r$/i.test(match[1]!) || isAmong(rowWords.either, match[1]!) ? 'unsaid' : wordOf(match[1]!)
  return finish({ word, prefix: prefixOf(match[1]!), numbers, start, end: start + tail.at, ...tail.facts, ...(bySize && sizeList && { bySize: bySize.ranges, sizeList }),
    ...(alternate && { alternate: (numbers[0] ?? 0) % 2 === 0 ? 'even' as const : 'odd' as const }) })
}

/** `Round 1 – 6 sc in ring`: one round, and a dash before its text; `Rounds 1 – 6` are six. */
function isDashBeforeText(word: string, range: string, rest: string): boolean {
  return !/s\.?$/i.test(word) && /^\s+[-–—]\s/.test(range) && /^\s+\p{L}/u.test(rest)
}

function rangeAfter(first: number, last: number): readonly number[] {
  if (last <= first || last - first > 20_000) return [last]
  return Array.from({ length: last - first }, (_, index) => first + index + 1)
}

function ordinalLabel(text: string, start: number): RowLabel | undefined {
  const match = ordinal.exec(text)
  if (!match) return undefined
  const first = Number(match[1])
  const last = Number(match[2] ?? match[3] ?? match[1])
  const numbers = [first, ...rangeAfter(first, last).filter((n) => n !== first)]
  const tail = labelTail(text, match[0].length, start)
  const list = match[4]
  const bySize = list === undefined ? undefined : readNumbersBySize(list.replace(/(\d)(?:st|nd|rd|th)/gi, '$1'), numbers)
  const listAt = start + match[0].indexOf(list ?? '')
  return finish({ word: wordOf(match[5]!), prefix: prefixOf(match[5]!), numbers, start, end: start + tail.at, ...tail.facts,
    ...(bySize && { bySize: bySize.ranges, sizeList: { values: bySize.ranges.map(({ last: end }) => end), start: listAt, end: listAt + list!.length } }) })
}

function bareLabel(text: string, start: number): RowLabel | undefined {
  const match = bare.exec(text)
  if (!match) return undefined
  const first = Number(match[1])
  const last = Number(match[2] ?? match[1])
  const tail = labelTail(text, match[0].length, start)
  return finish({ word: 'unsaid', prefix: 'Row', numbers: [first, ...rangeAfter(first, last).filter((n) => n !== first)], start, end: start + tail.at, ...tail.facts })
}

/** `E1 (RS).`, `F2 to F7.`: rows of an edging or a flap, told by its letter. */
function letterLabel(text: string, start: number): RowLabel | undefined {
  const match = /^([A-Z])(\d{1,3})(?:(?:\s*[-–—]\s*|\s+to\s+)\1?(\d{1,3}))?(?=\s*(?:[([][^()[\]]*[)\]]\s*)?[.:»])/.exec(text)
  if (!match) return undefined
  const first = Number(match[2])
  const tail = labelTail(text, match[0].length, start)
  return finish({ word: 'unsaid', prefix: 'Row', numbers: [first, ...rangeAfter(first, Number(match[3] ?? first)).filter((number) => number !== first)], start, end: start + tail.at, ...tail.facts })
}

function namedLabel(text: string, start: number): RowLabel | undefined {
  const match = named.exec(text)
  // `Work 44 chain.` makes them.
  if (match && (match[1] || match[2]) && !(match[2] && /^(?:chain|ring)$/i.test(match[3]!))) {
    const tail = labelTail(text, match[0].length, start)
    const howMany = match[2] ? (match[2].match(/\d+/g)?.map(Number) ?? [upToNineteen[match[2].toLowerCase()]!]) : undefined
    const name = match[0].trim().replace(/\s+/g, ' ')
    if (!tail.bad) {
      const chain = /chain|ring/i.test(match[3]!)
      return finish({ word: chain ? 'unsaid' : wordOf(match[3]!), prefix: prefixOf(match[3]!), name: name[0]!.toUpperCase() + name.slice(1), numbers: [], start, end: start + tail.at, ...tail.facts,
        ...(howMany && { howMany }) })
    }
  }
  const word = beginning.exec(text) ?? plain.exec(text)
  if (!word || notLabels.test(text)) return undefined
  return finish({ word: 'unsaid', prefix: 'Row', name: (word[1] ?? word[2])!, numbers: [], start, end: start + word[0].trimEnd().length })
}

/** `(14 sc)`, `[20 (24, 28) sts]`, `, 12 sc each` before the sign that ends the label. */
const count = /^\s*(?:[([{]\s*\d+\s*(?:[([][\d, –-]+[)\]]\s*)*\p{L}[^()[\]{}:]*[)\]}]|,\s*\d+ \p{L}[\p{L} ]{1,20}|\s[-–—]\s*\d+ (?!rows?\b|rnds?\b|rounds?\b)\p{L}+(?: \p{L}+)?(?=\s*:))(?=\s*(?::|[-–—]\s|\(|\[))/u

/** `(RS; 14 sc)`: the side, and what the row comes to. */
const sideAndCount = /^\s*[([]\s*(RS|WS)\s*[;,]\s*\d+\s+\p{L}[^()[\]{}:]*[)\]](?=\s*:)/iu

/** `Row 15, second shoulder:`: the part behind the number. */
const partBehind = /^\s*(?:,|\s[-–—])\s*((?!(?:rs|ws|right|wrong|size|sizes|incl|inclusive)\b)\p{L}[\p{L}’'-]*(?: [\p{L}’'-]+){0,3})(?=\s*:)/iu

/** `Row 11 (second point):`: the part in brackets. */
const partInBrackets = /^\s*\(((?:first|second|third|fourth|fifth|left|right|other|last) (?!sides?\b|rows?\b|rounds?\b|rnds?\b|inc|dec|colou?r|time)\p{L}+)\)(?=\s*:)/iu

/** What may stand between the number and the text: `(RS)`, `[WS]`, `(4 rnds)`, `(14 sc)`, and the sign that ends the label. */
function labelTail(text: string, from: number, start: number): { readonly at: number; readonly bad: boolean; readonly facts: Pick<RowLabel, 'side' | 'rowsSaid' | 'counted' | 'onlySizes' | 'part'> } {
  let at = from
  const facts: { side?: 'RS' | 'WS'; rowsSaid?: number; counted?: Span; onlySizes?: readonly string[]; part?: string } = {}
  for (;;) {
    const side = /^\s*[,:]?\s*[([]?\s*(RS|WS|R\.S\.|W\.S\.|right side|wrong side)(?!\s+(?:tog|together)\b)(?:(?:\s+of\s+(?:the\s+)?\p{L}+)?\s*facing|\s*row|\s*rnd)?(?:[,;]\s*[\p{L} ’'-]{3,48}(?=[)\]]))?\s*[)\]]?(?![\p{L}])/iu.exec(text.slice(at))
    const rows = /^\s*[([]\s*(\d+)\s*(?:rows?|rnds?|rounds?)\s*(?:in all|total)?\s*[)\]]/i.exec(text.slice(at))
    const other = /^\s*\((?:(?:right|wrong|inc|dec|increase|decrease|eyelet|corner|divide|not shown)[^)]*|\p{L}[\p{L}’' -]{2,30})\)(?=\s*(?:[:.]|[-–—]\s))/iu.exec(text.slice(at))
    const inclusive = /^\s*,?\s*\(?incl(?:usive)?\b\.?\)?/i.exec(text.slice(at))
    const sizes = inclusive ? undefined : readSizesAfter(text.slice(at))
    if (inclusive) {
      at += inclusive[0].length
      continue
    }
    const part = inclusive || sizes || facts.part !== undefined ? null : (partBehind.exec(text.slice(at)) ?? partInBrackets.exec(text.slice(at)))
    if (part) {
      facts.part = part[1]!.toLowerCase()
      at += part[0].length
      continue
    }
    if (sizes) {
      if (sizes.only) facts.onlySizes = sizes.only
      at += sizes.length
      continue
    }
    if (rows) facts.rowsSaid = Number(rows[1])
    else if (side && !/facing/i.test(side[0])) facts.side = /^r/i.test(side[1]!) ? 'RS' : 'WS'
    const both = sideAndCount.exec(text.slice(at))
    if (both) facts.side = /^rs$/i.test(both[1]!) ? 'RS' : 'WS'
    const counted = rows || facts.counted ? null : (both ?? count.exec(text.slice(at)))
    if (counted) facts.counted = { start: start + at + counted[0].length - counted[0].trimStart().length, end: start + at + counted[0].length }
    const found = rows ?? counted ?? (side && !/facing/i.test(side[0]) ? side : undefined) ?? other
    if (!found) break
    at += found[0].length
  }
  // `R4 / ch 1, turn`, `Rnd 2 » 3 ch`: whatever sign parts the label from the text, and the text from its count.
  const end = /^\s*(?::|\.|–|—|-|\)|=|[»›|~→•](?=\s)|\/(?=\s))/.exec(text.slice(at))
  if (end) return { at: at + end[0].length, bad: false, facts }
  return { at, bad: !/^\s+\S/.test(text.slice(at)) && text.slice(at).trim() !== '', facts }
}

function finish(label: Omit<RowLabel, 'name'> & { readonly name?: string }): RowLabel {
  const first = label.numbers[0]
  return { ...label, name: label.name ?? (first === undefined ? label.prefix : `${label.prefix} ${first}`) }
}
