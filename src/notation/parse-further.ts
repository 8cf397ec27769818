import { numberAhead, takeNumber } from './numbers.ts'
import { takeTarget } from './parse-target.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/**
 * Stitches beside the one that each place gets anyway, in every corner:
 *
 *   working 2 additional sc in the middle sc of each corner (3 sc in all in that st)   adding 2 sc in each corner st so that it holds 3 sc
 */
export function parseFurther(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const adding = reader.take('adding|add')
  if (!adding) reader.take('with|working|work|making|placing|putting')
  const further = takeNumber(reader)
  const said = further && reader.take('additional|extra|more|further|added')
  const name = reader.start
  const stitch = further && (adding || said) ? takeStitchName(reader) : undefined
  const named = { start: name, end: reader.end }
  const target = stitch === undefined ? undefined : takeTarget(reader)
  if (further && stitch !== undefined && target?.walk === 'each' && target.thing?.kind === 'stitch' && target.thing.where === 'corner') {
    const count = { ...further, values: further.values.map((value) => value + 1) }
    if ((takeAll(reader) ?? count.values[0]) === count.values[0]) return [{ node: 'work', stitch, count, target, name: named, start, end: reader.end }]
  }
  reader.at = at
  return undefined
}

/** `(3 sc in all in that st)`, `so that it holds 3 sc`, `, making 3 sc in all`: what each of them has then. */
function takeAll(reader: Reader): number | undefined {
  const { at } = reader
  const open = reader.take('(')
  const lead = open || reader.take(',?', 'so', 'that?', 'it|each|there', 'holds|has|have|are|is') || reader.take(',?', 'making|giving')
  const count = lead ? takeNumber(reader) : undefined
  const stitch = count && (reader.take('st|sts|stitch|stitches') || takeStitchName(reader) !== undefined)
  if (stitch && numberAhead(reader) === undefined) {
    reader.take('in', 'all|total') || reader.take('altogether')
    reader.take('in|into', 'that|this|the|each|one', 'same?', 'st|stitch|place|corner|sc|hdc|dc')
    if (!open || reader.take(')')) return count.values[0]
  }
  reader.at = at
  return undefined
}
