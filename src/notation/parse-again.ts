import { motifWord } from './motif-words.ts'
import { numberAhead, takeNumber } from './numbers.ts'
import { edgeAhead } from './parse-edge-ahead.ts'
import { takePieceName } from './parse-piece-name.ts'
import { rowEnds } from './parse-row-ends.ts'
import { takeToEnd } from './parse-reach.ts'
import { takeTarget } from './parse-target.ts'
import { takeThing } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'
import type { Target } from './target.ts'

/**
 * `Sc in 2nd ch from hook and in each ch across`, `sc in each dc and ch-1 sp across`: the same stitch, another place.
 *                         ^                                        ^
 */
export function parseAgain(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  // `(those 2 skipped chains don't count!) and in every ch along`
  const layers = isLayersBetween(reader, before)
  const last = layers ? before.at(-2) : reader.word(-1) === 'and' && reader.word(-2) === ')' ? before.findLast(({ node }) => node !== 'aside') : before.at(-1)
  const counted = sameStitch(reader, before)
  if (counted) return [counted]
  if (last?.node !== 'work' && last?.node !== 'group') return undefined
  const and = layers || reader.word(-1) === 'and'
  const at = reader.at
  const start = reader.start
  // `in the back loop of the same stitch and of each stitch around`
  const of = and && reader.word() === 'of' && /^(each|every|next)$/.test(reader.word(1))
  if (edgeHeadsNext(reader)) return undefined
  const placed = /^(in|into|on)$/.test(reader.word()) || of || and && /^(next|each|every|last|first|foll|following)$/.test(reader.word())
  if (of) reader.at += 1
  const listed = /^(?:,|and)$/.test(reader.word(-1)) && last.node === 'work' && (last.target?.eachOf === true || last.target?.thing?.kind === 'row-end' && last.target.count && !last.count) ? takeListed(reader) : undefined
  const target = listed ?? (placed ? takeTarget(reader) : and && last.target?.walk === 'each' ? takeEachSpace(reader) : and && spacesCounted(reader, last) ? takeCountedSpaces(reader) : and && isOnePlace(last.target) ? takeRest(reader) : undefined)
  if (!target || target.thing === undefined && target.walk === 'next' && target.loop !== undefined || startsWork(reader)) {
    reader.at = at
    return undefined
  }
  const { counts: _, ...same } = last.node === 'work' ? last : { ...last, counts: undefined }
  return [{ ...same, target, start, end: reader.end } as Instruction]
}

/** `sc in each of 7 row-ends; on the foundation, 3 sc in first ch`: an edge, and behind its comma what is worked there. */
function edgeHeadsNext(reader: Reader): boolean {
  const { at } = reader
  const heads = /^[;,]$/.test(reader.word(-1)) && reader.word() === 'on' && edgeAhead(reader) !== undefined
  const stitch = numberAhead(reader, 1) === undefined ? 1 : 2
  const worked = heads && /^[,:]$/.test(reader.word()) && reader.vocabulary.stitchAt([reader.word(stitch), reader.word(stitch + 1)]) !== undefined
  reader.at = at
  return worked
}

/** `sc in same sc and, through both layers, in each of next 73 sc` */
export function isLayersBetween(reader: Reader, before: readonly Instruction[]): boolean {
  const layers = before.at(-1)
  const from = layers?.node === 'start' && layers.target.walk === 'layers' ? reader.all.findIndex(({ start }) => start === layers.start) : -1
  return from > 1 && reader.word(-1) === ',' && reader.all[from - 1]!.text === ',' && /^and$/i.test(reader.all[from - 2]!.text)
}

/** `sc in each of the 3 row-ends of Top band, the 20 row-ends of Left strip and the 3 row-ends of Bottom band` */
function takeListed(reader: Reader): Target | undefined {
  const { at, start } = reader
  reader.take('and')
  const the = reader.take('the')
  if (numberAhead(reader) !== undefined) {
    const ends = rowEnds(reader, start, false)
    if (ends?.count && placeEnds(reader)) return { ...ends, walk: 'next', eachOf: true }
    if (ends) reader.at = at
    else if (the) {
      const count = takeNumber(reader)
      const thing = takeThing(reader)
      const ofPiece = thing && reader.take('of|on') ? takePieceName(reader) : undefined
      if (count && thing?.kind === 'stitch' && ofPiece !== undefined && placeEnds(reader)) return { walk: 'next', count, thing, eachOf: true, ofPiece, start, end: reader.end }
    }
  }
  reader.at = at
  return undefined
}

/** `sc in 2nd ch from hook and across`, `in same st and to the end` */
function takeRest(reader: Reader): Target | undefined {
  const { start } = reader
  return takeToEnd(reader) ? { walk: 'each', toEnd: true, start, end: reader.end } : undefined
}

const isOnePlace = (target: Target | undefined): boolean => target !== undefined && !(target.walk !== 'from-hook' && target.count) && /^(from-hook|first|same|next)$/.test(target.walk)

/** `3 dc in next ch, 1 in each of next 4 ch`: the stitch is not said again. */
function sameStitch(reader: Reader, before: readonly Instruction[]): Instruction | undefined {
  const last = before.findLast(({ node }) => node !== 'aside' && node !== 'start' && node !== 'turn')
  const { at, start } = reader
  const count = last?.node === 'work' && numberAhead(reader) !== undefined && /^(in|into)$/.test(reader.word(1)) ? takeNumber(reader) : undefined
  const target = count && takeTarget(reader)
  if (last?.node === 'work' && target && !startsWork(reader)) {
    const { counts: _, over: __, numberLast: ___, joins: ____, ...same } = last
    return { ...same, count, target, start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** After `in each dc and`: a space, which is meant as one of each. A stitch would be an instruction of its own. */
function takeEachSpace(reader: Reader): Target | undefined {
  const start = reader.start
  const thing = takeThing(reader)
  // `in each dc and ch around`: the chains of spaces, one by one.
  if (thing?.kind !== 'space' && thing?.kind !== 'chain') return undefined
  const toEnd = takeToEnd(reader)
  return { walk: 'each', thing, ...(toEnd && { toEnd }), start, end: reader.end }
}

/** `in each of the 9 dc and 2 ch-1 sps`: a number of spaces behind a number of stitches, one of the same in each of them. */
export function spacesCounted(reader: Reader, last: Instruction | undefined): boolean {
  if (last?.node !== 'work' || last.target?.eachOf !== true || numberAhead(reader) === undefined) return false
  const { at } = reader
  const counted = takeCountedSpaces(reader) !== undefined
  reader.at = at
  return counted
}

function takeCountedSpaces(reader: Reader): Target | undefined {
  const { start } = reader
  const count = takeNumber(reader)
  const named = count && reader.peek()?.text.toLowerCase() !== '-'
  const thing = named ? takeThing(reader) : undefined
  if (thing?.kind !== 'space' || !/^(?:sps|spaces|sp|space|lps|loops|arches)$/.test(reader.word(-1))) return undefined
  reader.take('of|on|along', 'the?', 'next|last|same|first|each', motifWord)
  return { walk: 'next', count: count!, eachOf: true, thing, start, end: reader.end }
}

/** After `in each ch-2 sp` comes what is worked there. */
function startsWork(reader: Reader): boolean {
  // `and in each of next 2 sc: 11 sc; fasten off`: a count.
  const counts = reader.word() === ':' && numberAhead(reader, 1) !== undefined && /^[;.]?$/.test(reader.word(3))
  return reader.word() === '(' || reader.word() === '[' || reader.word() === 'work' || numberAhead(reader) !== undefined || reader.word() === ':' && !counts
}
