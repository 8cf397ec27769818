import { parseEnding } from './parse-ending.ts'
import { numberAhead } from './numbers.ts'
import { takeWayAlong } from './parse-way.ts'
import { deepest, parseItems, skipSeparators } from './parse-items.ts'
import { takeTimes } from './parse-times.ts'
import { placeEnds } from './place-ends.ts'
import { Reader } from './reader.ts'
import type { Instruction, Repeat, Times } from './syntax.ts'

/**
 * After the star, to `rep from *` or the second star: the stitches that are repeated.
 *
 *   sc in first st, *dc in next 3 sts, hdc2tog; rep from * across, sc in last st
 *                    ^
 */
export function parseStar(reader: Reader, _before: readonly Instruction[]): readonly Instruction[] | undefined {
  const again = againFromStars(reader)
  if (again) return [again]
  const token = reader.peek()
  if (token?.kind !== 'mark' || reader.depth >= deepest) return undefined
  const mark = token.text
  reader.at += 1
  const body = starred(reader, mark)
  const unit = { start: token.start, end: Math.max(body.end, token.end) }
  const times = closes(reader, mark, body.closed)
  const comesBack = !times && body.closed && comesBackTo(reader, mark)
  if (comesBack) reader.starred.set(mark, body.items)
  const closing = times ?? (comesBack ? { kind: 'in-all', count: { values: [1], start: unit.start, end: unit.end } } : { kind: 'to-end' })
  const tail = takeEnding(reader, body)
  const repeat: Repeat = { node: 'repeat', items: body.items, times: closing, unit, body: bodyOf(body.items, unit), ...tail, start: token.start, end: reader.end }
  return [repeat]
}

/** From the first to the last instruction of what is repeated. */
export function bodyOf(items: readonly Instruction[], unit: Repeat['unit']): Repeat['body'] {
  return items.length === 0 ? unit : { start: items[0]!.start, end: items.at(-1)!.end }
}

interface Body {
  readonly items: readonly Instruction[]
  /** Where a second mark (`**`) stands, by how many items are before it. */
  readonly marks: ReadonlyMap<string, number>
  readonly closed: boolean
  readonly end: number
}

function starred(reader: Reader, mark: string): Body {
  const items: Instruction[] = []
  const marks = new Map<string, number>()
  reader.depth += 1
  let closed = false
  while (!reader.done) {
    items.push(...parseItems(reader, (inner) => inner.peek()?.kind === 'mark' || repeatsFrom(inner)))
    if (reader.done || repeatsFrom(reader)) break
    const next = reader.peek()!.text
    if (next === mark) {
      reader.at += 1
      closed = true
      break
    }
    if (isRepeatedFrom(reader, next)) {
      const nested = parseStar(reader, items)
      if (nested) items.push(...nested)
      else reader.at += 1
    } else {
      marks.set(next, items.length)
      reader.at += 1
    }
  }
  reader.depth -= 1
  return { items, marks, closed, end: reader.end }
}

/** Whether `rep from *` stands here. */
function repeatsFrom(reader: Reader): boolean {
  const at = reader.at
  const found = takeRepeatFrom(reader) !== undefined
  reader.at = at
  return found
}

/** Takes `rep from *`, `repeat from * to **`, `rep between * and *`; gives the marks that it names. */
function takeRepeatFrom(reader: Reader): { readonly from: string; readonly to?: string } | undefined {
  const at = reader.at
  const plainly = leadsBack(reader)
  if (plainly !== undefined) {
    const from = reader.peek()
    if (from?.kind === 'mark') {
      reader.at += 1
      reader.take('s|’s|\'s')
      if (reader.take('to|and|through|until|-|–|—|…', 'second|next?')) {
        const to = reader.peek()
        if (to?.kind === 'mark' && (plainly || to.text === from.text)) {
          reader.at += 1
          return { from: from.text, to: to.text }
        }
        reader.at -= 1
      }
      return { from: from.text }
    }
  }
  reader.at = at
  return undefined
}

/** `rep from`, `work from`, `go back to`, `from`: whether the word to repeat is among them, without which `from * to **` is a part of a pass. */
function leadsBack(reader: Reader): boolean | undefined {
  reader.take('keep', 'on?')
  if (reader.take('rep|repeat|repeating|reps', 'the?', 'instructions|pattern?', 'from|between?', 'first|the?')) return true
  if (reader.take('go|going', 'back', 'to', 'the?') || reader.take('return|returning', 'to', 'the?')) return false
  return reader.take('work|working|do|continue|continuing|again?', 'this|again?', 'from', 'first|the?') ? false : undefined
}

/** Whether a mark that stands inside a repeat is repeated from later, and so begins a repeat of its own. */
function isRepeatedFrom(reader: Reader, mark: string): boolean {
  for (let at = reader.at + 1; at < reader.all.length; at += 1) {
    if (reader.all[at]!.text !== mark) continue
    if (/^(from|between|rep|repeat)$/i.test(reader.all[at - 1]!.text)) return true
  }
  return false
}

/** How often the starred part is worked. */
function closes(reader: Reader, mark: string, closed: boolean): Times | undefined {
  if (closed) {
    const times = takeTimes(reader, 'in-all')
    if (times) return times
  }
  const at = reader.at
  while (!reader.done && /^[,;.]$/.test(reader.word())) reader.at += 1
  const from = takeRepeatFrom(reader)
  if (from?.from === mark) return takeTimes(reader, 'either') ?? { kind: 'to-end' }
  // `*4 sc, inc*, repeat 6 times`
  const times = closed && from === undefined && /^(rep|repeat|repeated)$/.test(reader.word()) ? takeTimes(reader, 'in-all') : undefined
  if (times) return times
  reader.at = at
  return undefined
}

/** `*…*, 7 tr in corner; rep from * to * once`: what stands between the stars is worked here, and once more later. */
function comesBackTo(reader: Reader, mark: string): boolean {
  const { at } = reader
  for (reader.at = at; reader.at < reader.limit; reader.at += 1) {
    const here = reader.at
    const from = takeRepeatFrom(reader)
    if (from && from.from === mark && from.to === mark) {
      reader.at = at
      return true
    }
    reader.at = here
  }
  reader.at = at
  return false
}

/** `on the second pennant`, `along the other end`, or nothing: what stood between the stars comes once more. */
function takeOnce(reader: Reader): Times | undefined {
  const { at } = reader
  const span = { start: reader.start, end: reader.end }
  if (reader.take('on|over|across|along|around|for|at|up|down', 'the?', 'next|other|second|third|fourth|fifth|sixth|2nd|3rd|4th|5th|6th|last|final|opposite|remaining')) {
    while (reader.peek()?.kind === 'word' && numberAhead(reader) === undefined && reader.at - at < 6) reader.at += 1
    if (placeEnds(reader)) return { kind: 'in-all', count: { values: [1], ...span } }
  }
  reader.at = at
  return undefined
}

/** `rep from * to * once` away from its stars. */
function againFromStars(reader: Reader): Repeat | undefined {
  const { at, start } = reader
  const from = takeRepeatFrom(reader)
  const items = from && from.to === from.from ? reader.starred.get(from.from) : undefined
  const times = items && (takeOnce(reader) ?? takeTimes(reader))
  if (items && times && 'count' in times) {
    const unit = { start, end: reader.end }
    return { node: 'repeat', items, times: { kind: 'in-all', count: times.count }, unit, body: bodyOf(items, unit), ...unit }
  }
  reader.at = at
  return undefined
}

type Ending = Pick<Repeat, 'lastPass' | 'ending' | 'omit' | 'thenPass'>

/** `ending last rep at **`, `ending with dc in last 2 sts`, `omitting last ch 3`, `then from * to ** once`. */
function takeEnding(reader: Reader, body: Body): Ending {
  const at = reader.at
  while (!reader.done && /^[,;.]$/.test(reader.word())) reader.at += 1
  const { at: ending } = reader
  if (parseEnding(reader, undefined) || takeWayAlong(reader)) {
    reader.at = ending
    return {}
  }
  reader.take('and?', 'then')
  if (takePartial(reader)) {
    const to = reader.peek(-1)?.text ?? ''
    const items = body.marks.get(to)
    takeTimes(reader)
    if (items !== undefined) return { thenPass: items }
  }
  reader.take('but')
  if (reader.take('end|ending|ends|finish|finishing', 'the?', 'last|final?', 'rep|repeat?', 'at|with|by?', 'with|at?')) {
    const mark = reader.peek()
    if (mark?.kind === 'mark') {
      reader.at += 1
      return { lastPass: body.marks.get(mark.text) ?? body.items.length }
    }
    return { ending: endingItems(reader) }
  }
  if (reader.take('omit|omitting', 'the?', 'last|final?')) {
    // One instruction of the repeat is named; the last pass goes without it.
    const words = reader.all.slice(reader.at)
    const stop = words.findIndex(({ text }) => /^(?:[,;.)]|on|at|in|of|from)$/i.test(text))
    const omitted = parseItems(new Reader(stop < 0 ? words : words.slice(0, stop), reader.vocabulary), () => false)
    reader.at += stop < 0 ? words.length : stop
    if (reader.take('on|at|in|of|from', 'the?', 'end?', 'of?', 'the?', 'last|final', 'rep|repeat')) reader.take('only')
    return { omit: Math.max(1, omitted.length) }
  }
  reader.at = at
  return {}
}

/** `[…] twice, but end last rep with 21 sc`: what the last pass of a bracket ends with. */
export function takeLastPass(reader: Reader): Pick<Repeat, 'ending'> {
  const { at } = reader
  reader.take(',|;?', 'but?')
  if (reader.take('end|ending|finish|finishing', 'the?', 'last|final', 'rep|repeat', 'with|by', 'working?')) return { ending: parseItems(reader, (inner) => /^[,;.]$/.test(inner.word())) }
  reader.at = at
  return {}
}

/** `from * to **` */
function takePartial(reader: Reader): boolean {
  const at = reader.at
  if (reader.take('rep|repeat?', 'from')) {
    if (reader.peek()?.kind === 'mark' && reader.word(1) === 'to' && reader.peek(2)?.kind === 'mark') {
      reader.at += 3
      return true
    }
  }
  reader.at = at
  return false
}

/** What is worked at the end, as far as the joining or turning. */
function endingItems(reader: Reader): readonly Instruction[] {
  const items: Instruction[] = []
  while (!reader.done && !/^(turn|join|fasten)$/.test(reader.word()) && reader.word() !== '.') {
    if (skipSeparators(reader)) continue
    const found = parseItems(reader, (inner) => /^[,;.]$/.test(inner.word()) || /^(turn|join)$/.test(inner.word()))
    items.push(...found)
    if (found.length === 0) break
  }
  return items
}
