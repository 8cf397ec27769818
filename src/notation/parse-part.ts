import type { Reader } from './reader.ts'
import type { Start } from './syntax.ts'
import type { Target } from './target.ts'

const which = 'first|second|third|fourth|1st|2nd|3rd|other|opposite|left|right|remaining|this|same'
const parts = 'shoulder|half|part|section|strap|flap|side|panel|tab|front|point|peak|prong|wing'
const bothParts = 'shoulders|halves|parts|sections|straps|flaps|sides|panels|tabs|fronts|points|peaks|prongs|wings'
const heads = 'of|on|across|over|along|from|around'

interface Part {
  /** In small letters: `second shoulder`; `both` for all that are there. */
  readonly name: string
  /** Index behind its words. */
  readonly to: number
}

/** `of second shoulder`, `across the other half`, `over the right back neck side`: a part that was worked apart from this one. Takes nothing. */
export function partAhead(reader: Reader): Part | undefined {
  const { at } = reader
  const top = reader.take('at|on|along|across', 'the?', 'top|upper|last', 'edge|row?', 'of')
  const name = top || reader.take(heads) ? (partName(reader) ?? oneOfTwo(reader)) : undefined
  const found = name !== undefined && endsHere(reader) ? { name, to: reader.at } : undefined
  reader.at = at
  return found
}

/** `each of the 9 second shoulder sts`: the part stands before its stitches. */
export function takePartBefore(reader: Reader): string | undefined {
  const { at } = reader
  const name = partName(reader)
  if (name !== undefined && name !== both && /^(st|sts|stitch|stitches)$/.test(reader.word(-1))) {
    reader.at -= 1
    return name
  }
  reader.at = at
  return undefined
}

/** `sc in 9 sc of this shoulder, ch 10, sc in 9 sc of the other` */
function oneOfTwo(reader: Reader): string | undefined {
  const from = reader.at
  return reader.take('the', 'other|first|second', 'one?') ? words(reader, from).replace('the ', '') : undefined
}

/** The target with the part that its words name. */
export function withPart<Into extends Partial<Target>>(reader: Reader, target: Into, { name, to }: Part): Into {
  reader.at = Math.max(reader.at, to)
  return { ...target, ofPart: name, ...(target.end !== undefined && { end: reader.end }) }
}

/** `Pick up the waiting loop of the first shoulder`, `return to the first half`, `working across second shoulder`: where the row begins or goes on. */
export function parsePartStart(reader: Reader): readonly Start[] | undefined {
  const { at, start } = reader
  const ofPart = waitingPart(reader) ?? partGoneTo(reader) ?? joinedAtEdge(reader)
  if (ofPart !== undefined && ofPart !== both && endsHere(reader)) return [{ node: 'start', target: { walk: 'first', ofPart, start, end: reader.end }, start, end: reader.end }]
  reader.at = at
  return undefined
}

/** `pick up the waiting loop of the first shoulder`, `with the yarn left at the first shoulder`, `insert hook in held loop of first shoulder` */
function waitingPart(reader: Reader): string | undefined {
  const { at } = reader
  const takes = reader.take('pick|picking', 'up') || reader.take('insert|put', 'the|your?', 'hook', 'back?', 'in|into') || reader.take('with|using') || reader.take('take|place|put', 'up?') || reader.take('return|returning|go|going', 'back?', 'to')
  const loop = takes && (reader.take('the?', waiting, loops, 'that|which?', 'is|was|you?', `${waiting}?`) || reader.take('the?', loops, 'that|which?', 'is|was|you?', `${waiting}?`)) && reader.take('of|at|on|from|for')
  const name = loop ? partName(reader) : undefined
  if (name === undefined) reader.at = at
  else reader.take('again|back', 'on|onto?', 'the?', 'hook?')
  return name
}

/** `return to the first half`, `pick up the first shoulder`, `continuing on to first shoulder`; along a side lie its row-ends. */
function partGoneTo(reader: Reader): string | undefined {
  const { at } = reader
  if (reader.take('return|returning|go|going', 'back?', 'to') || reader.take('pick|picking', 'up')) return partName(reader)
  const joined = reader.take('join|joining', 'to') ? partName(reader) : undefined
  if (joined !== undefined && reader.take('by', 'working')) return joined
  reader.at = at
  const over = reader.take('now|then?', 'working|continuing|continue|work|going|go', 'on|along?', 'across|over|onto|to|on|along') || reader.take('continue|continuing|go|going|keep', 'going?', 'on|onto|across|over') ? partName(reader) : undefined
  if (over !== undefined && !over.endsWith(' side')) return over
  reader.at = at
  return undefined
}

/** `join yarn at the side edge of the first half`, before a row that goes over to another part. */
function joinedAtEdge(reader: Reader): string | undefined {
  const { at } = reader
  if (reader.take('join|rejoin|attach|joining|rejoining', 'the?', 'new?', 'yarn|thread', 'at|to|on|in', 'the')) {
    while (/^(?:side|outer|inner|neck|armhole|free|right|left|hand|-)$/.test(reader.word()) && reader.word(1) !== 'of') reader.at += 1
    const name = reader.take('edge|end|corner|side', 'of') ? partName(reader) : undefined
    const behind = name === undefined ? '' : words(reader, reader.at, reader.limit)
    if (reader.vocabulary.parts?.some((other) => other !== name && behind.includes(other))) return name
  }
  reader.at = at
  return undefined
}

const loops = 'loop|yarn|thread|st|stitch'
const waiting = 'waiting|held|live|dropped|marked|left|saved|parked|resting|hanging'
/** All parts that are there. */
export const both = 'both'

function partName(reader: Reader): string | undefined {
  const { at } = reader
  reader.take('the')
  const from = reader.at
  const all = reader.take('both|two', 'of?', 'the?', bothParts)
  const heading = all ? undefined : reader.vocabulary.parts?.find((name) => reader.take(...name.split(' ')))
  const one = heading ?? (!all && reader.take(which, '-?', 'hand?', 'back|front|neck?', parts) ? words(reader, from) : undefined)
  if (!all && one === undefined) reader.at = at
  else reader.take('st|sts|stitch|stitches')
  return all || one !== undefined && takeAnother(reader) ? both : one
}

/** `left side and right side`, `first shoulder, then second shoulder` */
function takeAnother(reader: Reader): boolean {
  const { at } = reader
  if ((reader.take(',?', 'and|then|&') || reader.take(',', 'and', 'then')) && reader.take('across|over|of|on?', 'the?', which, '-?', 'hand?', 'back|front|neck?', parts)) return true
  reader.at = at
  return false
}

const words = (reader: Reader, from: number, to = reader.at): string => reader.all.slice(from, to).map(({ text }) => text.toLowerCase()).join(' ')

const endsHere = (reader: Reader): boolean => reader.done || reader.word(-1) === 'working' || /^([,;.:()[\]]|[-–—]|and|then|to|for|with|evenly|beginning|starting|ending|from)$/.test(reader.word())
