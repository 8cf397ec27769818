import { endOfRow } from './parse-end-of-row.ts'
import { takeTarget } from './parse-target.ts'
import type { Reader } from './reader.ts'
import type { Aside, Instruction } from './syntax.ts'
import type { Target } from './target.ts'
import { takeCornerPlace } from './up-to-and-in.ts'

/** `ending in end of Row 17`, `finishing in the centre sc of the second top corner`, `ending in top of tch`: which place the stitch worked last has gone into. */
export function parseEnding(reader: Reader, last: Instruction | undefined): Aside | undefined {
  const { at, start } = reader
  const including = reader.take('up?', 'to', 'and', 'including')
  if (including || reader.take('and?', 'to?', 'ending|finishing|stopping|end|finish') || reader.take('the|its', 'last', 'one|st|stitch?')) {
    const endsIn = endOfRow(reader, start) ?? topOfChain(reader, last) ?? (including || reader.take('in|into|at|on|with') ? cornerIn(reader, start) : undefined)
    if (endsIn && (reader.done || /^[,;.:(*]$/.test(reader.word()))) return { node: 'aside', words: '', endsIn, start, end: reader.end }
  }
  reader.at = at
  return undefined
}

/** `dc in next 13 sts, ending in top of turning ch`: the last of so many. */
function topOfChain(reader: Reader, last: Instruction | undefined): Target | undefined {
  const { at } = reader
  const target = last?.node === 'work' && last.target?.walk === 'next' && last.target.count ? takeTarget(reader) : undefined
  if (target?.thing?.kind === 'turning-chain') return target
  reader.at = at
  return undefined
}

function cornerIn(reader: Reader, start: number): Target | undefined {
  reader.take('the')
  const thing = takeCornerPlace(reader)
  return thing && { walk: 'next', thing, start, end: reader.end }
}
