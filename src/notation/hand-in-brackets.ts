import type { Token } from './tokens.ts'

const hands = /^(?:right|left|upper|lower|top|bottom|outer|inner|outermost|innermost|hand|side|-)$/i
const places = /^(?:st|sts|stitch|stitches|sc|hdc|dc|htr|tr|ch|chain|corner|end|edge|row)$/i

/** `in the outer (right-hand) stitch`, `the first (outermost) sc`: which one it is, told once more in a bracket within its name. It is read without the bracket. */
export function handInBrackets(all: readonly Token[]): readonly Token[] {
  const dropped = new Set<number>()
  for (const [at, { text }] of all.entries()) {
    if (text !== '(' || all[at - 1]?.kind !== 'word' && all[at - 1]?.kind !== 'ordinal') continue
    const close = all.findIndex((token, index) => index > at && token.text === ')')
    if (close > at + 1 && places.test(all[close + 1]?.text ?? '') && all.slice(at + 1, close).every((token) => hands.test(token.text))) dropped.add(at).add(close)
  }
  return dropped.size > 0 ? all.filter((_, at) => !dropped.has(at)) : all
}
