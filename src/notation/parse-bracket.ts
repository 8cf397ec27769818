import { numberAhead, takeNumber } from './numbers.ts'
import { skippedCountLater, takeCountsAs, takeCountsAsSeveral } from './parse-counts-as.ts'
import { deepest, parseItems } from './parse-items.ts'
import { edgeBehind } from './parse-edge-ahead.ts'
import { takeOneBehind } from './parse-nth.ts'
import { takeTarget } from './parse-target.ts'
import { bodyOf, takeLastPass } from './parse-star.ts'
import { takeTimes } from './parse-times.ts'
import { Reader } from './reader.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Instruction, Repeat } from './syntax.ts'
import { inSize, type Num } from './target.ts'
import type { Token } from './tokens.ts'

const closing: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' }

/**
 * A bracket is a group in one place, a repeat, a colour, or an aside. The words after it decide.
 *
 *   (2 dc, ch 2, 2 dc) in next ch-2 sp   [sc in next 3, inc] 6 times   (see Note)
 */
export function parseBracket(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const at = reader.at
  const start = reader.start
  const prefix = numberAhead(reader) !== undefined && /^(x|×)$/.test(reader.word(1)) && reader.word(2) in closing ? takeNumber(reader) : undefined
  if (prefix) reader.at += 1
  const close = closing[reader.word()]
  if (!close) {
    reader.at = at
    return undefined
  }
  if (reader.depth >= deepest) return tooDeep(reader, start)
  const end = closeOf(reader)
  if (end === undefined) return unclosed(reader, start)
  const counts = takeCountsAs(reader)
  if (counts) return [attach(before, start, reader.end)]
  if (takeCountsAsSeveral(reader, end)) return [{ node: 'unreadable', why: 'word', reason: 'counts as', start, end: reader.end }]
  const inBracket = reader.all.slice(reader.at + 1, end)
  const sum = inRows(inBracket, before.at(-1))
  if (sum) {
    reader.at = end + 1
    return [{ node: 'aside', stated: { count: sum, scope: 'either' }, start, end: reader.end }]
  }
  if (isRate(inBracket) || tellsWhatWasMade(inBracket) || isOneMade(inBracket) || reader.all[reader.at - 1]?.text !== ',' && namesDecrease(inBracket, before.at(-1))) {
    reader.at = end + 1
    return [{ node: 'aside', start, end: reader.end }]
  }
  const parts = partsOfCount(reader, end, before)
  if (parts) {
    reader.at = end + 1
    return [{ node: 'aside', stated: { count: parts, scope: 'either' }, start, end: reader.end }]
  }
  const unitStart = reader.start
  reader.at += 1
  const colour = colourOnly(reader, end)
  if (colour !== undefined) {
    reader.at = end + 1
    return [{ node: 'aside', yarn: colour, start, end: reader.end }]
  }
  const items = inside(reader, end)
  const unit = { start: unitStart, end: reader.end }
  if (!items.some((item) => item.node !== 'unreadable' && item.node !== 'aside' && item.node !== 'turn' && item.node !== 'leave')) return loose(reader, items, start)
  if (prefix) return [{ node: 'repeat', items, times: { kind: 'in-all', count: prefix }, unit, body: bodyOf(items, unit), start, end: reader.end }]
  const edge = edgeBehind(reader)
  if (edge) return [edge, { node: 'repeat', items, times: { kind: 'once' }, unit, body: bodyOf(items, unit), start, end: reader.end }]
  return [after(reader, before, items, unit, start)]
}

/** `(1 sc per row)`, `(2 for each dc row)`, `(1 sc in the end of each of Rows 14 to 1)`: how the stitches before lie along the edge. */
function isRate(inBracket: readonly Token[]): boolean {
  const inside = wordsOf(inBracket)
  // `(1 row-end of Gusset to every st)`: one to one is what both layers take anyway.
  if (/^(?:1|one) (?:st|stitch|ch|row(?: -)? end) of .+ (?:to|for|with|per) (?:each|every|1|one) (?:st|stitch|ch|row(?: -)? end)(?: of .+)?$/.test(inside)) return true
  return /^(?:that is |about |working )?\d+ .*\b(?:per|each|every)\b(?: \w+)? (?:rows?|row - ends?|row ends?)$/.test(inside) || /^(?:1|one) \w+ (?:in|into) each (?:row(?: -)? end|row)(?: and (?:(?:1|one) \w+ )?(?:in |into )?each st(?:itch)? of (?:the |both |all )?(?:the )?(?:\w+ )?(?:steps?|stairs?))?$/.test(inside) || /^\d+ \w+ (?:in|into) (?:the )?(?:ends?|sides?) of .*\brows?\b/.test(inside)
}

/** `4 sc down side edge (1 in each of Rows 12 to 9)`: what they come to. */
function inRows(inBracket: readonly Token[], last: Instruction | undefined): Num | undefined {
  const [, each, from, to] = /^(\d+) (?:\w+ )?(?:in|into) (?:the (?:ends?|sides?) of )?(?:each of )?(?:the )?rows (\d+) (?:to|-|–) (\d+)$/.exec(wordsOf(inBracket)) ?? []
  const counted = last?.node === 'work' && (last.count ?? last.target?.count)
  return each && counted ? { values: [Number(each) * (Math.abs(Number(to) - Number(from)) + 1)], start: inBracket[0]!.start, end: inBracket.at(-1)!.end } : undefined
}

/** `22 sc down the side (14 in the row-ends, 8 in the sts of the steps)`: the parts of the count before it; gives their sum. */
function partsOfCount(reader: Reader, end: number, before: readonly Instruction[]): Num | undefined {
  const last = before.at(-1)
  const follows = !/^[,;.:*]$/.test(reader.word(-1)) && /^[,;.]?$/.test(reader.all[end + 1]?.text ?? '')
  if (!follows || last?.node !== 'work' || !last.count || last.target?.walk !== 'edge') return undefined
  const inside = new Reader(reader.all.slice(reader.at + 1, end), reader.vocabulary)
  const parts: Num[] = []
  while (!inside.done) {
    const count = takeNumber(inside)
    if (count) takeStitchName(inside)
    if (!count || !inside.take('in|into|on|along|across|over|for|from|at|down|up')) return undefined
    parts.push(count)
    if (/^(each|every)$/.test(inside.word())) return undefined
    while (!inside.done && inside.peek()?.kind !== 'number' && !inside.take(',|;|+')) inside.at += 1
  }
  const values = Array.from({ length: Math.max(...parts.map((part) => part.values.length)) }, (_, size) => parts.reduce((sum, part) => sum + inSize(part, size), 0))
  return parts.length > 1 ? { values, start: parts[0]!.start, end: parts.at(-1)!.end } : undefined
}

/** `dec 1 over next 2 sts (sc2tog)`: how it is done. Behind a comma it is another one. */
function namesDecrease(inBracket: readonly Token[], last: Instruction | undefined): boolean {
  return last?.node === 'work' && last.stitch === 'dec' && (last.over?.values[0] ?? 2) === 2 && /^[a-z]+2tog$/.test(wordsOf(inBracket))
}

/** `(1 inc made)`, `(there's your increase)`, `(dec completed)`: what the stitches before it were for. */
function isOneMade(inBracket: readonly Token[]): boolean {
  const inside = wordsOf(inBracket)
  return /^(?:there[’']s |here[’']s |that[’']s |this is )?(?:1 |one |an? |the |first |second |last )?(?:st |stitch )?(?:inc|dec|increased?|decreased?)(?: (?:made|worked|done|complete|completed|formed))?$/.test(inside) && !/^(?:inc|dec|1 inc|1 dec|one inc|one dec|increase|decrease)$/.test(inside)
}

/** `(another shell made)`, `(first corner complete)`, `(two sides joined)`: what the stitches before have come to. */
function tellsWhatWasMade(inBracket: readonly Token[]): boolean {
  const words = wordsOf(inBracket)
  return inBracket.length > 1 && inBracket.every(({ kind, text }) => kind === 'word' || text === '-') && /\b(?:made|complete|completed|formed|done|joined)$/.test(words) && !/\b(?:in|into|each|just|last)\b/.test(words)
}

const wordsOf = (tokens: readonly Token[]): string => tokens.map(({ text }) => text.toLowerCase()).join(' ')

/** The instructions up to the closing bracket; steps over it. */
function inside(reader: Reader, end: number): readonly Instruction[] {
  const { limit } = reader
  reader.limit = end
  reader.depth += 1
  const items = parseItems(reader, () => false)
  reader.depth -= 1
  reader.limit = limit
  reader.at = end + 1
  return items
}

/** What follows the bracket says what it is. */
function after(reader: Reader, before: readonly Instruction[], items: readonly Instruction[], unit: Repeat['unit'], start: number): Instruction {
  const at = reader.at
  if (reader.take(',|-|–|—')) {
    const said = /^(rep|repeat|work|do)$/.test(reader.word()) || numberAhead(reader) !== undefined && /^times$/.test(reader.word(1))
    if (!said) reader.at = at
  }
  const times = takeTimes(reader)
  if (!times) reader.at = at
  if (times) {
    // `(…) 6 times in ring`, `(…) twice in next sp`: repeated, and all of it in one place.
    const target = /^(in|into)$/.test(reader.word()) ? takeTarget(reader) : undefined
    if (target && (target.walk !== 'each' || target.thing)) {
      const inner: Repeat = { node: 'repeat', items, times, unit, body: bodyOf(items, unit), start, end: reader.end }
      return { node: 'group', items: [inner], target, start, end: reader.end }
    }
    return { node: 'repeat', items, times, unit, body: bodyOf(items, unit), ...takeLastPass(reader), start, end: reader.end }
  }
  // `sc in underside of next 3 added ch, (sc, ch 1, sc) in 4th ch`
  const target = takeOneBehind(reader, before)?.target ?? takeTarget(reader)
  if (target && !(target.walk === 'each' && !target.thing && !target.every)) {
    const counts = target.walk === 'from-hook' ? (takeCountsAs(reader) ?? skippedCountLater(reader)) : undefined
    const group: Instruction = { node: 'group', items, target, ...(counts && { counts }), start, end: reader.end }
    const again = takeTimes(reader)
    return again ? { node: 'repeat', items: [group], times: again, unit, body: unit, start, end: reader.end } : group
  }
  reader.at = at
  return { node: 'repeat', items, times: { kind: 'once' }, unit, body: bodyOf(items, unit), start, end: reader.end }
}

/** The bracket holds no instruction: keep what could matter (a turn, places left, a length), and the rest as an aside. */
function loose(reader: Reader, items: readonly Instruction[], start: number): readonly Instruction[] {
  const { end } = reader
  const inside = reader.all.filter((token) => token.start > start && token.end < end)
  const count = inside.some(({ text }) => /^(st|sts|stitches)$/i.test(text)) ? takeNumber(new Reader(inside, reader.vocabulary)) : undefined
  if (count && inside.some(({ text }) => /^(left|unworked|unused)$/i.test(text))) return [{ node: 'leave', count, start, end }]
  // `(20 sts plus 1 edge st)` is a count that cannot be read, and no remark.
  if (count && !inside.some(({ text }) => /^(rem|remain|remains|remaining)$/i.test(text))) return [{ node: 'unreadable', why: 'word', reason: inside[0]!.text, start, end }]
  const roughly = inside.some(({ text }) => /^(about|approx|approximately)$/i.test(text))
  const kept = items.filter((item) => item.node === 'turn' || item.node === 'leave' || item.node === 'aside' && item.yarn !== undefined
    || item.node === 'unreadable' && (item.why === 'cannot' && !roughly || item.why === 'broken'))
  return kept.length > 0 ? kept : [{ node: 'aside', start, end }]
}

/** `(counts as dc)` after a stitch that could not take it: it is an aside. */
function attach(_before: readonly Instruction[], start: number, end: number): Instruction {
  return { node: 'aside', start, end }
}

function colourOnly(reader: Reader, end: number): string | undefined {
  if (reader.at + 1 !== end) return undefined
  const text = reader.peek()?.text ?? ''
  return reader.vocabulary.yarns.includes(text) || /^([A-Z]|MC|CC)$/.test(text) ? text : undefined
}

/** Index of the token that closes the bracket here; brackets of all kinds nest. */
export function closeOf(reader: Reader): number | undefined {
  const stack: string[] = []
  for (let at = reader.at; at < reader.all.length; at += 1) {
    const text = reader.all[at]!.text
    const close = closing[text]
    if (close) stack.push(close)
    else if (text === stack.at(-1)) {
      stack.pop()
      if (stack.length === 0) return at
    } else if ((text === ')' || text === ']' || text === '}') && stack.length > 0) return undefined
  }
  return undefined
}

function unclosed(reader: Reader, start: number): readonly Instruction[] {
  const end = reader.peek()?.end ?? start
  reader.at += 1
  return [{ node: 'unreadable', why: 'broken', reason: 'a bracket that is not closed', start, end }]
}

function tooDeep(reader: Reader, start: number): readonly Instruction[] {
  reader.at = reader.all.length
  return [{ node: 'unreadable', why: 'broken', reason: 'brackets nested too deeply', start, end: reader.end }]
}
