import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Aside, Instruction } from './syntax.ts'

/**
 * `skip the sl st`, `leaving the closing ss of the last round unworked`, `do not work into the join`, `no sc is worked in the sl st`, `but not in the sl st`: the slip
 * stitch that closed the round below is no place anyway. `the sl st is included in the count` is said of the totals, which tell it themselves.
 */
export function parsePassedJoin(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  if (passed(reader) || counted(reader)) return [{ node: 'aside', start, end: reader.end } satisfies Aside]
  reader.at = at
  return undefined
}

function passed(reader: Reader): boolean {
  const { at } = reader
  const idle = reader.take('no|none|nothing', 'st|stitch|sc|dc|hdc|tr?', 'is?', 'made|worked?')
  const verb = idle || reader.take('but|and', 'not', 'working?') && /^(?:in|into|over)$/.test(reader.word()) || reader.take('and?', 'skip|skipping|miss|missing|ignore|ignoring|omit|omitting|leave|leaving')
    || reader.take('and?', 'pass|passing', 'over|by?') || reader.take('and?', 'do|does', 'not', 'work|count') || reader.take('and?', 'not|without', 'working|counting')
  if (!verb) return false
  if (idle) reader.take('is', 'made|worked')
  reader.take('in|into|over')
  const own = joinName(reader)
  const told = tail(reader)
  if (own && (own === 'told' || told || idle) && placeEnds(reader)) return true
  reader.at = at
  return false
}

/** `the slip stitch counts as a stitch`, `the closing sl st is included in the total` */
function counted(reader: Reader): boolean {
  const { at } = reader
  if (joinName(reader)) {
    tail(reader)
    if (reader.take('is|are|being?', 'counted|included|incl', 'as|in|with?', 'a|one|the|each|every?', 'st|stitch|count|total|totals|stitches?') || reader.take('counts|count', 'as|in|toward|towards?', 'a|one|the?', 'st|stitch|total?')) {
      reader.take('of', 'the|each|every', 'round|rnd')
      if (placeEnds(reader)) return true
    }
  }
  reader.at = at
  return false
}

/** `the closing sl st`, `the sl st`, `the join`: told as that of the round, where it is called so or `the`. */
function joinName(reader: Reader): 'told' | 'bare' | undefined {
  const the = reader.take('the|that')
  const closing = reader.take('closing|joining|final')
  const named = reader.take('sl', '-?', 'st|stitch') || reader.take('ss|slst') || (the || closing) && reader.take('join')
  return named ? (the || closing ? 'told' : 'bare') : undefined
}

/** `of Rnd 1`, `that closed the last round`, `unworked`. */
function tail(reader: Reader): boolean {
  const closed = reader.take('that|which', 'closed|closes|closing|joined|ended')
  const row = takeRowNamed(reader, 'of|from|on|in|at?') !== undefined || reader.take('of|from|on|in|at?', 'the?', 'previous|last|prev|preceding|each|every?', 'round|rnd|row', 'below?')
  reader.take('when', 'you', 'come|get', 'to', 'it')
  return reader.take('unworked|alone|free|unused') || row || closed
}
