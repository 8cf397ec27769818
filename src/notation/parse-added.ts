import { numberAhead } from './numbers.ts'
import { takeOfPiece } from './parse-piece-name.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'

const goesOn = ['across', 'along', 'around', 'work', 'working', 'make']
const whence = 'before|for|after|at|by|in|on|under|below|beneath|to|from|of'

/** Takes how chains came to lie where they are: `that bridge them`, `added before Row 4`, `that were made at the end of Row 3`, `that begin Row 5`, `under Row 5`, `of the step`. */
export function takeAdded(reader: Reader): boolean {
  const { at } = reader
  takeWhence(reader)
  return reader.at > at
}

/** `of Row 10 eave`: what the designer calls them. */
function takeCalled(reader: Reader): boolean {
  const isName = reader.peek()?.kind === 'word' && numberAhead(reader) === undefined && reader.vocabulary.stitchAt([reader.word()]) === undefined && !/^(?:in|on|of|and|to|at|across|along|around)$/.test(reader.word())
  if (isName) reader.at += 1
  return isName
}

/** `of Row 6`, `of Row 6 of Right half`: nothing else stands behind. */
function endsThere(reader: Reader): boolean {
  const { at } = reader
  if (takeOfPiece(reader) && placeEnds(reader, ...goesOn)) return true
  reader.at = at
  return placeEnds(reader, ...goesOn)
}

function takeWhence(reader: Reader): void {
  const { at } = reader
  if (reader.take('that|which', 'bridge|span|cross', 'them|these|it|the?', 'opening|gap|hole?') && endsThere(reader)) return
  reader.at = at
  if (reader.take('of|on|from', 'the|that?', 'separate|spare|added|extra|new', 'ch|chain')) {
    const { at: chain } = reader
    // `at underside of added ch of Row 7`
    if (takeRowNamed(reader, 'of|at|on|in') === undefined) reader.at = chain
    if (endsThere(reader)) return
  }
  reader.at = at
  // `at underside of Row 12 added ch`
  if (takeRowNamed(reader, 'of|at|on') !== undefined && (reader.take('added|extra|spare|separate|extension?', 'ch|chain|chs|chains') || takeCalled(reader)) && endsThere(reader)) return
  reader.at = at
  const clause = reader.take('that|which', 'were|was|you?')
  const made = reader.take('added|made|worked|chained|used|left') || clause && reader.take('begin|begins|began|start|started|lengthen|extend|extended')
  if (reader.take('of|at|from', 'the|this|that?', 'first|second|next|last|lower|upper?', 'step|extension|stair') && endsThere(reader)) return
  reader.take(whence, 'the|its?', 'very?', 'start|beginning|beg|end|foot|base?', 'of?', 'the?')
  const row = takeRowNamed(reader) !== undefined || made && reader.take('step|row|extension')
  if (!row || !endsThere(reader)) reader.at = at
}
