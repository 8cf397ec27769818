import { takeNumber } from './numbers.ts'
import { chainWords, takeThing } from './parse-thing.ts'
import type { Reader } from './reader.ts'
import type { Num } from './target.ts'

const closing: Readonly<Record<string, string>> = { '(': ')', '[': ']', '–': '–', '—': '—', '-': '-', ',': ',', ':': '' }

/** `last 5 sts (4 tr and the 3 ch)`, `last 10 sts, 9 dc and the turning ch,`: stitches told kind by kind beside their number. Gives their sum. */
export function takeSorted(reader: Reader): Num | undefined {
  const { at, start } = reader
  const close = closing[reader.word()]
  if (close !== undefined) {
    reader.at += 1
    const sum = sumOfKinds(reader, start)
    if (sum && (close === '' || reader.take(close) || close === ',' && /^(?:unworked|free|unused)$/.test(reader.word()))) return sum
  }
  reader.at = at
  return undefined
}

/** `4 tr and the 3 ch`, `2 ss, 12 dc and the tch`: two kinds or more. */
export function sumOfKinds(reader: Reader, start: number): Num | undefined {
  const { at } = reader
  reader.take('that', 'is', ',?') || reader.take('namely|being')
  const parts: (readonly number[])[] = []
  let { at: behind } = reader
  for (let part = takePart(reader); part; part = takePart(reader)) {
    parts.push(part)
    behind = reader.at
    // `last 5 sts, 4 tr and …`: of the number in all the kinds are told behind it.
    if (!/^(?:st|sts|stitch|stitches)$/.test(reader.word(-1)) || parts.length > 1) reader.take(',')
    if (!reader.take('and|plus|&|+', 'then?') && reader.at === behind) break
  }
  reader.at = parts.length > 1 ? behind : at
  const sizes = Math.max(...parts.map(({ length }) => length))
  if (parts.length < 2) return undefined
  const values = Array.from({ length: sizes }, (_, size) => parts.reduce((sum, part) => sum + (part[size] ?? part[0]!), 0))
  return { values, start, end: reader.end }
}

/** `4 tr`, `the ss`, and as one stitch `the 3 ch`, `top of turning ch`. */
function takePart(reader: Reader): readonly number[] | undefined {
  const { at } = reader
  const top = reader.take('the?', 'top', 'of')
  const the = /^(?:last|final)$/.test(reader.word(-1)) || reader.take('the|a')
  reader.take('beg|beginning|starting|first|turning|last')
  const count = takeNumber(reader)
  const chain = chainWords.has(reader.word())
  const thing = takeThing(reader)
  const many = /[^s]s$/i.test(reader.word(-1))
  if (chain || thing && thing.kind !== 'stitch') {
    if (thing?.kind === 'chain' && !count) takeNumber(reader)
    if (thing?.kind === 'chain' || thing?.kind === 'turning-chain' || thing?.kind === 'space' && thing.chains) return [1]
  } else if (thing && (count || (the || top) && !many)) return count?.values ?? [1]
  reader.at = at
  return undefined
}
