import { numberAhead, takeNumber } from './numbers.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'
import type { Num } from './target.ts'

/**
 * Runs that name no stitch, as charts are written out:
 *
 *   A12 B3 A10   14A, 3B, 14A      so many stitches of a colour
 *   3 A, 1 B, 3 A                  so many tiles of a colour, in a row of tiles
 *   4 solid, 6 open squares        squares of filet
 */
export function parseBlocks(reader: Reader): readonly Instruction[] | undefined {
  return squares(reader) ?? colourRun(reader)
}

const solid = 'solid|filled|closed'
const open = 'open|empty'

function squares(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const count = numberAhead(reader) === undefined ? undefined : takeNumber(reader)
  const kind = count && (reader.take(solid) ? 'solid' as const : reader.take(open) ? 'open' as const : undefined)
  reader.take('square|squares|mesh|meshes|block|blocks|space|spaces|sq|sqs')
  if (!count || !kind || !endsHere(reader)) {
    reader.at = at
    return undefined
  }
  return [{ node: 'blocks', of: kind, count, start, end: reader.end }]
}

function colourRun(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const run = letterFirst(reader) ?? letterLast(reader)
  if (!run || !endsHere(reader)) {
    reader.at = at
    return undefined
  }
  const span = { start, end: reader.end }
  const worked: Instruction = reader.tiles ? { node: 'blocks', of: 'tile', count: run.count, ...span }
    : { node: 'work', stitch: 'st', target: { walk: 'next', count: run.count, ...span }, ...span }
  return [{ node: 'aside', yarn: run.yarn, ...span }, worked]
}

interface Run {
  readonly yarn: string
  readonly count: Num
}

function letterFirst(reader: Reader): Run | undefined {
  const yarn = reader.peek()?.text ?? ''
  if (!isYarn(reader, yarn) || reader.peek(1)?.kind !== 'number' || !reader.touches(1)) return undefined
  reader.at += 1
  const count = takeNumber(reader)
  return count && { yarn, count }
}

function letterLast(reader: Reader): Run | undefined {
  if (reader.peek()?.kind !== 'number') return undefined
  const count = takeNumber(reader)
  const yarn = reader.peek()?.text ?? ''
  if (!count || !isYarn(reader, yarn)) return undefined
  reader.at += 1
  return { yarn, count }
}

/** A letter that the materials list; where they list none, any large letter that is no stitch of a letter code. */
function isYarn(reader: Reader, text: string): boolean {
  const { yarns, letters } = reader.vocabulary
  return yarns.length > 0 ? yarns.includes(text) : letters !== true && /^([A-Z]|MC|CC)$/.test(text)
}

/** Nothing follows that the number could belong to: `A 12 sc` is 12 sc. */
function endsHere(reader: Reader): boolean {
  if (reader.done || /^[,;.)\]}→←]$/.test(reader.word()) || /^(and|then|turn)$/.test(reader.word())) return true
  const next = reader.peek()?.text ?? ''
  return isYarn(reader, next) && reader.peek(1)?.kind === 'number' || reader.peek()?.kind === 'number' && isYarn(reader, reader.peek(1)?.text ?? '')
}
