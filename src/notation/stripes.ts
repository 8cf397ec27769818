import { takeNumber } from './numbers.ts'
import type { Reader } from './reader.ts'
import type { Instruction } from './syntax.ts'
import type { Num } from './target.ts'

/** `2 rows A`, `1 rnd in B`: so many rows of a range are of that colour. No count of stitches. */
export function parseStripe(reader: Reader): readonly Instruction[] | undefined {
  const { at, start } = reader
  reader.take('repeating|repeat|alternating|alternate') || reader.take('working|work|in?', 'in?', 'stripes|stripe', 'of|as?', 'follows?')
  const stripe = takeStripe(reader)
  if (!stripe) {
    reader.at = at
    return undefined
  }
  return [{ node: 'aside', yarn: stripe.yarn, start, end: reader.end }]
}

function takeStripe(reader: Reader): { readonly yarn: string; readonly rows: Num } | undefined {
  const rows = reader.peek()?.kind === 'number' ? takeNumber(reader) : undefined
  if (!rows || !reader.take('row|rows|rnd|rnds|round|rounds', 'of|in|with?', 'yarn|colour|color?')) return undefined
  const yarn = reader.peek()?.text ?? ''
  if (!reader.vocabulary.yarns.includes(yarn) && !/^([A-Z]|MC|CC)$/.test(yarn)) return undefined
  reader.at += 1
  return { yarn, rows }
}

/** Rows that the stripes of a row's text come to in all, and where they are told; undefined when they are told to be repeated. */
export function stripesIn(reader: Reader): Num | undefined {
  const { at } = reader
  const found: Num[] = []
  for (reader.at = 0; !reader.done; reader.at += 1) {
    const from = reader.at
    const stripe = takeStripe(reader)
    if (!stripe) reader.at = from
    else {
      found.push({ ...stripe.rows, end: reader.end })
      reader.at -= 1
    }
  }
  reader.at = at
  const again = reader.all.some(({ text }) => /^(rep|repeat|repeating|alternate|alternating|alternately|stripes?)$/i.test(text))
  if (found.length < 2 || again) return undefined
  const sizes = Math.max(...found.map(({ values }) => values.length))
  const values = Array.from({ length: sizes }, (_, size) => found.reduce((sum, num) => sum + (num.values[size] ?? num.values[0]!), 0))
  return { values, start: found[0]!.start, end: found.at(-1)!.end }
}
