import type { Reader } from './reader.ts'

const parts = 'halves|parts|sides|fronts|shoulders|straps|flaps|sections|points|legs|tabs'

/** `between the two halves`, `between both shoulders`: where a stitch lies. */
export function takeBetween(reader: Reader): boolean {
  return reader.take('between', 'the|both?', 'two|both?', parts)
}
