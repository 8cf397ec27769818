import { numberAhead } from './numbers.ts'
import type { Reader } from './reader.ts'
import { takeRowNamed } from './row-named.ts'
import type { Num } from './target.ts'

const listing = /^(?:the|st|sts|stitch|stitches|ch|chain|of|in|on|each|and|,|foundation|beginning|beg|starting|top|bottom|upper|lower|edge|chain|row)$/

/** Takes `(first and last st of Row 12, first and last ch of foundation)` behind corners: which they are. As many as were told. */
export function takeCornersListed(reader: Reader, told: Num | undefined): void {
  const { at } = reader
  if (!reader.take('(')) return
  let named = 0
  while (!reader.done && reader.word() !== ')') {
    if (reader.take('first|last')) named += 1
    else if (takeRowNamed(reader) !== undefined) continue
    else if (numberAhead(reader) === undefined && (listing.test(reader.word()) || reader.vocabulary.stitchAt([reader.word()]))) reader.at += 1
    else break
  }
  const fits = named > 1 && (told === undefined || told.values.every((count) => count === named))
  if (!fits || !reader.take(')')) reader.at = at
}
