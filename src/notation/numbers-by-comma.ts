import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Num } from './target.ts'

/** `22, 30, 38, 46 dc` where there is one size: the totals of a range of rows. */
export function rowsByComma(reader: Reader): Num | undefined {
  if (reader.vocabulary.sizes > 1 || reader.at !== 0) return undefined
  const values: number[] = []
  let ahead = 0
  for (; reader.peek(ahead)?.kind === 'number'; ahead += 2) {
    values.push(reader.peek(ahead)!.value ?? 0)
    if (reader.word(ahead + 1) === ',' && reader.word(ahead + 2) === 'and') ahead += 1
    if (!/^(,|and)$/.test(reader.word(ahead + 1))) break
  }
  const { at, start } = reader
  reader.at += ahead + 1
  const { at: after, end } = reader
  const stitches = takeThing(reader)?.kind === 'stitch'
  reader.at = after
  if (values.length > 1 && stitches) return { values, start, end }
  reader.at = at
  return undefined
}

/** `(24, 26, 28)` in a pattern of three sizes. */
export function sizesByComma(reader: Reader): Num | undefined {
  const { sizes } = reader.vocabulary
  const token = reader.peek()
  if (sizes < 2 || token?.kind !== 'number' || reader.at !== 0) return undefined
  const values: number[] = []
  for (let ahead = 0; ; ahead += 2) {
    const number = reader.peek(ahead)
    if (number?.kind !== 'number') return undefined
    values.push(number.value ?? 0)
    if (reader.word(ahead + 1) !== ',') {
      if (values.length !== sizes) return undefined
      reader.at += ahead + 1
      return { values, start: token.start, end: number.end }
    }
  }
}
