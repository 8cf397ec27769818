import type { Reader } from './reader.ts'
import type { Start, Target } from './syntax.ts'

const which = 'first|second|third|fourth|1st|2nd|3rd|other|opposite|left|right|remaining'
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
  const name = reader.take(heads) ? partName(reader) : undefined
  const found = name !== undefined && endsHere(reader) ? { name, to: reader.at } : undefined
  reader.at = at
  return found
}

/** The target with the part that its words name. */
export function withPart<Into extends Partial<Target>>(reader: Reader, target: Into, { name, to }: Part): Into {
  reader.at = Math.max(reader.at, to)
  return { ...target, ofPart: name, ...(target.end !== undefined && { end: reader.end }) }
}

/** `Pick up the waiting loop of the first shoulder`, `return to the first half`: where the row begins. */
export function parsePartStart(reader: Reader): readonly Start[] | undefined {
  const { at, start } = reader
  const goes = reader.take('pick|picking', 'up') || reader.take('return|returning|go|going', 'back?', 'to') || reader.take('insert|put', 'the|your?', 'hook', 'back?', 'in|into') || reader.take('with|using') || reader.take('take|place|put', 'up?')
  if (goes) {
    const waits = reader.take('the?', waiting, 'loop|yarn|thread|st|stitch?', 'that|which?', 'is|was|you?', `${waiting}?`)
      || reader.take('the?', 'loop|yarn|thread', 'that|which?', 'is|was|you?', `${waiting}?`) || /^(to|up)$/.test(reader.word(-1))
    if (waits) reader.take('of|at|on|from|for')
    const name = waits ? partName(reader) : undefined
    reader.take('again|back', 'on|onto?', 'the?', 'hook?')
    if (name !== undefined && name !== both && endsHere(reader)) return [{ node: 'start', target: { walk: 'first', ofPart: name, start, end: reader.end }, start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

const waiting = 'waiting|held|live|dropped|marked|left|saved|parked|resting|hanging'
/** All parts that are there. */
export const both = 'both'

function partName(reader: Reader): string | undefined {
  reader.take('the')
  const heading = reader.vocabulary.parts?.find((name) => reader.take(...name.split(' ')))
  const from = reader.at
  const all = heading === undefined && (reader.take('both|two', 'of?', 'the?', bothParts) || reader.take('both', 'of?', 'the', bothParts))
  const one = heading ?? (!all && reader.take(which, '-?', 'hand?', 'back|front|neck?', parts) ? words(reader, from) : undefined)
  reader.take('st|sts|stitch|stitches')
  return all ? both : one
}

const words = (reader: Reader, from: number): string => reader.all.slice(from, reader.at).map(({ text }) => text.toLowerCase()).join(' ')

const endsHere = (reader: Reader): boolean => reader.done || /^([,;.:()[\]]|[-–—]|and|then|to|for|with|evenly)$/.test(reader.word())
