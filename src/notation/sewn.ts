import { numberAhead, takeNumber } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import { takeRowNumbers } from './row-named.ts'
import { inSize, type Num } from './target.ts'
import type { Aside } from './syntax.ts'

/** So many places of one edge sewn to so many of another; and what of the second one's piece is left between them. */
export interface Sewn {
  readonly one: Num
  readonly other: Num
  /** `at each end of the last row of Back`: the piece, and how often so many of it are sewn. */
  readonly piece?: string
  readonly ends?: number
  /** `8 sts of Back stay free` */
  readonly free?: Num
}

const verb = /^(?:sew|sewing|oversew|oversewing|overcast|overcasting|graft|grafting|whipstitch|seam)$/

/**
 * Sewing told in words, with the places that meet:
 *
 *   whip stitch the 9 sts of each front shoulder to the 9 sts at the outer end of Back; 14 sts of Back stay free for the neck
 *   sew side edges of Rows 1-12 of Front to Rows 1-12 of Back   oversew 12 row-ends to 12 row-ends   14 foundation ch lie on 14 foundation ch
 *
 * It leaves the fabric alone. Words that tell other numbers are none of these.
 */
export function parseSewn(reader: Reader): readonly Aside[] | undefined {
  const { at, start } = reader
  reader.take('and|then|now')
  const sews = verb.test(reader.word()) && reader.take(reader.word()) || reader.take('whip|mattress', '-?', 'stitch|stitching|st|sts')
  const one = sews ? takePlaces(reader) : takeLaid(reader)
  const other = one && reader.take('to|onto|against|with|on|over') ? takePlaces(reader) : undefined
  if (one && other) {
    const { at: tail } = reader
    const free = takeFree(reader)
    if (!free) reader.at = tail
    const piece = free && other.piece !== undefined && (free.piece ?? other.piece) === other.piece ? { piece: other.piece!, ends: other.ends ?? one.ends ?? 1, free: free.count } : undefined
    if (!free || piece) return [{ node: 'aside', sewn: { one: one.count, other: other.count, ...piece }, start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

interface Places {
  readonly count: Num
  readonly piece?: string
  readonly ends?: number
}

/** `14 foundation ch lie on 14 foundation ch`, `rows 13 to 16 over rows 17 to 20 of Lower Back`: places of two edges on one another. */
function takeLaid(reader: Reader): Places | undefined {
  const one = takePlaces(reader)
  if (!one) return undefined
  reader.take('lie|lies|lying|meet|come|comes|go|falling|fall')
  return /^(?:on|over|against|to|with)$/.test(reader.word()) ? one : undefined
}

const quiet = /^(?:the|both|each|either|its|their|of|at|on|in|from|side|sides|edge|edges|edging|end|ends|outer|inner|top|bottom|upper|lower|left|right|front|back|shoulder|shoulders|last|first|next|row|rnd|round|below|above|neck|armhole|armholes|underarm|free|unworked|remaining|this|that|band|strap|flap|lower|other|-|short|long)$/
/** Words that tell where the places lie; `on` and `at` only before more of them, since they stand between the two edges as well. */
function isQuiet(reader: Reader, counted: boolean): boolean {
  // `side edges below the armholes, 10 rows to 10 rows`
  if (reader.word() === ',') return !counted && numberAhead(reader, 1) !== undefined
  if (/^(?:on|at|from|in)$/.test(reader.word())) return /^(?:the|each|both|either|its|their|this|that|top|bottom|lower|upper|outer)$/.test(reader.word(1))
  return quiet.test(reader.word())
}

const noun = 'st|sts|stitch|stitches|ch|chs|chain|chains|rows|loops'

/** A number with what it counts, or rows by their numbers, and words that tell where they lie. */
function takePlaces(reader: Reader): Places | undefined {
  let count: Num | undefined
  let piece: string | undefined
  let ends: number | undefined
  for (let words = 0; words < 24 && !reader.done; words += 1) {
    const rows = count ? undefined : takeRowNumbers(reader)
    if (rows) {
      count = rowsIn(rows)
      continue
    }
    if (/^(?:row|rnd|round)$/.test(reader.word(-1)) && numberAhead(reader) !== undefined) {
      // The number of a row counts nothing.
      takeNumber(reader)
      continue
    }
    if (!count && numberAhead(reader) !== undefined) {
      count = takeNumber(reader)
      reader.take('foundation|outer|inner|free|unworked|remaining|shoulder|neck|corresponding|matching')
      if (!reader.take('row', '-?', 'ends') && !reader.take(noun) && takeStitchName(reader) === undefined) return undefined
      continue
    }
    if (numberAhead(reader) !== undefined) return undefined
    if (/^(?:each|both|either)$/.test(reader.word()) && /^(?:end|ends|side)$/.test(reader.word(1))) ends = 2
    const named = reader.word() === 'end' || reader.word() === 'ends' ? undefined : takePieceName(reader)
    if (named !== undefined) piece = named
    else if (isQuiet(reader, count !== undefined)) reader.at += 1
    else break
  }
  return count && { count, ...(piece !== undefined && { piece }), ...(ends && { ends }) }
}

/** How many rows from one to another. */
export function rowsIn({ first, last }: { readonly first: Num; readonly last: Num }): Num {
  const sizes = Math.max(first.values.length, last.values.length)
  return { values: Array.from({ length: sizes }, (_, size) => Math.abs(inSize(last, size) - inSize(first, size)) + 1), start: first.start, end: last.end }
}

/** `, leaving 8 sc of Back free`, `; 14 sts of Back stay free for the neck`, `; the middle 9 sts are the back neck` */
function takeFree(reader: Reader): { readonly count: Num; readonly piece?: string } | undefined {
  reader.take(',|;')
  const leads = reader.take('leaving|leave', 'the?', 'center|centre|middle|other|remaining?')
  reader.take('the', 'center|centre|middle|other|remaining?')
  const count = takeNumber(reader)
  if (!count || !reader.take(noun) && takeStitchName(reader) === undefined) return undefined
  const piece = reader.take('of|on') ? takePieceName(reader) : undefined
  if (piece === undefined && reader.take('are|form|make|become', 'the?', 'back?', 'neck|neckline')) return { count }
  const free = reader.take('stay|stays|remain|remains|are|is', 'left?', 'free|open|unsewn|unworked') || leads && reader.take('free|open|unsewn|unworked')
  if (!free) return undefined
  reader.take('for', 'the?', 'back?', 'neck|neckline|opening|head')
  return { count, ...(piece !== undefined && { piece }) }
}
