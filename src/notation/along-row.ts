import { placeEnds } from './place-ends.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Target } from './target.ts'

/** `along Row 8`, `over Row 6`: the stitches of that row. */
export function alongRow(reader: Reader, start: number): Target | undefined {
  const { at } = reader
  const ofRow = takeRowNamed(reader, 'along|across|over')
  if (ofRow !== undefined && placeEnds(reader)) return { walk: 'each', thing: { kind: 'stitch' }, ofRow, start, end: reader.end }
  reader.at = at
  return undefined
}
