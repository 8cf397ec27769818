import { takeNumber } from './numbers.ts'
import { takeTarget } from './parse-target.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/** `join a separate chain of 4 ch to the first st of Row 2`: a strand is joined there, so many chains are made with it, and it is fastened off. */
export function toldSeparateChain(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  if (reader.take('with|using', 'a', 'spare|separate|short|extra|new', 'length|strand|piece|bit', 'of', 'the?', 'yarn|thread|wool|cotton')) reader.take(',')
  const named = reader.take('join|attach|add|make|fasten', 'on?', 'a|one', 'separate|spare|short|extra|new', 'ch|chain|length|strand', 'of|with')
  const count = named ? takeNumber(reader) : undefined
  if (!count || !reader.take('ch|chs|chain|chains')) {
    reader.at = at
    return undefined
  }
  const end = reader.end
  const told = { node: 'aside' as const, start, end }
  const where = reader.take('to|in|into|at|on') ? takeTarget(reader, false) : undefined
  return [
    { ...told, words: 'a separate length of yarn' }, ...(where ? [{ node: 'start' as const, target: where, start: where.start, end: where.end }] : []),
    { node: 'chain', count, start, end }, { ...told, words: 'fasten off' },
  ]
}
