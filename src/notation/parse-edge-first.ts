import { numberAhead, takeNumber } from './numbers.ts'
import { takeStitchName, takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import { takeRowNumbers } from './row-named.ts'
import type { Aside, Instruction, Work } from './syntax.ts'
import type { Num, Target } from './target.ts'

/**
 * An edge by its rows, or one place of it, and behind a colon what is worked there:
 *
 *   Ends of Rows 1-4: 4 sc   Left side, Rows 12-7: 6 sc   Rows 8-5: 1 sc in each row-end   Unworked sc of Row 4: 4 sc   Corner ch: 3 sc
 */
export function parseEdgeFirst(reader: Reader): readonly Instruction[] | undefined {
  const { at } = reader
  const begins = at === 0 || /^[,.;:]$/.test(reader.word(-1))
  const found = begins ? (rowsFirst(reader) ?? stitchesFirst(reader) ?? cornerFirst(reader)) : undefined
  if (!found) reader.at = at
  return found && [found]
}

const headSide = 'left|right|first|second|other|next|same|long|short|sl|ss|st'

/** `Ends of Rows 1-4:`, `other side, Rows 8-5:` */
function rowsFirst(reader: Reader): Work | undefined {
  const { at, start } = reader
  const side = reader.take('the?', headSide, '-?', 'st|hand?', 'side|edge', ',')
  if (!side) reader.at = at
  reader.take('the?', 'ends|sides|edges', 'of')
  const ofRows = takeRowNumbers(reader)
  if (!ofRows || !reader.take(':')) return undefined
  const rows: Num = { values: [Math.abs(ofRows.last.values[0]! - ofRows.first.values[0]!) + 1], start, end: reader.end }
  const told = stitches(reader)
  if (!told) return undefined
  const each = reader.take('in|into', 'each|every|the', 'row', '-?', 'end|ends') || reader.take('in|into', 'each|every', 'row|end?') || reader.take('per', 'row') || reader.take('each')
  const target: Target = { walk: 'next', count: each ? rows : told.count, eachOf: true, thing: { kind: 'row-end' }, ofRows, start, end: reader.end }
  return { node: 'work', stitch: told.stitch, name: told.name, ...(each && { count: told.count }), target, start, end: reader.end }
}

/** `Unworked sc of Row 4: 4 sc`: one in each of so many. */
function stitchesFirst(reader: Reader): Work | Aside | undefined {
  const { at, start } = reader
  reader.take('the?', 'unworked|free|skipped|slip?')
  const thing = numberAhead(reader) === undefined ? takeThing(reader) : undefined
  const ofRow = thing?.kind === 'stitch' && reader.take('of|on', 'row|rnd|round') ? takeNumber(reader) : undefined
  if (thing?.kind !== 'stitch' || !ofRow && (thing.stitch === undefined || thing.stitch !== 'sl st') || !reader.take(':')) {
    reader.at = at
    return undefined
  }
  const { at: here, end } = reader
  const told = stitches(reader)
  // `Sl sts: 3 sc in outermost`: what is worked tells its own place.
  if (told && reader.word() === 'in') {
    reader.at = here
    return { node: 'aside', start, end }
  }
  if (!told || !reader.done && !/^[,.;(]$/.test(reader.word())) return undefined
  return { node: 'work', stitch: told.stitch, name: told.name, target: { walk: 'next', count: told.count, eachOf: true, thing, ...(ofRow && { ofRow: ofRow.values[0]! }), start, end: reader.end }, start, end: reader.end }
}

/** `Corner ch: 3 sc` */
function cornerFirst(reader: Reader): Work | undefined {
  const { start } = reader
  if (reader.word() !== 'corner') return undefined
  const thing = takeThing(reader)
  const told = thing?.where === 'corner' && thing.kind !== 'space' && reader.take(':') ? stitches(reader) : undefined
  if (!told || !reader.done && !/^[,.;]$/.test(reader.word())) return undefined
  return { node: 'work', stitch: told.stitch, name: told.name, count: told.count, target: { walk: 'next', thing: thing!, start, end: reader.end }, start, end: reader.end }
}

/** `4 sc` */
function stitches(reader: Reader): { readonly count: Num; readonly stitch: string; readonly name: { readonly start: number; readonly end: number } } | undefined {
  reader.take('work')
  const count = takeNumber(reader)
  const { start } = reader
  const stitch = count && takeStitchName(reader)
  return stitch === undefined ? undefined : { count: count!, stitch, name: { start, end: reader.end } }
}
