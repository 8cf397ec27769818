import { numberAhead, takeNumber } from './numbers.ts'
import { takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Num } from './target.ts'

/**
 * The totals of a range of rows, one for each. Where there are sizes, each names its row:
 *
 *   22, 30, 38, 46 dc   18, 16, 14, 12   18 sc, then 16 sc, then 14 sc   Row 3: 18 sc; Row 4: 16 sc   18 sc after Row 3, 16 sc after Row 4   18 – 16 – 14 – 12
 *   28 (32) sc in Row 2, 26 (30) sc in Row 3
 */
export function rowsByComma(reader: Reader): readonly Num[] | undefined {
  if (reader.at !== 0) return undefined
  const { at } = reader
  const bySize = reader.vocabulary.sizes > 1
  const values: Num[] = []
  const nouns = new Set<string | undefined>()
  do {
    const before = takeRowNamed(reader)
    if (before !== undefined) reader.take(':|–|—|-|=')
    const { start } = reader
    const value = bySize ? undefined : numberAhead(reader)
    const sized = bySize ? takeNumber(reader) : undefined
    if (value === undefined && !sized) break
    if (value !== undefined) reader.at += 1
    values.push(sized ?? { values: [value!], start, end: reader.end })
    const thing = takeThing(reader)
    // `33 dc, 33 ch-1 sps` are of one row.
    if (thing) nouns.add(thing.kind === 'stitch' ? (thing.stitch ?? 'st') : thing.kind)
    if (thing && thing.kind !== 'stitch') nouns.add('others')
    const behind = takeRowNamed(reader, 'after|at|on|in|for', 'the?', 'end?', 'of?')
    if (bySize && before === undefined && behind === undefined) break
  } while (reader.take(',|;|.|and|then|–|—|→', 'and|then?'))
  reader.take('respectively')
  if (values.length > 1 && nouns.size < 2 && reader.done) return values
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
