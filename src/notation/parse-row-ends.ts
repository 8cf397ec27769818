import { numberAhead, takeNumber } from './numbers.ts'
import { takeEdgeName } from './parse-edge.ts'
import { takeOneRow } from './parse-one-row.ts'
import { takePieceName, takePieceOrPart } from './parse-piece-name.ts'
import { takeRate } from './parse-rate.ts'
import { takeToEnd } from './parse-reach.ts'
import { takeOfStep } from './parse-tail.ts'
import { andStitchesAround, takeGroupName, takeStitchName } from './parse-thing.ts'
import { takeWayTo, takeWholeWay } from './parse-way.ts'
import { pieceNamedLast } from './piece-named-last.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeOfRows, takeRowNumbers } from './row-named.ts'
import type { Num, Target } from './target.ts'

/** Row-ends as they are named: how many, and by which stitch their rows are told. */
interface Named {
  readonly each: boolean
  readonly count?: Num
  readonly rows?: readonly string[]
  readonly ofRows?: Target['ofRows']
}

/**
 * The ends of rows, by their number and by the stitch of their rows:
 *
 *   in each of next 10 row-ends along the side   along 30 dc row-ends (2 per row)   in the side of each dc row
 *   in the end of each sc row and of the shell row   in the ends of the 3 button side rows   in the row-end of the step
 */
export function rowEnds(reader: Reader, start: number, evenly: boolean): Target | undefined {
  const { at } = reader
  const named = endsOfRows(reader) ?? endsCounted(reader)
  if (!named) {
    reader.at = at
    return undefined
  }
  const { each, rows } = named
  if (each && !named.count && andStitchesAround(reader)) {
    reader.at = at
    return undefined
  }
  takeOfStep(reader)
  const rowsFirst = named.ofRows ?? takeOfRows(reader) ?? takeRowNumbers(reader)
  const { at: side } = reader
  const before = takeSide(reader)
  // `2 row-ends of Body (R8 and R7)`: the rows stand behind their piece.
  const ofRows = rowsFirst ?? takeOfRows(reader) ?? takeRowNumbers(reader)
  if (!ofRows) reader.at = side
  const count = named.count ?? (ofRows ? rowsBetween(ofRows) : named.each ? ofNextRows(reader) : undefined)
  const sideOf = takeSide(reader) ?? (ofRows ? before : undefined)
  // `6 dc up row ends (2 per row)`
  const rate = evenly || !count && !named.each && reader.word() === '(' ? takeRate(reader) : undefined
  if (!rate) perRow(reader)
  const upTo = takeUpToRow(reader)
  const { at: way } = reader
  if (!upTo) takeWholeWay(reader)
  const wholeWay = reader.at > way
  const toEnd = takeToEnd(reader)
  if (toEnd) takeWholeWay(reader)
  // `2 sc evenly along the row-ends`: 2 in all.
  if (rate && !evenly) return { walk: 'edge', edge: 'side', rate, start, end: reader.end }
  if (evenly && !count) return { walk: 'edge', edge: 'side', evenly: true, ...(rate && { rate }), start, end: reader.end }
  const around = toEnd && /^(around|round)$/.test(reader.word(-1))
  return { walk: count ? 'next' : 'each', ...(count && { count }), ...(count && each && { eachOf: true }), thing: { kind: 'row-end', ...(rows && { rows }) }, ...(ofRows && { ofRows }), ...(sideOf !== undefined && { sideOf }), ...(upTo && { upTo }), ...(evenly && { evenly: true }), ...(rate && { rate }), ...(around && { toEnd }), ...(wholeWay && { wholeWay }), start, end: reader.end }
}

/** `down to Row 1`, `back up to Row 7 of First strap`, `as far as the hem row`: the row that they end with. */
function takeUpToRow(reader: Reader): Target['upTo'] {
  const { at } = reader
  const row = takeWayTo(reader) ? takeOneRow(reader) : undefined
  if (!row) reader.at = at
  return row
}

/** How many rows lie from the first to the last of a range, in each size. */
function rowsBetween({ first, last }: NonNullable<Target['ofRows']>): Num {
  const sizes = Math.max(first.values.length, last.values.length)
  const at = ({ values }: Num, size: number): number => values[size] ?? values[0]!
  return { values: Array.from({ length: sizes }, (_, size) => Math.abs(at(last, size) - at(first, size)) + 1), start: first.start, end: last.end }
}

/** `each row-end of the next 4 rows` */
function ofNextRows(reader: Reader): Num | undefined {
  const { at } = reader
  const count = reader.take('of|on', 'the?', 'next|first|last|final|following|foll|other?') ? takeNumber(reader) : undefined
  if (count && reader.take('rows|row')) return count
  reader.at = at
  return undefined
}

/** `along the left side`, `of the remaining side`, `of Log 1`: the side that row-ends lie on. Gives the piece, where one is named. */
export function takeSide(reader: Reader): string | undefined {
  const { at } = reader
  // `in the end of each of 6 rows down, … 6 rows up`
  if (reader.take('back|and?', 'down|up', 'again|back?') && (reader.done || /^[,;.:()]$/.test(reader.word()))) return undefined
  reader.at = at
  // `2 sc in each of next 4 row-ends (dc rows)`
  if (reader.take('(') && takeStitchName(reader) !== undefined && reader.take('rows|row', 'only?', ')')) return undefined
  reader.at = at
  // A piece may be called like an edge: `of Stair Edging`.
  const piece = reader.take('of|on|from|along') ? takePieceOrPart(reader) : undefined
  if (piece !== undefined && placeEnds(reader, 'through')) return piece
  reader.at = at
  // `down the cake end`: what the designer calls it.
  if (reader.take('along|across|down|up', 'the') && isPlaceWord(reader) && /^(?:end|edge|side)$/.test(reader.word(1)) && placeEndsBehind(reader, 2)) {
    reader.at += 2
    return undefined
  }
  reader.at = at
  if (!reader.take('along|across|down|up|on|of|around')) return undefined
  if (takeEdgeName(reader)) return pieceNamedLast(reader, at, 'of')
  const named = takePieceName(reader)
  if (named !== undefined && reader.word() !== 'edge') return named
  reader.at = at
  return undefined
}

const placeEndsBehind = (reader: Reader, ahead: number): boolean => /^(?:[,.;:()[\]]|)$/.test(reader.word(ahead))

/** `each of next 10 row-ends`, `30 dc row-ends`, `next row-end`. */
function endsCounted(reader: Reader): Named | undefined {
  const { at } = reader
  const along = /^(?:along|down|up|over)$/.test(reader.word(-1))
  const how = reader.word() === 'a' && reader.word(1) === 'row' && reader.take('a') ? { each: false } : counted(reader)
  if ((how.each || along && how.count) && intoRows(reader)) return how
  // `30 dc row-ends` are told by their number; `each dc row-end` only by its stitch.
  const stitch = takeStitchName(reader)
  const rows = stitch !== undefined && how.each && !how.count ? { rows: [stitch] } : {}
  // `each of the 7 upper row-ends`, `the border row-end`
  if (reader.take('upper|lower|left|right|border|edging|band|trim?', '-?', 'hand?', 'row', '-?', 'end|ends') || reader.take('row', 'edge|edges|side|sides')) {
    // `the row-end`, `row end of the back`, `sc in row-end,`: one.
    const one = !how.count && !how.each && reader.word(-1) === 'end' && (/^(?:the|a)$/i.test(reader.all[at]?.text ?? '') || ofOnePlace(reader) || /^row$/i.test(reader.all[at]?.text ?? '') && /^[,;.)]?$/.test(reader.word())) ? { values: [1], start: reader.end, end: reader.end } : undefined
    // `the other row ends`: all of them.
    const others = reader.word(-1) === 'ends' && /^other$/.test(reader.word(reader.word(-2) === '-' ? -4 : -3))
    return one ? { ...how, count: one } : others ? { each: how.each } : { ...how, ...rows }
  }
  reader.at = at
  return undefined
}

/** `in every row down the edge`, `in each of 12 rows`: a row that stitches go into is an end of it. */
function intoRows(reader: Reader): boolean {
  const { at } = reader
  const rows = reader.take('row|rows') && !/^(?:below|from|before|-|end|ends|edge|edges|side|sides)$/.test(reader.word()) && numberAhead(reader) === undefined
  if (!rows) reader.at = at
  return rows
}

/** `row-end of right shoulder`; not `row-end of each row`. */
function ofOnePlace(reader: Reader): boolean {
  return reader.word() === 'of' && [1, 2, 3].every((ahead) => !/^(each|every|all|next|rows?|rem|remaining)$/.test(reader.word(ahead)) && reader.peek(ahead)?.kind !== 'number')
}

/** `row-end of each of Rows 18 to 2`, `end of each of next 24 rows`, `side of each dc row`, `ends of the 3 button side rows`, `end of each row`. */
function endsOfRows(reader: Reader): Named | undefined {
  const { at } = reader
  // `1 sc in each of Rows 10 to 1`
  const rows = reader.take('each|every', 'of', 'the?') ? takeRowNumbers(reader) : undefined
  if (rows) return { each: true, count: rowsBetween(rows), ofRows: rows }
  reader.at = at
  reader.take('the|both')
  if (reader.take('end|ends|edge|side|sides', 'st|sts|stitch|stitches|loop|loops?', 'of') || reader.take('row', '-?', 'end|ends', 'of')) {
    reader.at -= 1
    const range = takeOfRows(reader)
    if (range) return { each: true, count: rowsBetween(range), ofRows: range }
    reader.at += 1
    const how = counted(reader)
    const first = rowsNamed(reader, how)
    if (first) {
      const { at: here } = reader
      const more = reader.take('and', 'in|into?', 'the?', 'end|ends|side|sides?', 'of') ? rowsNamed(reader, counted(reader)) : undefined
      if (!more?.kind || !first.kind) reader.at = here
      const rows = first.kind && [first.kind, ...(more?.kind ? [more.kind] : [])]
      const each = how.each || more?.kind !== undefined
      const count = more?.kind ? undefined : (how.count ?? (!how.each && first.one ? { values: [1], start: reader.end, end: reader.end } : undefined))
      return { each, ...(count && { count }), ...(rows && { rows }) }
    }
  }
  reader.at = at
  return undefined
}

/** `each of the next 12`, `next 12`, `each`, `the`. */
function counted(reader: Reader): Pick<Named, 'each' | 'count'> {
  reader.take('the|its|their')
  const each = reader.take('each|every|all')
  reader.take('of')
  reader.take('the|its|their')
  const { start } = reader
  const next = reader.take('next|following|foll|first|last|final|other') || outermost(reader)
  reader.take('rem|remaining|these|left|right', '-?', 'hand?')
  const count = takeNumber(reader) ?? (next && !each ? { values: [1], start, end: reader.end } : undefined)
  return { each, ...(count && { count }) }
}

/** `the top row-end of the left edge`: the one that is come to first. `the top row-end of Row 3` is told by its row. */
function outermost(reader: Reader): boolean {
  const words = [1, 2, 3, 4, 5].map((ahead) => reader.word(ahead)).filter((word) => word !== '-').join(' ')
  return !/^row ends? (?:of|on|at) (?:row|rnd)/.test(words) && reader.take('top|bottom|topmost|uppermost|lowest|bottommost')
}

/** `dc row`, `sc rows`, `rows`, `shell row`, `button side rows`: rows by their stitch, or by words that tell where they lie. */
function rowsNamed(reader: Reader, { count }: Pick<Named, 'count'>): { readonly kind?: string; readonly one: boolean } | undefined {
  const { at } = reader
  const kind = takeStitchName(reader) ?? takeGroupName(reader)
  if (!kind && count) for (let words = 0; words < 3 && isPlaceWord(reader); words += 1) reader.at += 1
  if (reader.take('row|rows') && !(numberAhead(reader) !== undefined && !kind)) return { ...(kind && { kind }), one: reader.word(-1) === 'row' }
  reader.at = at
  return undefined
}

const isPlaceWord = (reader: Reader): boolean => reader.peek()?.kind === 'word' && numberAhead(reader) === undefined && !/^(row|rows|and|in|into|of)$/.test(reader.word())

/** `(2 per row)` */
function perRow(reader: Reader): void {
  const { at } = reader
  if (reader.word() !== '(') return
  let depth = 0
  let per = false
  do {
    if (reader.word() === '(') depth += 1
    if (reader.word() === ')') depth -= 1
    if (/^(per|every|each)$/.test(reader.word())) per = true
    reader.at += 1
  } while (depth > 0 && !reader.done)
  if (!per) reader.at = at
}
