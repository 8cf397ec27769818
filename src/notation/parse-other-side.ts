import { takeNumber } from './numbers.ts'
import { endsSide } from './parse-edge-count.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Draft } from './parse-tail.ts'
import { rowEndsAhead } from './row-ends-ahead.ts'
import type { Instruction } from './syntax.ts'
import type { Target } from './target.ts'

/** `Working along opposite side of ch`, `other side:`: what follows goes into the underside of the foundation chain. */
export function otherSide(reader: Reader): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  reader.take('rotate|swivel|pivot|spin', 'the?', 'piece|work|chain?', 'to|and?')
  reader.take('now|continue|continuing|cont|going|go')
  reader.take('work|working|worked|back', 'back?')
  reader.take('in|along|on|up|down|around|across|into|over')
  reader.take('the')
  const side = reader.take('opposite|other|bottom|lower|under|second|2nd', 'side|edge|loops|lps') || reader.take('underside') || reader.take('unused|free|remaining|rem', 'loops|lps', 'of', 'the?', 'foundation|beg|starting|base?', 'ch|chain')
  // `sc in same place and in underside of each of next 14 ch`: the same stitch again, in those chains.
  const places = /^(in|into)$/i.test(reader.all[at]!.text) && reader.word() === 'of' && /^(each|every|next|first|last)$/.test(reader.word(1))
  // `(second side)` beside a label names the side of a neck.
  if (!side || places || reader.word(-1 - (reader.at - at)) === '(' && reader.word() === ')' || reader.take('of', 'the?', 'work|piece|row|square|motif|neck|head|body')) {
    reader.at = at
    return undefined
  }
  const { at: tail } = reader
  const begins = at === 0 || /^([,.;:()]|and|then|now)$/.test(reader.word(at - 1 - reader.at))
  const chain = reader.take('of|on', 'the?', 'foundation|beginning|beg|starting|initial|base|original?', 'ch|chain|chs', 'edge?') || reader.take('of|on', 'the?', 'foundation', 'row|edge?') || reader.take('of|on', 'the?', 'fsc|fdc|fhdc|ftr', 'sts|stitches|row|edge?')
  if (!chain) reader.at = tail
  // `along underside of the added ch:` is an edge like the others.
  const later = !chain && reader.word(-1) === 'underside' && reader.word() === 'of'
  if (later) {
    reader.at = at
    return undefined
  }
  const under = chain || reader.all.slice(at, tail).some(({ text }) => /^(underside|under|bottom|lower|loops|lps)$/i.test(text))
  // `up the other side at the same rate, 3 sc to 2 rows`
  reader.take('at', 'the', 'same', 'rate|ratio') || reader.take('at', 'a|the', 'rate|ratio', 'of')
  reader.take(':')
  // `sc in each of next 18 ch on underside`: the words behind name where those were.
  const named = !chain && /^edge$/i.test(reader.word(tail - 1 - reader.at))
  if (begins && (named && rowEndsAhead(reader) || !under && sideCounted(reader, at))) return [{ node: 'start', target: { walk: 'edge', edge: 'side', start, end: reader.end }, start, end: reader.end }]
  if (!begins && under && !chain) return [{ node: 'aside', start, end: reader.end }]
  return [{ node: 'start', target: { walk: 'other-side', ...(under && { edge: 'underside' }), start, end: reader.end }, start, end: reader.end }]
}

/** `along the other side of the 3 ch`, `along the underside of the ch-4`: so many chains, each from below. */
export function otherSideOfBridge(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  const side = reader.take('along|down|up|across|on', 'the', 'other|opposite|second', 'side', 'of', 'the|these|those') || reader.take('along|across|in|into', 'the?', 'underside|bottom|base', 'of', 'the|these|those?', 'next|same?')
  const byLength = side && reader.take('ch|chain', '-')
  const count = side ? takeNumber(reader) : undefined
  if (byLength) reader.take('sp|space|lp|loop|arch')
  if (count && (byLength || reader.take('ch|chs|chain|chains'))) {
    // `the underside of 6 ch of Row 11`
    takeRowNamed(reader, 'of|in|from')
    return { walk: 'next', count, eachOf: true, thing: { kind: 'chain' }, edge: 'underside', start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `in other side of ch`, `in the other side of each of 3 ch`, `in the unused side of each ch`. */
export function otherSideOfChain(reader: Reader, draft: Draft): boolean {
  const { at } = reader
  if (reader.take('other|opposite|unused|free|second', 'side', 'of', 'the|each?', 'of?', 'the|next?', 'next?')) {
    const each = reader.word(-1) === 'each'
    const count = takeNumber(reader)
    if (reader.take('ch|chain|chs|chains')) {
      Object.assign(draft, { walk: each && !count ? 'each' : 'next', thing: { kind: 'chain' }, edge: 'underside', ...(count && { count }) })
      return true
    }
  }
  reader.at = at
  return false
}

/** `up the other side 36 sc to match`: behind row-ends that were worked so many stitches in all are those of the other side of the rows. */
function sideCounted(reader: Reader, before: number): boolean {
  const { at } = reader
  reader.take(',?', 'work|working|make?')
  const counted = namesRowEnds(reader.all.slice(0, before)) && takeNumber(reader) !== undefined && takeStitchName(reader) !== undefined && endsSide(reader)
  reader.at = at
  return counted
}

const namesRowEnds = (words: Reader['all']): boolean => /\brow(?: -)? ?ends?\b|\bends? of rows?\b/.test(words.map(({ text }) => text.toLowerCase()).join(' '))
