import { motifWord } from './motif-words.ts'
import { takePieceName } from './parse-piece-name.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import type { Aside } from './syntax.ts'

const which = 'front|back|top|upper|lower|under|bottom|single|inner|outer|first|second|near|nearer|far|facing|left|right'
const layer = 'layer|thickness|piece|panel|part|half|flap|front|back|bib|pocket|lining|cover'

/** `working on flap only,`, `through the front layer only:`, `now on the back hexagon alone`, `no longer through both layers`: what follows takes the places of one layer. */
export function parseOneLayer(reader: Reader): readonly Aside[] | undefined {
  const { at, start } = reader
  const begins = at === 0 || /^(?:[,.;:()]|and|then|now)$/.test(reader.word(-1))
  reader.take('now|then|from', 'here?', 'on?')
  const ended = begins && reader.take('no', 'longer|more') && reader.take('working?', 'through', 'both|two', 'layers|thicknesses|pieces')
  if (ended && placeEnds(reader)) return [{ node: 'aside', oneLayer: true, start, end: reader.end }]
  reader.take('work|working|go|going|continue|continuing|crochet|crocheting', 'on?')
  reader.take('on|through|into|in|along|across|over|around|with')
  reader.take('the|this|one|a?', 'one?')
  while (reader.take(which) && !/^(?:only|alone|by|on)$/.test(reader.word()));
  const named = /^(?:front|back)$/.test(reader.word(-1)) && /^(?:only|alone)$/.test(reader.word()) || takePieceName(reader) !== undefined || reader.take(layer) || reader.take(motifWord)
  if (begins && named && (reader.take('only|alone') || reader.take('by', 'itself') || reader.take('on', 'its', 'own')) && placeEnds(reader, 'work', '–', '—')) return [{ node: 'aside', oneLayer: true, start, end: reader.end }]
  reader.at = at
  return undefined
}
