import { numberAhead, takeNumber } from './numbers.ts'
import { rowEnds } from './parse-row-ends.ts'
import { takeOfStep } from './parse-tail.ts'
import { takeStitchName, takeThing } from './parse-thing.ts'
import { takeWhereabouts } from './parse-where.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Instruction } from './syntax.ts'
import type { Num, Target } from './target.ts'

/**
 * Places one after another, and behind them the stitch that goes into each:
 *
 *   10 row ends, the 8 stitches of the first stair, 6 row ends, a dc in each   the 12 ch of the foundation and the 5 row-ends: 1 sc in each of them
 */
export function parsePlacesFirst(reader: Reader): readonly Instruction[] | undefined {
  const { at } = reader
  if ([0, 1, 2].every((ahead) => numberAhead(reader, ahead) === undefined)) return undefined
  const places: Target[] = []
  for (let place = placeHere(reader); place; place = placeHere(reader)) {
    places.push(place)
    if (!reader.take(',|;|and|then|–|—|:', 'and|then?')) break
    const stitch = stitchInEach(reader)
    if (stitch) return places.map((target) => ({ node: 'work', ...stitch, target, start: target.start, end: target.end }))
  }
  reader.at = at
  return undefined
}

/** `10 row ends`, `the 8 stitches of the first stair`, `next 12 ch of Row 3`: so many places of one sort. */
function placeHere(reader: Reader): Target | undefined {
  const { at, start } = reader
  const ends = rowEnds(reader, start, false)
  if (ends?.count) return { ...ends, eachOf: true }
  reader.at = at
  reader.take('the|these|those?', 'next|other|remaining|first|last?')
  const said = reader.at > at
  const count = takeNumber(reader)
  const thing = count && takeThing(reader)
  if (thing?.kind !== 'stitch' && thing?.kind !== 'chain') {
    reader.at = at
    return undefined
  }
  const ofRow = takeRowNamed(reader, 'left?', 'of|on|from|at')
  takeOfStep(reader)
  const where = takeWhereabouts(reader)
  // `1 chain, 1 dc in each`: a chain by its number alone is one to make.
  if (thing.kind === 'chain' && !said && !where) {
    reader.at = at
    return undefined
  }
  return { walk: 'next', count: count!, eachOf: true, thing, ...(ofRow !== undefined && { ofRow }), start, end: reader.end }
}

/** `a double crochet in each`, `working 2 sc in each of these`, `1 dc into every one`. */
function stitchInEach(reader: Reader): { readonly stitch: string; readonly count: Num; readonly name: { readonly start: number; readonly end: number } } | undefined {
  const { at, start } = reader
  reader.take('with|work|working|make|making|put|placing?')
  const count = reader.take('a|an') ? { values: [1], start, end: reader.end } : takeNumber(reader)
  const name = reader.start
  const stitch = takeStitchName(reader)
  const { end } = reader
  if (stitch && reader.take('in|into|to', 'each|every|all')) {
    reader.take('of?', 'these|them|those|one|place|places')
    if (reader.done || /^[,;.:)]$/.test(reader.word())) return { stitch, count: count ?? { values: [1], start, end }, name: { start: name, end } }
  }
  reader.at = at
  return undefined
}
