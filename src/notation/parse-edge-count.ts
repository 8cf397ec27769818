import { numberAhead, takeNumber } from './numbers.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Num, Target } from './target.ts'

/** `dc down side, 28 dc; …`, `sc evenly down side (20), …`: the number behind an edge is that of its stitches. The row's own total was taken before. */
export function takeEdgeCount(reader: Reader, stitch: string | undefined): Num | undefined {
  if (numberAhead(reader, 1) === undefined) return undefined
  const { at } = reader
  if (reader.take(',|:|–|—')) {
    const count = takeNumber(reader)
    if (count && takeStitchName(reader) === stitch && endsSide(reader)) return count
  } else if (reader.take('(')) {
    const count = takeNumber(reader)
    reader.take('sc|hdc|dc|tr|st|sts')
    if (count && reader.take(')') && (reader.done || /^[,;.]$/.test(reader.word()))) return count
  }
  reader.at = at
  return undefined
}

/** Whether nothing more is worked along this side: the sentence ends, or another side is named. */
export function endsSide(reader: Reader): boolean {
  const { at } = reader
  reader.take('to', 'match|correspond') || reader.take('in', 'the', 'same', 'way|manner|fashion') || reader.take('likewise')
  const ends = reader.done || /^[;.)]$/.test(reader.word()) || reader.word() === ',' && /^(along|across|up|down|then|turn|join|now)$/.test(reader.word(1))
  if (!ends) reader.at = at
  return ends
}

/** `sc evenly down next 6 row-ends (1 sc per row)`: one in each of them. */
export function onePerRow(target: Target): Target {
  const { evenly: _, rate, ...each } = target
  const one = rate && rate.rows.values.join() === '1' && rate.stitches?.values.join() === '1'
  return one && target.walk === 'next' && target.count && target.thing?.kind === 'row-end' ? { ...each, eachOf: true } : target
}

/** More than so many stitches do not go into one row-end. */
const mostInOne = 3

/** `8 sc along the unworked sts of Row 6`, `14 sc along Row 8`, `6 sc down the row-ends of Rows 12-7`, `sc 6 in row-ends`, `4 sc along the underside of the ch-4`: without `each` so many are one in each. Undefined where they are not. */
export function oneInEach(reader: Reader, from: number, count: Num | undefined, target: Target): Target | undefined {
  const words = reader.all.slice(from, reader.at).map(({ text }) => text.toLowerCase())
  const asMany = count && target.ofRows !== undefined && target.count?.values.join() === count.values.join()
  if (!count || Math.min(...count.values) <= mostInOne && !asMany || !/^(?:along|across|down|up|over|in|into)$/.test(words[0] ?? '') || words.some((word) => /^(?:each|every|all|ea|any)$/.test(word))) return undefined
  if (target.thing?.kind === 'chain' && target.edge === 'underside' && target.count?.values.join() === count.values.join()) return { ...target, eachOf: true }
  const row = /^(?:row|rnd|round)$/.test(words[1] ?? '')
  const several = row || target.ofRows !== undefined || words.some((word) => /^(?:sts|stitches|ends|[a-z]+cs)$/.test(word))
  const { walk, thing, ofRow, count: places } = target
  // `sc 4 in remaining sl sts`
  const others = walk === 'each' && words.some((word) => /^(?:remaining|rem|other)$/.test(word)) || words.some((word) => /^(?:center|centre|middle)$/.test(word))
  if (!several || thing?.kind !== 'row-end' && !(thing?.kind === 'stitch' && (ofRow !== undefined || others))) return undefined
  // Where the places are counted too, the two numbers must agree.
  if (places && places.values.join() !== count.values.join()) return undefined
  return places || walk === 'next' || others || walk === 'each' && (row || thing.kind === 'row-end') ? { ...target, walk: 'next', count, eachOf: true } : undefined
}

/** `8 dc along the row ends of the flap`, `12 sc in row-ends`: without `each` so many are all of them together. */
export function inAllAlong(reader: Reader, from: number, count: Num | undefined, target: Target): Target {
  const words = reader.all.slice(from, reader.at).map(({ text }) => text.toLowerCase())
  const along = /^(?:along|across|down|up|over|in|into)$/.test(words[0] ?? '') && !words.some((word) => /^(?:each|every|all)$/.test(word))
  // `12 sc along the 8 rows of First patch`: all of them along so many row-ends.
  if (along && count && target.walk === 'next' && target.thing?.kind === 'row-end' && !target.thing.rows && target.count && !target.eachOf && target.count.values.join() !== count.values.join() && Math.min(...count.values) > mostInOne) return { ...target, evenly: true }
  if (!along || !count || target.walk !== 'each' || target.thing?.kind !== 'row-end' || target.thing.rows) return target
  // `3 sc in the row-ends of Right band`: so few may go into each of them as well.
  if (Math.min(...count.values) <= mostInOne) return { ...target, fewInAll: true }
  return { walk: 'edge', edge: 'side', ...(target.sideOf !== undefined && { sideOf: target.sideOf }), start: target.start, end: target.end }
}
