import { takeNumber } from './numbers.ts'
import { takeTarget } from './parse-target.ts'
import { takeThing } from './parse-thing.ts'
import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'
import type { Num } from './target.ts'

/** `Ch 3, sl st in 3rd ch from hook (picot made)` and the word `picot`: no stitch and no space. At a row's head `ch 4, sl st in first ch` is a ring. */
export function parsePicot(reader: Reader, before: readonly Instruction[]): readonly Instruction[] | undefined {
  const start = reader.start
  const at = reader.at
  takeNumber(reader)
  if (/^picots?$/.test(reader.word()) || reader.word() === 'ch' && reader.word(1) === '-' && reader.word(3) === 'picot') {
    reader.at += reader.word() === 'ch' ? 4 : 1
    const { at: behind } = reader
    if (!backDown(reader)) reader.at = behind
    takeHow(reader)
    return [{ node: 'aside', picot: true, start, end: reader.end }]
  }
  reader.at = at
  // `where picot = ch 3, sl st in last sc`: what the word stands for.
  if (reader.take('where|with?', 'a|each?', 'picot', '=|:|is|means') && chainAndSlip(reader)) return [{ node: 'aside', start, end: reader.end }]
  reader.at = at
  const first = takeNumber(reader)
  if (!reader.take('ch|chain')) {
    reader.at = at
    return undefined
  }
  const count = first ?? takeNumber(reader)
  const joined = count && reader.take(',|and?', 'join', 'the?', 'ch|chain')
  if (joined && backDown(reader) && reader.take('with', 'a?', 'sl|ss|slst', '-?', 'st?')) {
    takePicotMade(reader)
    return [{ node: 'aside', picot: true, start, end: reader.end }]
  }
  if (count && !joined && (reader.take(',|and?', 'sl', '-?', 'st') || reader.take(',|and?', 'ss|slst'))) {
    const begins = before.every(({ node }) => node === 'aside') && !/\bpicots?\b/i.test(reader.all.map(({ text }) => text).join(' '))
    if (!begins && backDown(reader)) {
      takePicotMade(reader)
      return [{ node: 'aside', picot: true, start, end: reader.end }]
    }
    const target = takeTarget(reader)
    const whole = target?.walk === 'from-hook' ? inOwnChain(target.count, count)
      : target?.walk === 'nth' && target.count?.values[0] === 1 && target.thing?.kind === 'space' || isPicotTail(reader, target !== undefined)
    if (whole) {
      takePicotMade(reader)
      return [{ node: 'aside', picot: true, start, end: reader.end }]
    }
  }
  reader.at = at
  return undefined
}

/** `(= ch 3, sl st back into last sc)`: how the picot is made that was named. */
function takeHow(reader: Reader): void {
  const { at } = reader
  if (!reader.take('(|[', '=?') || !chainAndSlip(reader) || !reader.take(')|]')) reader.at = at
}

function chainAndSlip(reader: Reader): boolean {
  const chain = reader.take('ch|chain') && takeNumber(reader) !== undefined || takeNumber(reader) !== undefined && reader.take('ch|chain')
  return chain && (reader.take(',|and?', 'sl', '-?', 'st') || reader.take(',|and?', 'ss|slst')) && backDown(reader)
}

/** The slip stitch goes back into the chain's own first loop: `ch 3, sl st in 3rd ch from hook`. */
function inOwnChain(nth: Num | undefined, count: Num): boolean {
  return (nth?.values[0] ?? 0) <= (count.values[0] ?? 0) && (nth?.values[0] ?? 0) > 1
}

/** `ch 3, sl st in last dc made`, `in top of sc just made`, `in base of ch`, `in the sc at its base`, `in same sc as last sc`, `back into that sc`: the slip stitch goes back to where the chain began. */
function backDown(reader: Reader): boolean {
  const { at } = reader
  if (reader.take('back?', 'in|into|to', 'the|that|same|this', 'same?')) {
    const named = takeThing(reader)?.kind === 'stitch'
    const there = /^(?:that|this)$/.test(reader.all[reader.at - 2]?.text.toLowerCase() ?? '') || reader.take('at', 'its|the', 'base|foot') || reader.take('as', 'the?', 'last|previous') && takeThing(reader) !== undefined
    if (named && there) return true
  }
  reader.at = at
  reader.take('back')
  const { at: into } = reader
  const base = reader.take('in|into|to', 'the?', 'base|first|1st', 'of?', 'the?', 'ch|chain')
  if (base && reader.word() !== '-' && (reader.done || /^[,;.)(]$/.test(reader.word()))) return true
  reader.at = into
  reader.take('in|into|to', 'the?', 'top?', 'of?', 'the?', 'last|previous|prev?')
  takeThing(reader)
  const last = /^(last|previous|prev)$/.test(reader.word(-2)) || /^(last|previous|prev)$/.test(reader.word(-1))
  if (reader.take('just?', 'made|worked|completed') || last && (isPicotTail(reader) || placeEnds(reader, 'to', 'with'))) return true
  reader.at = at
  return false
}

function isPicotTail(reader: Reader, placed = true): boolean {
  return placed && (reader.word() === '(' && reader.word(1) === 'picot' || reader.word() === '-' && reader.word(1) === 'picot')
}

function takePicotMade(reader: Reader): void {
  if (reader.take('to|and', 'form|make', 'a|one|the?', 'picot') || reader.take('(|[', 'picot', 'made|formed|complete|completed?', ')|]')) return
  reader.take('-|–|—', 'picot', 'made|formed|complete|completed')
}
