import { numberAhead, takeNumber } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import type { Target } from './target.ts'
import { takeInwardCorner } from './which-corner.ts'

const stitch = 'st|sts|stitch|stitches|one'

/**
 * Where an edge turns inwards, two stitches meet, the last of one side and the first of the next:
 *
 *   over the 2 sc that meet at each of the 4 inner corners   at each inner corner   over the 2 sts on either side of the inner corner
 *   over the last sc before and the first sc after each inner corner
 *   over last st of row-ends and first st of step   where the row-ends meet the step
 *
 * `again`: three are worked together, where two of the round below were already.
 */
export function takeInnerCorner(reader: Reader, again = false): Target | undefined {
  const { at, start } = reader
  const thing = { kind: 'stitch', where: 'inner', ...(again && { again }) } as const
  if (!again && twoEdges(reader)) return { walk: 'next', thing, start, end: reader.end }
  if (!again && lastAndFirst(reader) || meeting(reader, again ? '3' : '2')) {
    const each = reader.take('each|every|all|any', 'of?', 'the?')
    const count = takeNumber(reader)
    if (takeInwardCorner(reader) || again && takeHollow(reader)) {
      const one = !each && !count && reader.word(-1) === 'corner'
      legsTold(reader)
      return { walk: one ? 'next' : 'each', ...(count && { count }), thing, start, end: reader.end }
    }
  }
  reader.at = at
  return undefined
}

/** `the pit of the cleft`, `the bottom of the notch`: where three are worked together in a hollow. */
function takeHollow(reader: Reader): boolean {
  reader.take('pit|bottom|base|foot|depth', 'of', 'the|each')
  return reader.take('cleft|notch|valley|hollow|dip|v|fork')
}

/** `over the last st before and the first st after` */
function lastAndFirst(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('over|across|using', 'the?', 'last') && takesStitch(reader) && reader.take('before', 'and', 'the?', 'first') && takesStitch(reader) && reader.take('after', 'the?')) return true
  reader.at = at
  return false
}

/** `over the 2 sc that meet at`, `over 2 sts on either side of`, `at` */
function meeting(reader: Reader, sts: '2' | '3'): boolean {
  const { at } = reader
  const pair = reader.take('over|across|using|through|in|with?', 'the?') && takeNumber(reader)?.values.join() === sts && takesStitch(reader)
  if (!pair) reader.at = at
  reader.take('that|which|where|meeting?', 'they?', 'meet|are|lie|come|form|make?', 'together?')
  const met = reader.take('at|in|on|over|across|around|into', 'the?') || /^(?:form|make)$/.test(reader.word(-1)) && (reader.take('the') || true)
  reader.take('angle|crook|bend', 'of', 'the?')
  reader.take('either|each|both', 'side|sides', 'of', 'the?')
  return met
}

const takesStitch = (reader: Reader): boolean => takeStitchName(reader) !== undefined || reader.take(stitch)

/** `over the last st of the row-ends and the first st along the step`, `where the row-ends meet the step`: the two edges, and no corner by its name. */
function twoEdges(reader: Reader): boolean {
  const { at } = reader
  const words = [...legWords(reader)]
  const ofLast = /^(?:over|across|using)$/.test(words[0] ?? '') && /^(?:last|final)$/.test(words[words[1] === 'the' ? 2 : 1] ?? '') && words.includes('first') && words.includes('and')
  const met = words[0] === 'where' && words.some((word) => /^meets?$/.test(word))
  if ((ofLast || met) && words.some((word) => /^(?:step|ends?|side|edge)$/.test(word)) && !words.includes('corner')) {
    reader.at += words.length
    if (placeEnds(reader)) return true
  }
  reader.at = at
  return false
}

/** Words in which the two stitches at an inner corner are told; none of them counts more than those. */
const telling = /^(?:over|across|using|taking|in|where|with|the|that|this|those|which|it|there|last|final|first|next|other|before|after|of|on|from|at|along|and|either|each|both|side|sides|edge|edges|row|row-ends?|-|end|ends|step|steps|meet|meets|belonging|to|inner|inside|inward|corner|unworked|unused|free|skipped|one|st|sts|stitch|stitches)$/

/** Between brackets or dashes a comma may stand for `and`. */
function* legWords(reader: Reader, comma?: boolean): Generator<string> {
  for (let ahead = 0; reader.at + ahead < reader.limit; ahead += 1) {
    const word = comma && reader.word(ahead) === ',' ? 'and' : reader.word(ahead)
    const number = numberAhead(reader, ahead)
    if (number === undefined ? !telling.test(word) && reader.vocabulary.stitchAt([word]) === undefined : number > 2 && !/^(?:row|rnd|round)$/.test(reader.word(ahead - 1))) return
    yield word
  }
}

/** Takes `over the last sc of the row-ends and the first sc of the step`, `(1 st from each edge)`, `: the last one on the row-ends and the first one on the step` behind; with `then`, what must follow. */
export function legsTold(reader: Reader, then?: 'together'): boolean {
  const { at } = reader
  const open = reader.take('(|–|—') ? reader.word(-1) : undefined
  if (!open && !then && !/^(?:over|across|using|taking)$/.test(reader.word()) && !reader.take(',|:')) return false
  const words = [...legWords(reader, open !== undefined)]
  reader.at += words.length
  const ofEach = / (?:each|either|both)\b/.test(words.join(' '))
  const two = words.some((word) => /^(?:2|two|and|each|both|either)$/.test(word)) && !(ofEach && words.includes('2') && words.includes('from'))
  if (two && (then ? reader.take('tog|together') : open ? reader.take(open === '(' ? ')' : open) : placeEnds(reader))) {
    if (then) legsTold(reader)
    return true
  }
  reader.at = at
  return false
}
