import { takeWhereabouts } from './parse-where.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Target } from './target.ts'
import { toSeparator } from './to-separator.ts'

/** `to the base of Row 1 at the right-hand side`, `to the foundation edge at the lower left corner`: where a side begins. */
export function footOfSide(reader: Reader): boolean {
  const { at } = reader
  const edge = reader.take('to|at', 'the?', 'foundation|lower|bottom|starting', 'edge') || reader.take('to|at', 'the?', 'base|foot|bottom|beginning|start', 'of') && takeRowNamed(reader) !== undefined
  const foot = edge && takeWhereabouts(reader)
  if (foot && foot.some((word) => word === 'left' || word === 'right')) return true
  reader.at = at
  return false
}

/** `at right-hand corner`, `in top left corner`, `at beginning of edge`: where on the edge, in words that name no stitch. */
export function cornerInWords(reader: Reader): boolean {
  const { at } = reader
  reader.at += 1
  reader.take('the|any?')
  const hand = reader.take('top|bottom|upper|lower|right|left|other|opposite|next|first|beginning|beg|end|start|one')
  while (reader.take('top|bottom|upper|lower|right|left|-|hand|side')) continue
  // `at the corner where Row 17 finished`
  if (reader.take('corner|corners|end|edge|side|point|tip', 'where')) {
    toSeparator(reader)
    return true
  }
  const named = hand && (reader.take('corner|corners|end|edge|side', 'of?', 'the?', 'long|short|side|neck?', 'edge|side|piece?') || reader.take('of', 'the|one?', 'long|short|left|right|first|neck?', 'edge|side|row|neck'))
  if (!named || !placeEnds(reader)) reader.at = at
  return named && reader.at !== at
}

/** `at centre back`, `in the middle of the nape`: where on a round, in words that name no stitch. */
export function centreInWords(reader: Reader): boolean {
  const { at } = reader
  reader.at += 1
  if (reader.take('the?', 'centre|center|middle', '-?', 'of?', 'the?', 'back|front|nape|forehead|neck|chin', 'edge|neck|of?', 'the?', 'hat|crown|brim|neck?') && (reader.done || /^[,.;:(]$/.test(reader.word()))) return true
  reader.at = at
  return false
}

/** `at heel end of Row 6`, `at the base of the right side of the flap`: which place that is, the piece tells and not the row. */
export function endInWords(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('at', 'the', 'base|foot|bottom', 'of')) {
    reader.at = at
    return takeWhereabouts(reader) !== undefined
  }
  reader.take('at', 'the?')
  if (reader.peek()?.kind === 'word' && !/^(left|right|end)$/.test(reader.word()) && reader.word(1) === 'end') {
    reader.at += 2
    if (takeRowNamed(reader, 'of') !== undefined && (reader.done || /^[,.;:(]$/.test(reader.word()))) return true
  }
  reader.at = at
  return false
}

/** `in the unworked sc at the inner corner`, `in the sc next to the step`, `in first st of the ledge`: where a step begins. */
export function isAtStep(reader: Reader, from: number, { walk, thing, count }: Target): boolean {
  if (thing?.kind !== 'stitch' || count || !/^(?:first|next)$/.test(walk)) return false
  const said = reader.all.slice(from, reader.at).map(({ text }) => text.toLowerCase()).join(' ')
  const near = /\b(?:beside|next to|nearest|closest|closest to)\b/.test(said)
  return near && /\b(?:step|ledge|shelf|upright|notch|angle)\b/.test(said) || /\b(?:unworked|free)\b/.test(said) && (near && /\brow \d/.test(said) || /\binner (?:corner|end)\b/.test(said)) || walk === 'first' && /\bof the (?:step|ledge|shelf)\b/.test(said)
}
