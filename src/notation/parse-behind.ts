import { numberAhead } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Aside, Instruction } from './syntax.ts'

const behind = 'after|past|beyond|beside|from|following|by'
const other = /^(row|rows|rnd|rnds|round|rounds|st|sts|stitch|stitches|ch|chs|chain|sp|space|loop|loops|marker|m|hook|turn|join|repeat|rep|each|every|ring)$/
const mostWords = 4

/** `skip next 20 sts after the first earflap`, `beyond First ear flap`: places are counted from the end of another part on. Said before anything is worked. */
export function parseBehind(reader: Reader, before: readonly Instruction[]): readonly Aside[] | undefined {
  if (before.some(({ node }) => node !== 'skip' && node !== 'start' && node !== 'aside')) return undefined
  const { at, start } = reader
  reader.take('counting|count|starting|beginning')
  if ((takeBehind(reader) || reader.take('next', 'to') || reader.take('to', 'the', 'left|right', 'of')) && (takePieceName(reader) !== undefined || takePart(reader)) && atEnd(reader)) return [{ node: 'aside', behind: true, start, end: reader.end }]
  reader.at = at
  return undefined
}

/** `after`, `from the edge of` */
const takeBehind = (reader: Reader): boolean => reader.take(behind, 'the?', 'edge|end|side|last', 'st|stitch?', 'of') || reader.take(behind)

/** `after Tab A`, `past the last st of Tab A`, `after Row 1 of the strap` */
export function takeBehindPiece(reader: Reader): boolean {
  const { at } = reader
  if (takeBehind(reader)) {
    takeRowNamed(reader, 'the?')
    if (/^(?:of|on)$/.test(reader.word())) reader.take('of|on', 'the?')
    if (takePieceName(reader) !== undefined) return true
  }
  reader.at = at
  return false
}

/** `the first earflap`, `first flap`: a part, by words that name no stitch, row or place. */
function takePart(reader: Reader): boolean {
  if (!reader.take('the?', 'first|second|third|last|previous|other|left|right|1st|2nd') && !reader.take('the')) return false
  const from = reader.at
  while (!atEnd(reader)) {
    if (reader.peek()?.kind !== 'word' || numberAhead(reader) !== undefined || other.test(reader.word()) || reader.vocabulary.stitchAt([reader.word()]) !== undefined) return false
    reader.at += 1
  }
  return reader.at > from && reader.at - from <= mostWords
}

const atEnd = (reader: Reader): boolean => placeEnds(reader, 'skip', 'sk', 'miss')
