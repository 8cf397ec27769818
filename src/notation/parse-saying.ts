import { numberAhead } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import { isQuiet } from './parse-remark.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'

const ends = /^[.;:,(]$/

/** Where a clause begins. */
const begins = (reader: Reader): boolean => [-1, reader.word(-1) === 'work' ? -2 : -1].some((back) => reader.at + back < 0 || /^[.;:,)]$/.test(reader.word(back)))

/** Takes a clause that only says what comes, or how things lie: `Border:`, `This row joins the two shoulders.` It has no number, no stitch and no work of its own. */
export const takeSaying = (reader: Reader): boolean => begins(reader) && (takeHeading(reader) || takeStatement(reader))

/** `Border:`, `Extend the row:`, `Next comes the edge with the slip stitches:` — what stands behind the colon is worked. */
function takeHeading(reader: Reader): boolean {
  const { at } = reader
  const { to, stitches } = clause(reader)
  const last = reader.word(to - 1 - at)
  const heads = reader.word(to - at) === ':' && to - at < 12 && !/^(?:repeat|rep|corner|corners|times|until|note)$/.test(last)
  if (heads && isQuiet(reader, at, stitches ?? to, 'next', 'once', 'around', 'round') && reader.all.slice(at, to).every(({ kind }) => kind !== 'number')) return (reader.at = to) > at
  return false
}

const verbs = /^(?:is|are|will|comes?|lies?|falls?|sits?|stays?|remains?|forms?|joins?|closes?|makes?|tidies|neatens|begins?|starts?|goes|gives?|shapes?|widens?|lengthens?|shows?|faces|forming|touches)$/
const subjects = /^(?:the|this|these|that|those|both|all|three|two|four|you|we|it|for|a|an|each|next|now|there)$/
/** What may be said of work in general. */
const general = ['work', 'works', 'worked', 'working', 'around', 'round', 'across', 'turning']

/** `This row joins the two shoulders.`, `the flap is worked on the top edge of the border only.`, `you are now going to work around all four edges.` */
function takeStatement(reader: Reader): boolean {
  const { at } = reader
  const { to } = clause(reader)
  const isSaid = subjects.test(reader.word()) && reader.all.slice(at, to).some(({ text }) => verbs.test(text.toLowerCase()))
  if (!isSaid || reader.word(to - at) === '(') return false
  reader.at = at
  let quiet = true
  while (reader.at < to && quiet) {
    const from = reader.at
    if (takeParts(reader) || takePieceName(reader) !== undefined) continue
    quiet = isQuiet(reader, from, from + 1, ...general)
    reader.at = from + 1
  }
  reader.at = quiet ? to : at
  return quiet
}

const parts = 'edges|sides|shoulders|halves|pieces|parts|panels|corners|steps|armholes|buttons|fronts|straps|flaps|layers'

/** `two shoulders`, `all four edges`: how many parts there are, in a word. */
const takeParts = (reader: Reader): boolean => reader.peek()?.kind === 'word' && numberAhead(reader) !== undefined && reader.take(reader.word(), parts)

/** As far as its sign, and where `with the sl sts` begins that tells which edge is meant. */
function clause(reader: Reader): { readonly to: number; readonly stitches?: number } {
  const { at } = reader
  let stitches: number | undefined
  while (!reader.done && !ends.test(reader.word())) {
    const { at: here } = reader
    if (takeWhichStitches(reader)) stitches = here
    else reader.at += 1
  }
  const to = reader.at
  reader.at = at
  return stitches === undefined || !ends.test(reader.word(to - at)) ? { to } : { to, stitches }
}

/** `with the slip stitches`, `of the unworked sts`: by which stitches an edge is told. No number, and the clause ends behind it. */
export function takeWhichStitches(reader: Reader): boolean {
  const { at } = reader
  const named = reader.take('with|where|of', 'the', 'unworked|free|left|skipped?') && numberAhead(reader) === undefined && takeThing(reader)?.kind === 'stitch'
  if (named && (reader.done || ends.test(reader.word()))) return true
  reader.at = at
  return false
}
