import { motifWords } from './motif-words.ts'
import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'

/** Takes what a border finds where two motifs meet: `joined corner sps`, `joined corners`, `join`, `join between the two hexagons`. */
export function takeJoinName(reader: Reader): boolean {
  if (!reader.take('joined', 'corner|corners', 'sp|sps|space|spaces|st|sts?') && !reader.take('join|joins')) return false
  takeBetween(reader)
  return true
}

const motifs = 'neighbour|neighbor|neighbours|neighbors|neighbouring|neighboring|previous|first|other|finished|adjacent|adjoining|joined|next'

const ofMotif = new RegExp(`^(?:${motifs})$`)

/** Takes what a joining round counts of itself: `joins to the neighbor`, `joining sl sts`, `places joined to previous squares`. A join by itself may be the round's own. */
export function takeJoins(reader: Reader): boolean {
  const { at } = reader
  const named = reader.take('join|joins|joinings') || reader.take('joining', 'sl|slip', 'st|sts|stitch|stitches') || reader.take('joining', 'ss|slsts') || reader.take('place|places|sp|sps|space|spaces', 'joined')
  reader.take('made|worked')
  const joining = /^joining$/i.test(reader.all[at]?.text ?? '')
  if (named && (toNeighbour(reader) || joining) && (reader.done || /^[,;.:+&]$|^and$/.test(reader.word()))) return true
  reader.at = at
  return false
}

/** `to the neighbor`, `with previous squares`, `to First square` */
function toNeighbour(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('to|with|on|onto', 'the|its|both|each|all?', 'of?', 'the?')) {
    reader.take(motifs)
    if (reader.take(motifWords) || takePieceName(reader) !== undefined || ofMotif.test(reader.word(-1))) return true
  }
  reader.at = at
  return false
}

/** Takes which of the places at a join is meant, or where along the edge: `before the join`, `either side of each join`, `after both joined corners`. */
export function takeBesideJoin(reader: Reader): boolean {
  const { at } = reader
  const head = reader.take('on?', 'either|each|both', 'side|sides', 'of') || reader.take('just|immediately|directly?', 'before|after|beside|at|past')
  reader.take('the|a|each|every|next?', 'next?')
  if (head && (reader.take('join|joins|joining') || reader.take('both|two|last?', 'joined', 'corner|corners', 'sp|sps?') || joinNamed(reader) && reader.take('it|that'))) {
    takeBetween(reader)
    return true
  }
  reader.at = at
  return false
}

/** `1 sc in the corner sp before the join, 1 sc in the corner sp after it` */
const joinNamed = (reader: Reader): boolean => reader.all.slice(0, reader.at).some(({ text }) => /^joins?$/i.test(text)) && /^(?:[,;.)\]]|and)?$/.test(reader.word(1))

/** `between the two hexagons`, `between First and Second square` */
function takeBetween(reader: Reader): void {
  const { at } = reader
  if (!reader.take('between|of', 'the?', 'two|2|both?')) return
  const named = takePieceName(reader) !== undefined && (!reader.take('and') || takePieceName(reader) !== undefined)
  if (!named && !reader.take(motifWords)) reader.at = at
}
