import { ordinals } from './number-words.ts'
import { numberAhead } from './numbers.ts'
import type { Reader } from './reader.ts'

export const rowWords = 'row|rows|rnd|rnds|round|rounds|r|rd|rds'

/** `Rows 3 and 4`, `Rows 3–6`, `Row 3`, `Rows 2, 3 and 4`, `3rd row`, `1st to 33rd rows`. */
export function takeRows(reader: Reader): readonly number[] | undefined {
  const { at: first } = reader
  const values: number[] = []
  let through = false
  for (let value = ordinalAhead(reader); value !== undefined; value = ordinalAhead(reader)) {
    const first = values.at(-1)
    // `1st to 33rd rows`
    if (through && first !== undefined) for (let row = first + 1; row < value && value - first < 20_000; row += 1) values.push(row)
    values.push(value)
    reader.at += 1
    through = reader.take('-|–|—|−|to|thru|through', 'the?')
    if (!through) reader.take(',|and|&', 'and?', 'the?')
  }
  if (values.length > 0) {
    if (reader.take(rowWords)) return values
    reader.at = first
    return undefined
  }
  if (!reader.take(rowWords)) return undefined
  const rows: number[] = []
  for (;;) {
    const value = numberAhead(reader)
    if (value === undefined) break
    reader.at += 1
    rows.push(value)
    const before = reader.at
    if (reader.take('-|–|—|−|to|thru|through', `${rowWords}?`)) {
      const last = numberAhead(reader)
      if (last === undefined || isCount(reader)) {
        // `Rep Row 3 to desired length`, `As Row 3 - 92 htr`
        reader.at = before
        break
      }
      reader.at += 1
      for (let row = value + 1; row <= last && last - value < 20_000; row += 1) rows.push(row)
      if (last < value) rows.push(last)
    }
    const at = reader.at
    if (!reader.take(',|and|&', 'and?', `${rowWords}?`)) break
    // `Row 2, four more times`
    if (numberAhead(reader) === undefined || /^(more|further|times)$/.test(reader.word(1))) {
      reader.at = at
      break
    }
  }
  return rows.length > 0 ? rows : undefined
}

/** `3rd`, `third` */
function ordinalAhead(reader: Reader): number | undefined {
  return reader.peek()?.kind === 'ordinal' ? (reader.peek()?.value ?? 0) : ordinals[reader.word()]
}

/** `Row 2 - 30 dc`: the number after the dash is a total. */
function isCount(reader: Reader): boolean {
  const words = [1, 2, 3].map((ahead) => reader.word(ahead))
  return /^(?:st|sts|stitch|stitches)$/.test(words[0]!) || reader.vocabulary.stitchAt(words) !== undefined
}
