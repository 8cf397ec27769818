import { takeNumber } from './numbers.ts'
import type { Reader } from './reader.ts'

/** `3 sc instead of 1 in the corner st`, `2 dc in place of the usual one`: what each place gets elsewhere. */
export function takeInsteadOfOne(reader: Reader): void {
  const { at } = reader
  const instead = reader.take('instead|rather', 'of|than', 'the?', 'usual|single?') || reader.take('in', 'place', 'of', 'the?', 'usual|single?')
  if (instead && takeNumber(reader)?.values.join() === '1') reader.take('sc|hdc|dc|tr|st|stitch')
  else reader.at = at
}
