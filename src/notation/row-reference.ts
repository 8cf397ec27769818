import { takeBracketTimes, type BracketTimes } from './parse-bracket-times.ts'
import { takePieceName } from './parse-piece-name.ts'
import { ofPiece, pieceAhead, referredPiece, type PieceReference } from './reference-to-piece.ts'
import { numberAhead, takeNumber, takeTimesWord } from './numbers.ts'
import type { Schedule } from './parse-schedule.ts'
import { takeReversing } from './reversing.ts'
import type { Reader } from './reader.ts'
import { rowWords, takeRows } from './row-numbers.ts'
import type { Num } from './target.ts'

/** A row that is told by pointing at others. */
export type RowReference =
  | Schedule
  /** `Rep Rows 3 and 4`, `As Row 3`; `six times, then Rows 3–4 once` is a list of blocks. */
  | { readonly kind: 'copy'; readonly blocks: readonly Block[]; readonly until?: Num; readonly endsOn?: { readonly row: number; readonly start: number; readonly end: number }; readonly chains?: readonly { readonly row: number; readonly chains: number }[]; readonly brackets?: readonly BracketTimes[]; readonly start: number; readonly end: number }
  /** `Rep last 2 rows 5 more times` */
  | { readonly kind: 'last'; readonly count: Num; readonly times?: Num; readonly start: number; readonly end: number }
  /** `Work even for 5 rows` */
  | { readonly kind: 'even'; readonly rows?: Num; readonly start: number; readonly end: number }
  | PieceReference

export interface Block {
  readonly rows: readonly number[]
  readonly times?: Num
  /** `5 more times` */
  readonly more?: boolean
}

/**
 * Takes a reference to other rows at the head of a row's text:
 *
 *   Rep Rows 3 and 4   As Row 3   Rep last 2 rows 5 more times   Work even in patt for 5 rows
 */
export function takeReference(reader: Reader): RowReference | undefined {
  const at = reader.at
  const start = reader.start
  const found = even(reader, start) ?? pointing(reader, start)
  if (!found) reader.at = at
  return found
}

function even(reader: Reader, start: number): RowReference | undefined {
  const at = reader.at
  if (!reader.take('ch?', '1?', ',?', 'turn?', ',?', 'work?', 'even|straight') && !reader.take('work', 'straight|even')) {
    reader.at = at
    return undefined
  }
  reader.take('in', 'patt|pattern|sc|dc|hdc|st', 'st?')
  reader.take('as', 'set|established')
  let rows: Num | undefined
  if (reader.take('for')) {
    rows = takeNumber(reader)
    reader.take('more?', rowWords)
  }
  return { kind: 'even', ...(rows && { rows }), start, end: reader.end }
}

function pointing(reader: Reader, start: number): RowReference | undefined {
  const { at } = reader
  // `Reversing shaping, work Rows 7-10 of Front`
  if (takeReversing(reader) && reader.take(',')) {
    const found = pointing(reader, start)
    if (found?.kind === 'piece') return { ...found, reversing: true }
  }
  reader.at = at
  const rows = moreRows(reader)
  const lead = takeBeginning(reader) ? 'work' : takeLead(reader)
  if (!lead || rows && lead !== 'as') return undefined
  reader.take('for')
  const colon = reader.take('the')
  const both = colon || rows ? false : reader.take('both', 'of?', 'these|those|the?')
  if (both || reader.take('last|previous|prev|preceding|these|those')) {
    const count = takeNumber(reader) ?? { values: [both ? 2 : 1], start: reader.end, end: reader.end }
    if (!reader.take(rowWords)) return undefined
    const times = takeTimesInAll(reader) ?? takeTimes(reader).count
    return { kind: 'last', count, ...(times && { times }), start, end: reader.end }
  }
  const blocks = takeBlocks(reader) ?? (lead === 'rep' ? takeBareRows(reader) : undefined)
  if (blocks && reader.word() === 'of') return ofPiece(reader, blocks, start)
  const asThere = blocks && lead === 'work' ? rowsAsThere(reader, blocks, start) : undefined
  if (asThere) return asThere
  if (blocks && rows) return { kind: 'copy', blocks: blocks.map((block) => ({ ...block, times: rows, more: true })), start, end: reader.end }
  if (blocks) {
    const until = takeUntil(reader)
    const chains = takeChains(reader)
    const brackets = takeBracketTimes(reader)
    const endsOn = takeEndsOn(reader)
    return { kind: 'copy', blocks, ...(until !== undefined && { until }), ...(chains.length > 0 && { chains }), ...(brackets.length > 0 && { brackets }), ...(endsOn && { endsOn }), start, end: reader.end }
  }
  const found = lead === 'as' || lead === 'mirror' || lead === 'rep' && colon || pieceAhead(reader) ? referredPiece(reader, start) : undefined
  return found?.kind === 'piece' && lead === 'mirror' ? { ...found, reversing: true } : found
}

/** `Ring and Rnd 1 as First Square`, `Work foundation and Rows 1 to 10 as Back`: what a piece begins with comes with its first rows. */
function takeBeginning(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('work|make|form?', 'the|a?', 'magic|foundation|starting|beginning|base?', 'ring|chain|ch|foundation|base|loop', ',?', 'and|then|&', 'work?')) {
    const { at: rows } = reader
    if (takeRows(reader)) {
      reader.at = rows
      return true
    }
  }
  reader.at = at
  return false
}

/** `Work Rows 1 to 10 as for Back`, `Rnds 1 and 2 exactly as in First Square`: rows of another piece, which is named behind them. */
function rowsAsThere(reader: Reader, blocks: readonly Block[], start: number): RowReference | undefined {
  const { at } = reader
  const as = /^(?:as|like|in|exactly|just|the|to)$/.test(reader.word()) && takeLead(reader) === 'as'
  const found = as ? ofPiece(reader, blocks, start) : undefined
  if (!found) reader.at = at
  return found
}

/** `Rep`, `Do`, `As`, `Work as given for`, `Same again as`, `In the same way as`: how the rows are pointed at. */
function takeLead(reader: Reader): 'rep' | 'as' | 'mirror' | 'work' | undefined {
  if (reader.take('keep|continue|go?', 'on?', 'rep|repeat|repeating') || reader.take('keep|continue|carry|go', 'on?', 'going?', 'doing|working|with')) return 'rep'
  const { at } = reader
  if (reader.take('follow|following|use|using', 'the?', 'instructions|directions|rows', 'for|of|given?', 'for?')) return 'as'
  if (reader.take('work|worked|working|make|do|continue|carry|complete|finish', 'on?')) takeMade(reader)
  reader.take('in')
  reader.take('the')
  reader.take('exactly|just')
  reader.take('same', 'way|manner|again?')
  if (reader.take('to', 'match|mirror') || reader.take('as', 'a|the?', 'mirror', 'image', 'of')) {
    if (/^(?:mirror|of)$/.test(reader.word(-1))) return 'mirror'
    return 'as'
  }
  if (reader.take('as|like', 'given|told|set|shown|described|worked|written|per?')) {
    reader.take('for|in|on|at|of')
    return 'as'
  }
  reader.at = at
  return reader.take('work|do|follow|following|copy') ? 'work' : undefined
}

/** `Make a second piece as for Front`, `Work the Back as given for the Front`: what is made. */
function takeMade(reader: Reader): void {
  const { at } = reader
  if (reader.take('the|a|this?', 'second|other|another|next?', 'piece|half|panel|side|one')) return
  if (takePieceName(reader) === undefined || !/^(?:as|in|exactly|just|the|to|like)$/.test(reader.word())) reader.at = at
}

/** `Work another four rows like Row 2`: how many. */
function moreRows(reader: Reader): Num | undefined {
  const { at } = reader
  reader.take('work|do|make')
  const another = reader.take('another')
  const count = takeNumber(reader)
  if (count && (reader.take('more|further') || another) && reader.take(rowWords)) return count
  reader.at = at
  return undefined
}

/** `ending with a Row 4` */
function takeEndsOn(reader: Reader): { readonly row: number; readonly start: number; readonly end: number } | undefined {
  const { at } = reader
  reader.take(',')
  const { start } = reader
  if (reader.take('ending|end', 'with|on|after', 'a|an?', rowWords)) {
    const row = numberAhead(reader)
    if (row !== undefined) {
      reader.at += 1
      return { row, start, end: reader.end }
    }
  }
  reader.at = at
  return undefined
}

/** `with ch-5 on Rnd 9, ch-6 on Rnd 10, ch-7 on Rnds 11 and 12`: chains of another length in each copy. */
function takeChains(reader: Reader): readonly { readonly row: number; readonly chains: number }[] {
  const found: { row: number; chains: number }[] = []
  const at = reader.at
  reader.take(',?', 'with|but', 'with?')
  while (reader.take('ch', '-?')) {
    const chains = numberAhead(reader)
    if (chains === undefined) break
    reader.at += 1
    reader.take('sp|sps|lp|lps|loops?')
    if (!reader.take('on|in|for')) break
    const rows = takeRows(reader) ?? []
    found.push(...rows.map((row) => ({ row, chains })))
    reader.take(',|and|;', 'and?')
  }
  if (found.length === 0) reader.at = at
  return found
}

function takeBlocks(reader: Reader): readonly Block[] | undefined {
  const blocks: Block[] = []
  for (;;) {
    const rows = takeRows(reader)
    if (!rows) break
    const { count, more } = takeTimes(reader)
    blocks.push({ rows, ...(count && { times: count }), ...(more && { more }) })
    const at = reader.at
    if (!reader.take(',?', 'then|and', 'work|rep|repeat?')) break
    if (!reader.take(rowWords)) {
      reader.at = at
      break
    }
    reader.at -= 1
  }
  return blocks.length > 0 ? blocks : undefined
}

/** `Repeat 3 and 4 seven more times`, `repeat 3-6 twice`: rows by nothing but their numbers. */
function takeBareRows(reader: Reader): readonly Block[] | undefined {
  const { at } = reader
  const [first, last] = [reader.peek(), reader.peek(2)]
  if (first?.kind === 'number' && last?.kind === 'number' && /^(?:and|&|to|-|–|,)$/.test(reader.word(1))) {
    const [from, to] = [first.value!, last.value!]
    reader.at += 3
    const { count, more } = takeTimes(reader)
    const rows = /^(?:and|&|,)$/.test(reader.all[at + 1]!.text) || to <= from ? [from, to] : Array.from({ length: Math.min(to - from + 1, 20_000) }, (_, index) => from + index)
    if (count) return [{ rows, times: count, ...(more && { more }) }]
  }
  reader.at = at
  return undefined
}

function takeTimes(reader: Reader): { readonly count?: Num; readonly more?: boolean } {
  const at = reader.at
  reader.take(',|a')
  const word = takeTimesWord(reader)
  if (word) return { count: word, more: reader.take('more') }
  const another = reader.take('another|further')
  const sign = reader.take('x|×')
  const count = takeNumber(reader)
  if (count) {
    const more = reader.take('more|further') || another
    // `Rep Rows 4 and 5, one more dc every row`: the stitches are more, and not the rows.
    if (reader.take('times|time|x') || sign || more && !reader.vocabulary.stitchAt([reader.word(), reader.word(1), reader.word(2)]) && !/^(?:sts?|stitch|stitches)$/.test(reader.word())) return { count, more }
  }
  reader.at = at
  return {}
}

/** `4 times in all`, `until they have been worked 4 times altogether`: the rows that stand there are the first time. */
function takeTimesInAll(reader: Reader): Num | undefined {
  const { at } = reader
  const until = reader.take(',?', 'until|till', 'they|you|these|this?', 'rows?', 'have|has', 'been|done?', 'worked|done|made|repeated?', 'them|these?')
  const { count, more } = takeTimes(reader)
  if (count && !more && (reader.take('in', 'all|total') || reader.take('altogether|total|all', 'told?') || until)) return { ...count, values: count.values.map((times) => times - 1) }
  reader.at = at
  return undefined
}

/** `until there are 12 rows`, `until 30 rows have been worked in all`, `until you have worked 24 rows`, `until Row 12 is complete`, `for a total of 8 rows from beg`: how many rows there are then. */
function takeUntil(reader: Reader): Num | undefined {
  const at = reader.at
  if (reader.take(',?', 'until|till')) {
    const row = reader.take('row|rnd|round')
    if (!row) reader.take('there|you', 'are|have', 'worked|done|made?', 'a?', 'total?', 'of?')
    const count = takeNumber(reader)
    if (count && (row || reader.take(rowWords))) {
      reader.take('have|has|are|is', 'been?', 'worked|done|made|complete|completed|finished')
      reader.take('in?', 'all|total|altogether')
      return count
    }
  }
  reader.at = at
  if (reader.take('for|to', 'a', 'total', 'of')) {
    const count = takeNumber(reader)
    if (count && reader.take(rowWords)) {
      if (!reader.take('from|since', 'the?', 'beg|beginning|start')) reader.take('in', 'all')
      return count
    }
  }
  reader.at = at
  return undefined
}
