import { ordinals } from './number-words.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import type { Draft } from './parse-tail.ts'
import { chainWords, thingHere } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Thing } from './target.ts'

const missed = 'missed|skipped|sk|unworked|uncounted'
const begins = 'beg|beginning|starting|first|turning|foundation|initial'

/**
 * The chain that stands for the first stitch of the row below, by its top or its last chain:
 *
 *   top of 3 ch   top of the 3 missed ch   the top of missed ch-3 of Row 1   3rd of the 3 skipped ch   top missed ch   top of the 3 ch missed at the start
 */
export function takeTopOfChain(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  const chains = topOf(reader) ?? oneOfMissed(reader)
  if (!chains) {
    reader.at = at
    return false
  }
  Object.assign(draft, { walk: 'next', thing: chains })
  return true
}

function topOf(reader: Reader): Draft['thing'] {
  if (takeTop(reader)) {
    const chains = takeChain(reader)?.thing
    return chains && (chains.kind === 'stitch' ? chains : { kind: 'turning-chain' })
  }
  return reader.take('top|topmost|uppermost') ? missedChain(reader) : undefined
}

/** `top of`, `top ch of`, `top (3rd) ch of` */
function takeTop(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('top|tops|uppermost|topmost')) {
    if (reader.word() === '(' && reader.peek(1)?.kind === 'ordinal' && reader.word(2) === ')') reader.at += 3
    if (reader.take('one|ch|chain|st|stitch?', 'of')) return true
  }
  reader.at = at
  return false
}

/** `up to the starting chain`, `across to skipped ch-3 of Row 1`: the chain that stands for the row's last place, where a stitch goes into its top behind. */
export function takeToChain(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('across?', 'up?', 'to|until', 'the?')) {
    // `to first ch-2 sp` names a space.
    const named = new RegExp(`^(?:${missed}|beg|beginning|starting|turning|initial)$`).test(reader.word(numberAhead(reader) === undefined ? 0 : 1))
    const chain = named ? takeChain(reader)?.thing : undefined
    if (chain && chain.kind !== 'stitch' && !/^(?:sps?|spaces?|lps?|loops?)$/.test(reader.word(-1)) && reader.all.slice(reader.at, reader.limit).some(({ text }) => /^top$/i.test(text))) return true
  }
  reader.at = at
  return false
}

/** `3rd of the 3 missed ch`, `last of the skipped ch`, `the third missed ch`: one of them, and the top of what they stand for. */
function oneOfMissed(reader: Reader): Draft['thing'] {
  const nth = reader.peek()?.kind === 'ordinal' || ordinals[reader.word()] !== undefined || /^(?:last|final)$/.test(reader.word())
  if (!nth || skipsChains(reader)) return undefined
  reader.at += 1
  // `last 2 skipped ch` are two.
  return reader.take('one|ch|chain?', 'of') || numberAhead(reader) === undefined ? missedChain(reader) : undefined
}

/** `sk next 2 ch, …, dc in 2nd skipped ch`: the row speaks of its own. */
const skipsChains = (reader: Reader): boolean => reader.all.some(({ text }, from) => /^(?:skip|sk|miss)$/i.test(text) && reader.all.slice(from + 1, from + 4).some((token) => chainWords.has(token.text.toLowerCase())))

function missedChain(reader: Reader): Draft['thing'] {
  const { at } = reader
  const chain = takeChain(reader)
  // `3rd of 3 ch at beg of Row 3`
  const ofRow = chain?.thing.kind === 'chain' && reader.all.slice(at, reader.at).some(({ text }) => /^(?:beg|beginning|start)$/i.test(text)) && reader.peek(-1)?.kind === 'number'
  return chain?.missed || ofRow ? { kind: 'turning-chain' } : undefined
}

/** `the 3 missed ch of the foundation`, `first 3 ch`, `beg ch-3`, `3 ch that were missed`. */
function takeChain(reader: Reader): { readonly thing: Thing; readonly missed: boolean } | undefined {
  reader.take('the')
  reader.take(begins)
  // `top of 3 ch`: the number belongs to the chain.
  const counted = numberAhead(reader) !== undefined && (chainWords.has(reader.word(1)) || new RegExp(`^(?:${missed}|${begins})$`).test(reader.word(1))) && takeNumber(reader) !== undefined
  const states = reader.take(missed)
  reader.take(begins)
  if (!counted && states && numberAhead(reader) !== undefined && chainWords.has(reader.word(1))) takeNumber(reader)
  // `top ch of the 3 skipped`: what was skipped are chains.
  const thing = thingHere(reader) ?? (counted && states ? { kind: 'chain' as const } : undefined)
  // `top of ch 3`
  if (thing?.kind === 'chain' && numberAhead(reader) !== undefined) reader.at += 1
  if (thing && thing.kind !== 'stitch') takeWhereMissed(reader)
  return thing && { thing, missed: states && thing.kind !== 'stitch' }
}

/** `that were missed at the beginning of Row 1`, `of the foundation`: how and where it came about. */
function takeWhereMissed(reader: Reader): void {
  reader.take('that|which?', 'were|was|you?', missed)
  const { at } = reader
  if (takeRowNamed(reader, 'that|which', 'began|begins|starts|started') !== undefined) return
  if (reader.take('at|from', 'the?', 'very?', 'beg|beginning|start|end')) {
    if (takeRowNamed(reader, 'of') === undefined) reader.take('of', 'the?', 'row|rnd|round|foundation', 'below|row|ch|chain?')
  } else if (takeRowNamed(reader, 'of|from|in') === undefined) reader.take('of|from', 'the?', 'foundation|base', 'ch|chain|row?')
  if (!reader.done && !/^(?:[,;.:()[\]*]|and|then)$/.test(reader.word())) reader.at = at
}
