import { takeNumber } from './numbers.ts'
import { parseItems } from './parse-items.ts'
import { takeRows } from './parse-rate.ts'
import { takeStitchName } from './parse-thing.ts'
import { takeTarget } from './parse-target.ts'
import { throughLayers } from './parse-through.ts'
import type { Reader } from './reader.ts'
import type { Instruction, Work } from './syntax.ts'
import { inSize, type Target } from './target.ts'

/**
 * A rate before the sides that are worked at it, as far as the semicolon behind them:
 *
 *   3 sc for every 2 row-ends: 33 along the 22 rows of the first half, 33 along the 22 rows of the second half;
 *   working 3 sc for every 2 rows, 9 sc up the 6 row-ends of the slit;
 */
export function parseRateFirst(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const working = reader.take('working|work|at|with|placing')
  reader.take('a', 'rate', 'of')
  const stitches = takeNumber(reader)
  const stitch = stitches && takeStitchName(reader)
  const rows = stitch === undefined ? undefined : takeRows(reader)
  const { end } = reader
  if (stitches && rows && stitch !== undefined && (reader.take(':') || working && (reader.take(',') || reader.peek()?.kind === 'number'))) {
    const sides = parseItems(reader, (inner) => /^[;.]$/.test(inner.word()))
    if (sides.some(isAlongRowEnds)) return [{ node: 'aside', words: '', start, end }, ...sides.map((item) => (isAlongRowEnds(item) ? { ...item, target: { ...item.target, rate: { stitches, rows, about: false } } } : item))]
  }
  reader.at = at
  return undefined
}

/** `3 dc for every 2 rows along the 16 row-ends`: so many rows at that rate. Where the rate does not divide them, the maker sees how many they come to. */
export function parseRateAlong(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const stitches = takeNumber(reader)
  const { start: from } = reader
  const stitch = stitches && takeStitchName(reader)
  const name = { start: from, end: reader.end }
  const rows = stitch === undefined ? undefined : takeRows(reader)
  const target = rows && reader.word() !== ':' ? takeTarget(reader) : undefined
  if (stitches && rows && stitch !== undefined && target?.count && !target.eachOf && target.thing?.kind === 'row-end') {
    const values = target.count.values.map((ends, size) => ends * inSize(stitches, size) / inSize(rows, size))
    const layers = throughLayers(reader)
    if (values.every(Number.isInteger)) return [{ node: 'work', stitch, count: { ...stitches, values }, target: { ...target, rate: { stitches, rows, about: false } }, name, ...(layers && { layers }), start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** So many stitches along so many row-ends, with no rate of their own. */
const isAlongRowEnds = (item: Instruction): item is Work & { readonly target: Target } =>
  item.node === 'work' && item.count !== undefined && item.target?.count !== undefined && !item.target.eachOf && item.target.thing?.kind === 'row-end' && item.target.rate === undefined

/** `33 along the 22 rows`, `24 up the other side`, `33 back along the second half`: stitches as those that were named last. */
export function parseSameAlong(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const { at, start } = reader
  const count = takeNumber(reader)
  if (count && reader.take('more?', 'back?', 'evenly?', 'along|down|up|across')) {
    reader.at -= 1
    const target = takeTarget(reader)
    const { at: behind } = reader
    const stitch = target && lastStitch(before, reader, at)
    reader.at = behind
    if (target && stitch !== undefined && (target.walk === 'edge' || target.evenly || target.thing?.kind === 'row-end')) return [{ node: 'work', stitch, count, target, start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** The stitch that was worked last; at the head of what a rate leads in, that of the rate. */
function lastStitch(before: readonly Instruction[], reader: Reader, at: number): string | undefined {
  const worked = before.findLast((item) => item.node === 'work')
  if (worked) return worked.stitch
  for (let from = at - 1; from >= 0; from -= 1) {
    reader.at = from
    if (reader.vocabulary.stitchAt([reader.word(), reader.word(1), reader.word(2)])) {
      return takeStitchName(reader)
    }
  }
  return undefined
}
