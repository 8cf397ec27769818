import { numberAhead, takeNumber } from './numbers.ts'
import { takePieceName } from './parse-piece-name.ts'
import type { Reader } from './reader.ts'
import { takeRowNumbers } from './row-named.ts'
import { rowsIn } from './sewn.ts'
import type { Aside } from './syntax.ts'
import type { Num } from './target.ts'

/** A side, row-end by row-end from one of its ends on: how many are closed and how many stay open. */
export interface ClosedInPart {
  readonly portions: readonly Portion[]
}

export interface Portion {
  readonly count: Num
  readonly open: boolean
}

/**
 * A side that is closed in part, by a needle or by slip stitches through both layers, in one sentence or in several:
 *
 *   sew together 8 row-ends, leave 7 row-ends open for the thumb, sew together the remaining 15 row-ends
 *   from the lower edge sew 20 row-ends of each side; the upper 16 row-ends of front and back stay open for the arm
 *   sew the side edges together over Rows 1 to 10; Rows 11 to 20 stay open for the armholes
 *   sl st through both layers in the first 10 pairs of row-ends; fasten off. Leave the next 6 pairs open. Rejoin yarn and sl st through both layers in the last 8 pairs
 *
 * It leaves the fabric alone; together they are the row-ends of the side.
 */
export function parseClosedInPart(reader: Reader): readonly Aside[] | undefined {
  const { at, start } = reader
  const portions: Portion[] = []
  for (let portion = takePortion(reader); portion; portion = takePortion(reader)) portions.push(portion)
  if (portions.length > 0) return [{ node: 'aside', closed: { portions }, start, end: reader.end }]
  reader.at = at
  return undefined
}

function takePortion(reader: Reader): Portion | undefined {
  const { at } = reader
  if (at > 0) takeBetween(reader)
  const portion = takeOpen(reader) ?? takeClosed(reader)
  if (portion) return portion
  reader.at = at
  return undefined
}

/** `; fasten off. Rejoin yarn and`, `, then` */
function takeBetween(reader: Reader): void {
  for (;;) {
    const { at } = reader
    reader.take('re?', '-?', 'join|rejoin|joining|rejoining', 'the|your?', 'yarn|thread')
    reader.take('fasten|cut|break', 'off|yarn|the?', 'yarn|thread?')
    reader.take(',|;|.|and|then|now')
    if (reader.at === at) return
  }
}

const lead = ['from|starting|beginning|begin|start', 'at|from?', 'the?', 'lower|bottom|top|upper|foundation|finger|wrist|cuff|cast|hem|first|last|side?', '-?', 'hand|on?', 'edge|end|row'] as const

function takeClosed(reader: Reader): Portion | undefined {
  const { at } = reader
  if (reader.take(...lead)) reader.take(',')
  const stitched = reader.take('sew|sewing|oversew|oversewing|seam|overcast|whipstitch|join|close|sewn') || reader.take('whip|mattress', '-?', 'stitch|st') || reader.take('sl|slip', 'st|stitch|sts', 'through', 'both', 'layers|thicknesses', 'in|into|along|over|of') || reader.take('ss', 'through', 'both', 'layers|thicknesses', 'in|into|along|over|of')
  const count = stitched ? takeStretch(reader) : undefined
  if (count) {
    takeWhose(reader)
    reader.take('together')
    if (ends(reader)) return { count, open: false }
  }
  reader.at = at
  return undefined
}

const isOpen = 'open|free|unsewn|unjoined|unseamed'

function takeOpen(reader: Reader): Portion | undefined {
  const { at } = reader
  const left = reader.take('leave|leaving')
  const count = takeStretch(reader)
  if (count) {
    takeWhose(reader)
    const said = reader.take('stay|stays|remain|remains|are|is', 'left?', isOpen) || left && reader.take(isOpen)
    if (said) {
      if (reader.take('for', 'the|each|both|an?')) reader.take('left|right?', 'thumb|arm|arms|armhole|armholes|hand|neck|head|slit|slits|opening|sleeve|sleeves|leg|legs', 'hole|opening|slit?')
      if (ends(reader)) return { count, open: true }
    }
  }
  reader.at = at
  return undefined
}

/** `the first 10 pairs of row-ends`, `together the remaining 15 row-ends`, `the side edges together over Rows 1 to 10`: what lies along a side, and no stitches. */
function takeStretch(reader: Reader): Num | undefined {
  reader.take('together|up')
  reader.take('the|both|each', 'two|side|long?', 'side|long?', 'edges|edge|sides|seams|seam|row-ends', 'together?', 'along|over|for|up|down|at|from|of') || reader.take('side|long', 'edges|edge|seams|seam', 'together?', 'along|over|for|up|down|at|from|of')
  const rows = takeRowNumbers(reader)
  if (rows) return rowsIn(rows)
  reader.take('the')
  reader.take('first|next|last|remaining|final|other|upper|lower|top|bottom|following')
  if (numberAhead(reader) === undefined) return undefined
  const count = takeNumber(reader)!
  reader.take('remaining')
  if (reader.take('pairs') ? !reader.take('of') || takeRowEnds(reader) : takeRowEnds(reader) || reader.take('rows')) return count
  return undefined
}

const takeRowEnds = (reader: Reader): boolean => reader.take('row', '-?', 'ends') || reader.take('row-ends') || reader.take('ends', 'of', 'rows')

/** `of each side`, `of front and back`, `on both sides`, `at each side` */
function takeWhose(reader: Reader): void {
  if (reader.take('of|on|at', 'each|both|the|either', 'side|sides|edge|edges|pieces|layers')) return
  const { at } = reader
  if (!reader.take('of|on')) return
  if (reader.take('the?', 'front', 'and', 'the?', 'back') || reader.take('the?', 'back', 'and', 'the?', 'front|fronts')) return
  if (takePieceName(reader) === undefined || reader.take('and') && takePieceName(reader) === undefined) reader.at = at
}

const ends = (reader: Reader): boolean => reader.done || /^(?:[,;.):]|and|then)$/.test(reader.word())
