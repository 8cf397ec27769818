import { numberAhead, takeNumber } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { CountsAs } from './syntax.ts'
import type { Num } from './target.ts'

const close: Readonly<Record<string, string>> = { '(': ')', '[': ']', '{': '}' }

/**
 * Takes what a chain is said to count as, in brackets or after a dash or comma:
 *
 *   (counts as dc)   , which counts as dc   as first dc   (counts as dc, ch 2)   (does not count as st)   – counts as tr   (not a st)   (3 skipped ch count as dc)
 *
 * `stitch: undefined` with no chains means: counts as nothing.
 */
export function takeCountsAs(reader: Reader): CountsAs | undefined {
  const at = reader.at
  const bracket = close[reader.word()]
  if (bracket) reader.at += 1
  else reader.take(',|-|–|—')
  const found = statement(reader)
  if (!found || bracket !== undefined && !closes(reader, bracket)) {
    reader.at = at
    return undefined
  }
  return onSlip.test(reader.all.slice(at, reader.at).map(({ text }) => text.toLowerCase()).join(' ')) ? { ...found, onSlip: true } : found
}

/** Takes a bracket `(counts as 2 tr)`: a chain stands for one stitch (common practice, no source), so that the number is a slip of the pen. */
export function takeCountsAsSeveral(reader: Reader, end: number): boolean {
  const { at } = reader
  while (reader.at < end && !reader.take('count|counts|counted', 'as')) reader.at += 1
  const several = reader.at < end && (takeNumber(reader)?.values.some((value) => value !== 1) ?? false)
  const stitch = several ? takeStitchName(reader) : undefined
  reader.at = stitch === undefined || stitch === 'st' || reader.at !== end ? at : end + 1
  return reader.at > end
}

/** `counts as 1 tr in the place of the last ss`, `stands on the last sl st`: where the chain rises from. */
const onSlip = /\b(?:in|on|over|at|of|from|replaces) (?:the )?(?:last|final|same) (?:of the )?(?:ss|sl st|slst|sl)\b/

/**
 * What a bracket further on says of a row's first chain. Takes nothing; the bracket is passed over when it is read.
 *
 *   Ch 3, turn (counts as dc), …   Ch 3, turn, … (ch 3 counts as dc)
 *       ^                              ^
 */
export function countsLater(reader: Reader, chains: Num): CountsAs | undefined {
  const { at } = reader
  let found: CountsAs | undefined
  const turned = reader.take(',?', 'turn')
  if (turned) found = takeCountsAs(reader)
  for (reader.at = at; !found && reader.at < reader.limit; reader.at += 1) {
    if (!(reader.word() in close) || !names(reader, chains)) continue
    const from = reader.at
    found = takeCountsAs(reader)
    reader.at = from
  }
  for (reader.at = 0; !found && reader.at < reader.limit; reader.at += 1) found = toldApart(reader, chains)
  reader.at = at
  return found
}

/** `Turning ch counts as dc. Ch 3, …`, `Ch 3, …. Ch 3 counts as first dc.`: in a sentence of its own, before the row's work or behind. Takes nothing. */
function toldApart(reader: Reader, chains: Num): CountsAs | undefined {
  const { at } = reader
  const begins = at === 0 || /^[;.]$/.test(reader.word(-1))
  const found = begins && names(reader, chains, 0) ? statement(reader) : undefined
  const ends = reader.done || /^[.;]$/.test(reader.word())
  reader.at = at
  return ends ? found : undefined
}

/** The same sentence where it stands, once the chain that it speaks of was read. */
export function takeToldApart(reader: Reader): boolean {
  const { at } = reader
  const begins = at === 0 || /^[;.]$/.test(reader.word(-1))
  if (begins && /^(?:the|beg|beginning|first|starting|turning|tch|ch|chain)$/.test(reader.word()) && statement(reader) && (reader.done || /^[.;]$/.test(reader.word()))) return true
  reader.at = at
  return false
}

/** `(ch 3 counts`, `(turning ch counts`, `(tch does not count`: the bracket speaks of the chain by name. */
function names(reader: Reader, chains: Num, sign = 1): boolean {
  const { at } = reader
  reader.at += sign
  reader.take('the?', 'beg|beginning|first|starting|turning?')
  const tch = reader.take('tch')
  const ch = tch || reader.take('ch|chain', '-?')
  const count = takeNumber(reader)
  reader.at = at
  return ch && (count === undefined || count.values.join() === chains.values.join())
}

/** `…; the 3 skipped ch count as 1 dc`, said in a clause of its own behind. Takes nothing. */
export function skippedCountLater(reader: Reader): CountsAs | undefined {
  const { at } = reader
  let found: CountsAs | undefined
  for (; !found && reader.at < reader.limit; reader.at += 1) {
    const from = reader.at
    if (/^[,;.(]$/.test(reader.word(-1)) && reader.take('the?') && (numberAhead(reader) === undefined || takeNumber(reader)) && reader.take('skipped|missed|unworked')) {
      reader.at = from
      found = statement(reader)
    }
    reader.at = from
  }
  reader.at = at
  return found
}

function closes(reader: Reader, bracket: string): boolean {
  // What more is said in the bracket (`here and throughout`) changes no count.
  for (let ahead = 0; ahead < 12; ahead += 1) {
    if (reader.word(ahead) === bracket) {
      reader.at += ahead + 1
      return true
    }
  }
  return false
}

function statement(reader: Reader): CountsAs | undefined {
  if (reader.take('that’s|that\'s|it’s|it\'s')) return named(reader)
  // `ch 3 as first dc`, `ch 3 for the first dc`
  if (reader.take('as|for', 'the|a?', 'first|1st|beginning')) return named(reader)
  reader.take('and?', 'which')
  const subject = takeSubject(reader)
  if (reader.take('do|does', 'not', 'count|counts') || reader.take('don’t|doesn’t|doesn\'t|don\'t', 'count') || reader.take('not', 'counted|counting')
    || reader.take('not', 'a|as?', 'a?', 'st|stitch|sc|dc|hdc') || reader.take('never', 'counts|count') || reader.take('is|are', 'not', 'counted|a|as?', 'a?', 'st|stitch?')) {
    reader.take('as', 'a|an|the?', 'st|stitch|sts?')
    takeStitchName(reader)
    return {}
  }
  if (subject && /^(is|are|makes?|forms?|equals?)$/.test(reader.word()) && reader.word(1) !== 'as') {
    reader.at += 1
    return named(reader)
  }
  if (!reader.take('=') && !reader.take('to', 'stand', 'for') && !reader.take('stands|stand|standing', 'for') && !reader.take('to?', 'count|counts|counted|counting|is|are', 'as')) return reader.take('count|counts|counted') ? { stitch: 'this' } : undefined
  return named(reader)
}

/** `the 3 skipped ch`, `turning ch`, `ch-3`, `these`: what the words speak of. */
function takeSubject(reader: Reader): boolean {
  const at = reader.at
  if (/^(this|that|they|these|those|it)$/.test(reader.word()) && /^(do|does|counts?|is|are|makes?|forms?|equals?|stands?)$/.test(reader.word(1))) {
    reader.at += 1
    return true
  }
  reader.take('the|those|these?', 'beg|beginning|first|missed|skipped|unworked?')
  takeNumber(reader)
  reader.take('skipped|missed|unworked?')
  if (!reader.take('ch|chs|chain|chains', '-?') && !reader.take('turning', 'ch|chain') && !reader.take('tch') && !reader.take('this')) {
    reader.at = at
    return false
  }
  takeNumber(reader)
  return true
}

/** After `counts as`: `dc`, `first dc`, `1 dc`, `a st`, `dc, ch 2`, `dc + ch-1 sp`, `first tr and ch 3`. */
function named(reader: Reader): CountsAs | undefined {
  reader.take('the?', 'a|an|first|one|1|beg|beginning|last?')
  if (reader.take('st|stitch|sts')) return { stitch: 'this', ...tail(reader) }
  if (reader.take('ch', '-')) {
    takeNumber(reader)
    reader.take('sp|lp|loop|space')
    return {}
  }
  const stitch = takeStitchName(reader)
  reader.take('number|no', '.?', 'one|1')
  return stitch === undefined ? undefined : { stitch, ...tail(reader) }
}

function tail(reader: Reader): { chains?: NonNullable<CountsAs['chains']> } {
  const at = reader.at
  reader.take(',|+|&|and|plus')
  reader.take('and|plus|a')
  if (reader.take('ch|chain', '-?')) {
    const chains = takeNumber(reader)
    reader.take('sp|space|lp|loop')
    if (chains) return { chains }
  }
  const number = takeNumber(reader)
  if (number && reader.take('-?', 'ch|chs')) return { chains: number }
  reader.at = at
  return {}
}
