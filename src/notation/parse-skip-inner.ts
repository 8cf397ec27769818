import { takeNumber } from './numbers.ts'
import { takeInnerCorner } from './parse-inner-corner.ts'
import { takeStitchName } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'

/** `skipping the 2 sc that meet at each of the 6 inside corners`: nothing goes into them, wherever they lie among the others. */
export function parseSkipInner(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  const two = reader.take('skip|skipping|sk|miss|missing', 'the?') && takeNumber(reader)?.values.join() === '2' && (takeStitchName(reader) !== undefined || reader.take('st|sts|stitches'))
  const target = two ? takeInnerCorner(reader) : undefined
  if (target) return [{ node: 'group', items: [], target, start, end: reader.end }]
  reader.at = at
  return undefined
}
