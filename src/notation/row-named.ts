import type { Reader } from './reader.ts'

/** Takes the words before it and a row by its number: with `of|on` the `of Row 4` of `sts of Row 4`. Nothing is taken where no number stands. */
export function takeRowNamed(reader: Reader, ...before: readonly string[]): number | undefined {
  const { at } = reader
  if (reader.take(...before, 'row|rnd|round|r') && (reader.word(-1) !== 'r' || reader.touches(0)) && reader.peek()?.kind === 'number') {
    reader.at += 1
    return reader.peek(-1)?.value
  }
  reader.at = at
  // `of the 14th round`
  if (reader.take(...before, 'the?') && reader.peek()?.kind === 'ordinal' && /^(row|rnd|round)$/.test(reader.word(1))) {
    reader.at += 2
    return reader.peek(-2)?.value
  }
  reader.at = at
  return undefined
}
