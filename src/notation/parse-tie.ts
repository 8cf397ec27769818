import { takeNumber } from './numbers.ts'
import type { Reader } from './reader.ts'
import type { Aside, Instruction } from './syntax.ts'
import { inSize, type Num } from './target.ts'

/** What hangs from a piece by a chain, as a designer calls it. */
export const tieWords = 'tie|ties|cord|cords|string|strings|drawstring|drawstrings'
/** What else hangs from it and is counted beside stitches; how it is made, a row seldom tells. */
export const hangingWords = 'tassel|tassels|streamer|streamers|tendril|tendrils|ribbon|ribbons|hanger|hangers|fringe|fringes'

/**
 * `ch 30, sl st in 2nd ch from hook and in each of next 28 ch (tie made)`, `ch 30, sl st in 2nd ch from hook, sl st in next 28 ch`, `ch 30, sl st
 * in 2nd ch from hook and in each ch back to the brim`: in the middle of a row, or at its end, a chain of its own that slip stitches go back along. It is
 * no stitch and no space.
 */
export function parseTie(reader: Reader, before: readonly Instruction[]): readonly Aside[] | undefined {
  const { at, start } = reader
  if (!before.some(({ node }) => node === 'work' || node === 'group' || node === 'repeat')) return undefined
  const first = takeNumber(reader)
  const chains = reader.take('ch|chain') ? (first ?? takeNumber(reader)) : undefined
  if (chains) {
    takeForTie(reader)
    const nth = takeSlip(reader) && reader.take('in|into', 'the?') && reader.peek()?.kind === 'ordinal' ? reader.peek()!.value! : undefined
    if (nth !== undefined && (reader.at += 1) > 0 && reader.take('ch|chain', 'from', 'the?', 'hook|hk')) {
      const slips = alongTheRest(reader)
      if (slips) {
        takeWayBack(reader)
        takeForTie(reader)
        if (slips === 'all' || isWhole(chains, slips, nth) || !goesOnInChain(reader)) return [{ node: 'aside', tie: { chains, from: nth, slips }, start, end: reader.end }]
      }
    }
  }
  reader.at = at
  return undefined
}

const isWhole = (chains: Num, slips: Num, nth: number): boolean => chains.values.every((value, size) => value === inSize(slips, size) + nth)

function takeSlip(reader: Reader): boolean {
  return reader.take(',|;|.?', 'and|then|now?', 'work?', '1|one|a?', 'sl', '-?', 'st') || reader.take(',|;|.?', 'and|then|now?', 'work?', '1|one|a?', 'ss|slst')
}

/** `and in next 28 ch`, `and in each of next 28 ch`, `, sl st in each of next 28 ch`, `, 28 sl st`, `and in each ch across`: the other chains, or how many. */
function alongTheRest(reader: Reader): Num | 'all' | undefined {
  const { at } = reader
  if (takeSlip(reader) && reader.take('in|into') || reader.take(',?', 'and|then', 'in|into?')) {
    const each = reader.take('each|every', 'of?')
    reader.take('the?', 'next|other|remaining|rem|following|foll|last?')
    const count = takeNumber(reader)
    if (reader.take('ch|chs|chain|chains') && (count || each)) return count ?? 'all'
  }
  reader.at = at
  const count = reader.take(',?', 'and|then?') && takeNumber(reader)
  if (count && (reader.take('sl', '-?', 'st|sts') || reader.take('ss|slst')) && !/^(?:in|into)$/.test(reader.word())) return count
  reader.at = at
  return undefined
}

/** `back to the brim`, `across`, `to the end of the ch`, `down the chain` */
function takeWayBack(reader: Reader): void {
  const { at } = reader
  reader.take('all?', 'the?', 'way?', 'back|across|along|down?')
  if (!reader.take('to|along|down?', 'the?', 'end|base|edge|band|brim|cuff|collar|hem|top|beginning|start|ch|chain', 'of?', 'the?', 'ch|chain|tie|cord?') && reader.at > at) reader.take('it')
}

/** `(tie made)`, `for the tie`, `to form a cord`, `– tie made` */
function takeForTie(reader: Reader): void {
  const { at } = reader
  const bracket = reader.take('(|[')
  reader.take('-|–|—|,?', 'for|to|and?', 'form|make|complete?', 'a|the|one|1|first|second|another?', 'first|second|left|right|other|chin|neck?')
  const named = reader.take(tieWords)
  reader.take('made|formed|complete|completed|done')
  if (!named || bracket && !reader.take(')|]')) reader.at = at
}

/** `sl st in 2nd ch from hook and in next ch, sc in next 3 ch`: a leaf or a point, with stitches of several kinds. */
function goesOnInChain(reader: Reader): boolean {
  let ahead = /^[,;]$/.test(reader.word()) ? 1 : 0
  while (/^(?:and|then)$/.test(reader.word(ahead)) || reader.peek(ahead)?.kind === 'number') ahead += 1
  if (!reader.vocabulary.stitchAt([reader.word(ahead), reader.word(ahead + 1)])) return false
  for (; !/^(?:[,;.()[\]]|)$/.test(reader.word(ahead)); ahead += 1) if (/^(?:ch|chs|chain|chains)$/.test(reader.word(ahead))) return true
  return false
}
