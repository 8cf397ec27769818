import { numberAhead } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'

/** Words for places of a piece that a row along its edges begins or ends at. */
const nouns = 'corner|corners|end|edge|side|top|bottom|base|tip|point|start|beginning|foundation|step|neck|neckline|slit|slot|opening|shoulder|hem|armhole|underarm|waist|cuff|row|ch|chain|underside'
const noun = new RegExp(`^(?:${nouns}|shaping|line)$`)
/** Words that stand between them. */
const between = /^(?:the|its|of|at|left|right|hand|upper|lower|topmost|bottommost|front|back|outer|inner|first|last|final|next|other|opposite|far|near|long|short|starting|center|centre|middle|inside|outside|side|spare|added|separate|-|’|'|’s|'s)$/

/** `to`, `up to`, `all the way back down to`, `, stopping at`, `as far as`, `until you reach` */
export function takeWayTo(reader: Reader): boolean {
  reader.take(',?', 'and?', 'ending|stopping|finishing?')
  return reader.take('right|all?', 'the?', 'way?', 'back?', 'up|down|along|across|back?', 'to|toward|towards|at') || reader.take('as', 'far', 'as') || reader.take('until|till', 'you|it?', 'reach|reaches|meet|meets') || reader.take('until|till', 'you', 'get|come', 'to')
}

/** `to the corner`, `to the top`, `down to the foundation ch`, `as far as the neck`: as far as the edge goes. */
export function takeWholeWay(reader: Reader): void {
  const { at } = reader
  if (takeWayTo(reader) && takeLandmark(reader)) return
  reader.at = at
  // `to the corner ch-2 sp` stops before it.
  reader.take('to', 'the?', 'next|opposite|other|top|bottom|upper|lower?', 'corner|corners') || reader.take('to', 'the?', 'top|bottom', 'edge?')
}

/** `the bottom right-hand corner`, `Row 12`, `the top of the first shoulder`, `level with the last row`, `the foundation chain`: a place by its words. Nothing else may follow. */
export function takeLandmark(reader: Reader): boolean {
  const { at } = reader
  reader.take('level', 'with')
  let named = false
  for (;;) {
    const { at: from } = reader
    if (takeRowNamed(reader) !== undefined || takePieceName(reader) !== undefined || reader.take('center|centre|middle|held|skipped|waiting', 'neck?', 'st|sts|stitch|stitches')) named = true
    else if (noun.test(reader.word())) {
      named = true
      reader.at += 1
    } else if (between.test(reader.word())) reader.at += 1
    if (reader.at === from) break
  }
  const ends = reader.done || /^(?:[,.;:()[\]*–—]|and|then|with|work|working|making|turn|along|up|down|to|as|inclusive)$/.test(reader.word())
  if (named && ends && !/^(?:the|of|at|-)$/.test(reader.word(-1))) {
    reader.take('inclusive')
    return true
  }
  reader.at = at
  return false
}

/** `from the lower to the upper corner`: what the one behind is, the first is too. */
const takeHandOf = (reader: Reader): boolean => reader.take('the?', 'lower|upper|top|bottom|left|right', '-?', 'hand?') && /^(?:to|towards?)$/.test(reader.word())

/** `from the top left corner`, `starting at the foundation and ending level with Row 12`, `from Row 1 up to Row 12`: the way along an edge, told apart from what is worked there. */
export function takeWayAlong(reader: Reader): boolean {
  const { at } = reader
  reader.take('and')
  const from = begins(reader) && (takeLandmark(reader) || takeHandOf(reader))
  const { at: here } = reader
  if (!from) reader.at = at
  reader.take(',?', 'and')
  const ends = (reader.take('ending|finishing|stopping', 'at|in|with|on?', 'the?') || takeWayTo(reader)) && takeLandmark(reader)
  if (!ends) reader.at = from ? here : at
  return reader.at > at
}

const begins = (reader: Reader): boolean => reader.take('starting|beginning|commencing|begin|start|beg', 'at|in|from|with|on?') || reader.take('from') && numberAhead(reader) === undefined
