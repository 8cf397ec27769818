import { numberAhead } from './numbers.ts'
import { unworked } from './parse-adjective.ts'
import { partAhead } from './parse-part.ts'
import { takePieceName } from './parse-piece-name.ts'
import { isQuiet } from './parse-remark.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Instruction } from './syntax.ts'

const hollow = 'opening|cleft|notch|slit|slot|gap|valley|dip|hollow|neck|armhole'

/** `down into the cleft`, `into the opening`, `up again`, `along the wall with`: which way the edge goes on, as a clause of its own or before what is worked there. */
export function parseThither(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const begins = at === 0 || /^(?:[,.;:()]|and|now|work|working)$/.test(reader.word(-1))
  const goes = begins && (reader.take('up|down|back|along?', 'into|in', 'the', hollow) || reader.take('and?', 'up|down|back|out|along', 'again'))
  if (goes && (reader.done || /^[,;:]$/.test(reader.word()))) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  if (begins && (alongWhatIsLeft(reader) || alongSomething(reader))) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  return undefined
}

/** `over First tower,`, `over the top of Second end,`, `along last row of left shoulder,`: the piece or part that the edge leads over, as a clause of its own. */
export function takeOverPart(reader: Reader): boolean {
  const { at } = reader
  const ahead = partAhead(reader)
  if (ahead && reader.all[ahead.to]?.text === ',') {
    reader.at = ahead.to
    return true
  }
  if (reader.take('over|along|across|round|around')) {
    reader.take('the?', 'top|end|edge|tip', 'of')
    const part = takePieceName(reader) !== undefined || reader.take('the?', 'first|second|third|fourth|left|right|other|upper|lower') && isQuiet(reader, reader.at, reader.at + 1) && (reader.at += 1) > 0
    if (part && /^[,:]$/.test(reader.word())) return true
  }
  reader.at = at
  return false
}

/** `along the unworked sts of Row 8,`, `along the sts left at Row 16,`: the step that comes next. */
function alongWhatIsLeft(reader: Reader): boolean {
  const { at } = reader
  const left = reader.take('along|across|over', 'the?') && reader.take(`${unworked}|skipped|left|slip?`, '-?', 'over|stitched?', 'sts|stitches')
  const told = left && (reader.take('left|remaining?', 'unworked?'), takeRowNamed(reader, 'of|at|in|on|by', 'the?')) !== undefined
  if (told && (reader.done || /^[,:;]$/.test(reader.word()))) return true
  reader.at = at
  return false
}

/** `along the hollow with sc in each of next 10 row-ends`: what the designer calls an edge. */
function alongSomething(reader: Reader): boolean {
  if (!reader.take('along|up|down|across|over|around|round', 'the')) return false
  const { at: from } = reader
  while (!reader.done && reader.peek()?.kind === 'word' && reader.word() !== 'with' && reader.at - from < 3) reader.at += 1
  if (!isQuiet(reader, from, reader.at) || !reader.take('with')) return false
  return numberAhead(reader) !== undefined || reader.vocabulary.stitchAt([reader.word(), reader.word(1)]) !== undefined
}
